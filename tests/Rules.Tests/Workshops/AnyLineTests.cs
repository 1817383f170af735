using Witnessmark.Language.Findings;
using Witnessmark.Language.Text;

namespace Witnessmark.Rules.Tests.Workshops;

/// <summary>Whatever line of the demo is lost or doubled, the workshop is read and checked to the end.</summary>
public sealed class AnyLineTests
{
    public static TheoryData<string> Files => [.. DemoWorkshop.Whole.Files.Keys];

    [Theory]
    [MemberData(nameof(Files))]
    public void Any_line_may_be_missing(string path)
    {
        var lines = DemoWorkshop.Whole.Files[path].Split('\n');
        for (var i = 0; i < lines.Length; i++)
            Check(path, [.. lines[..i], .. lines[(i + 1)..]]);
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void Any_line_may_stand_twice(string path)
    {
        var lines = DemoWorkshop.Whole.Files[path].Split('\n');
        for (var i = 0; i < lines.Length; i++)
            Check(path, [.. lines[..i], lines[i], .. lines[i..]]);
    }

    private static void Check(string path, string[] lines)
    {
        foreach (var finding in DemoWorkshop.Whole.With(path, string.Join('\n', lines)).Findings())
            Assert.True(SaysAll(finding), $"{path}: {finding}");
    }

    /// <summary>Three pieces of text that end as sentences do, and a place inside its file.</summary>
    private static bool SaysAll(Finding finding) =>
        new[] { finding.Found, finding.Why, finding.PutRight }.All(IsText)
        && finding.Further.Select(f => f.At).Append(finding.At).All(IsInside);

    private static bool IsInside(Location at) => at.Span.Start >= 0 && at.Span.Length >= 0 && at.Span.End <= at.Source.Content.Length;

    private static bool IsText(string text) => text.Length > 0 && text == text.Trim() && (text[^1] is '.' or '?' or '!');
}
