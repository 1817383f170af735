namespace Witnessmark.Rules.Tests.Cases;

/// <summary>Every file below this folder is a test. A line without a marker must have no finding.</summary>
public sealed class CaseTests
{
    public static TheoryData<string> Files => [.. CaseFile.Names()];

    [Theory]
    [MemberData(nameof(Files))]
    public void What_is_found_is_what_the_file_says(string name)
    {
        var file = CaseFile.Read(name);
        var (expected, found) = (file.Expected().ToList(), file.Found().ToList());
        var missed = expected.Except(found).Select(e => $"\n  not found: {e}");
        var extra = found.Except(expected).Select(f => $"\n  not said in the file: {f}");
        Assert.True(expected.SequenceEqual(found), $"{name}{string.Concat(missed.Concat(extra))}");
    }
}
