using System.Text;
using Witnessmark.Harness;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Faults;
using Witnessmark.Reading.Pages;
using Witnessmark.Reading.References;

namespace Witnessmark.Reading.Tests.Steps;

/// <summary>The page of a fault is its first test: what it calls wrong is found, what it calls right is read without finding.</summary>
public sealed class FaultPageTests
{
    private const string Demo = "procedures/";

    public static TheoryData<string> Names => [.. StepFaults.All.Select(f => f.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void What_the_page_calls_wrong_is_found(string name) =>
        Assert.Contains(name, Check(Patch(name, "Wrong")).InReadingOrder().Select(f => f.Rule.Name));

    [Theory]
    [MemberData(nameof(Names))]
    public void What_the_page_calls_right_reads_without_finding(string name) => Told.Nothing(Check(Patch(name, "Right")));

    private static FindingList Check(CodeBlock patch)
    {
        var path = patch.Info.Split(' ')[1][Demo.Length..];
        var files = Repo.Files(Repo.OneBrake).Select(f => f.Path == path ? RawFile.Of(path, Patched(f, patch.Text)) : f).ToList();
        var findings = new FindingList();
        ReferenceCheck.Check(WorkshopReader.Read(files, findings), findings);
        return findings;
    }

    private static CodeBlock Patch(string name, string heading)
    {
        var page = PageReader.Read(ProcedureFiles.Source($"src/Reading/Faults/{name}.md"));
        var start = page.ToList().FindIndex(b => b is SubHeading h && h.Text.Plain() == heading);
        return Assert.IsType<CodeBlock>(page[start + 1]);
    }

    private static byte[] Patched(RawFile file, string patch)
    {
        var text = Encoding.UTF8.GetString(file.Bytes.Span);
        var lines = patch.Split('\n');
        for (var i = 0; i < lines.Length;)
        {
            var from = Taken(lines, ref i, '-');
            var to = Taken(lines, ref i, '+');
            Assert.True(text.Contains(from, StringComparison.Ordinal), $"{file.Path} has no\n{from}");
            text = text.Replace(from, to, StringComparison.Ordinal);
        }
        return Encoding.UTF8.GetBytes(text);
    }

    private static string Taken(string[] lines, ref int i, char sign)
    {
        var taken = new StringBuilder();
        for (; i < lines.Length && lines[i].StartsWith(sign); i++)
            taken.Append(lines[i].Length > 1 ? lines[i][2..] : "").Append('\n');
        return taken.ToString();
    }
}
