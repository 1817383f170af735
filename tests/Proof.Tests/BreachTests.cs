using System.Globalization;
using System.Text;
using Witnessmark.Harness;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Reading;

namespace Witnessmark.Proof.Tests;

/// <summary>What following every way through the work finds.</summary>
public sealed class BreachTests
{
    private static readonly IReadOnlyList<RawFile> Showcase = Repo.Files(Repo.Path("procedures", "cressel-ridge"));

    /// <summary>A mistake that somebody could make in the showcase: the file, a line that stands there once, what is written instead, and what is found.</summary>
    public static TheoryData<string, string, string, string> Mistakes =>
        [.. Rows().Select(r => (r[0], r[1], r[2], r[3]))];

    [Fact]
    public void The_trial_job_breaks_what_was_approved() =>
        Approved.Check("Proof.Tests/trial.approved.txt", Told(Repo.Files(Repo.Trial)));

    [Theory]
    [InlineData("cressel-ridge")]
    [InlineData("dunmore-flat")]
    public void The_showcase_meets_end_to_end(string workshop) =>
        Assert.Equal("", Told(Repo.Files(Repo.Path("procedures", workshop))));

    [Theory]
    [MemberData(nameof(Mistakes))]
    public void A_mistake_in_the_showcase_is_found(string path, string written, string slip, string found)
    {
        var files = Showcase.Select(f => f.Path == path ? Slipped(f, written, slip) : f).ToList();
        Assert.Contains(found, Told(files), StringComparison.Ordinal);
    }

    [Fact]
    public void A_condition_that_names_itself_ends_the_proof_and_not_the_program()
    {
        var files = Showcase.Select(f => f.Path == "machines/okr-34.yaml" ? Slipped(f, "  wheel-off:\n    - wheel = removed\n", "  wheel-off:\n    - wheel-off\n    - wheel = removed\n") : f).ToList();
        Assert.NotEqual("", Told(files));
    }

    private static RawFile Slipped(RawFile file, string written, string slip)
    {
        var text = Encoding.UTF8.GetString(file.Bytes.Span);
        Assert.Equal(2, text.Split(written).Length);
        return RawFile.Of(file.Path, Encoding.UTF8.GetBytes(text.Replace(written, slip, StringComparison.Ordinal)));
    }

    private static IEnumerable<string[]> Rows() =>
        Repo.Read("tests", "Proof.Tests", "mistakes.md").Split('\n').Where(l => l.StartsWith("| `", StringComparison.Ordinal))
            .Select(l => l.Trim('|', ' ').Split(" | ").Select(c => c.Trim().Trim('`').Replace("\\n", "\n", StringComparison.Ordinal)).ToArray());

    private static string Told(IReadOnlyList<RawFile> files)
    {
        var library = WorkshopReader.Read(files, new FindingList());
        var text = new StringBuilder();
        foreach (var procedure in library.Procedures)
            foreach (var part in Proofs.Of(library.ScopeOf(procedure)))
            {
                Assert.False(part.TooManyWays);
                foreach (var breach in part.Breaches)
                    Tell(text, procedure, breach);
            }
        return text.ToString();
    }

    private static void Tell(StringBuilder text, Procedure procedure, Breach breach)
    {
        text.Append(CultureInfo.InvariantCulture, $"{procedure.Id}: {(breach.Sure ? "" : "not known, ")}{breach.Kind} {breach.Rule?.Id} {breach.Broken?.At.Text}{breach.Thing} at {Chain(breach.At)}\n");
        foreach (var line in breach.Story)
            text.Append(CultureInfo.InvariantCulture, $"    {Chain(line.At)}: {line.Said}\n");
    }

    private static string Chain(Moment moment) =>
        $"{moment.Place.Procedure.Id} {moment.Place.Step.Number} {moment.Place.Step.Name}{(moment.PerformedBy is { } by ? $" <- {Chain(by)}" : "")}";
}
