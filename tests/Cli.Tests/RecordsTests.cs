using Witnessmark.Harness;

namespace Witnessmark.Cli.Tests;

/// <summary>Which files in a workshop are taken for sign-offs that came back.</summary>
public sealed class RecordsTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("witnessmark-records-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void Sign_offs_lie_in_records_itself_and_no_link_hidden_file_or_folder_below_is_followed()
    {
        Workshop();
        Put("records/plain.yaml");
        Put("records/notes.md");
        Put("records/.hidden.yaml");
        Put("records/older/deep.yaml");
        Put("wheel-end/records/elsewhere.yaml");
        File.CreateSymbolicLink(Path.Combine(_folder, "records", "link.yaml"), Path.Combine(_folder, "workshop.yaml"));

        var page = MachinePage();

        Assert.Contains("1 record gave no point.", page, StringComparison.Ordinal);
        Assert.Contains("records/plain.yaml", page, StringComparison.Ordinal);
    }

    [Fact]
    public void A_folder_of_records_that_is_a_link_is_not_followed()
    {
        Workshop();
        // in a folder that is not read for procedures either
        Put("out/plain.yaml");
        Directory.CreateSymbolicLink(Path.Combine(_folder, "records"), Path.Combine(_folder, "out"));

        Assert.DoesNotContain("gave no point", MachinePage(), StringComparison.Ordinal);
    }

    [Fact]
    public void More_records_than_anybody_keeps_are_refused_before_they_are_read()
    {
        Workshop();
        for (var i = 0; i < 51; i++)
        {
            Put($"records/{i}.yaml");
            using var file = File.OpenWrite(Path.Combine(_folder, "records", $"{i}.yaml"));
            file.SetLength(2_000_000);
        }
        using var screen = new StringWriter();
        Assert.NotEqual(0, CommandLine.Run(["build", _folder, "--out", Path.Combine(_folder, ".built")], new Surroundings(screen, screen, () => DateTimeOffset.UnixEpoch, _folder, Coloured: false)));
        Assert.Contains("More than 5000 records in records, or more than 50 MB of them.", screen.ToString(), StringComparison.Ordinal);
    }

    private void Workshop()
    {
        foreach (var file in Repo.Files(Repo.OneBrake))
        {
            Directory.CreateDirectory(Path.GetDirectoryName(Path.Combine(_folder, file.Path))!);
            File.WriteAllBytes(Path.Combine(_folder, file.Path), file.Bytes.ToArray());
        }
    }

    private void Put(string path)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(Path.Combine(_folder, path))!);
        File.WriteAllText(Path.Combine(_folder, path), "record: nothing\n");
    }

    private string MachinePage()
    {
        using var screen = new StringWriter();
        var built = Path.Combine(_folder, ".built");
        Assert.Equal(0, CommandLine.Run(["build", _folder, "--out", built], new Surroundings(screen, screen, () => DateTimeOffset.UnixEpoch, _folder, Coloured: false)));
        return File.ReadAllText(Path.Combine(built, "machines", "okr-34.html"));
    }
}
