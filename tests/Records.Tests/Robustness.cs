using System.Text;
using System.Text.RegularExpressions;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Records;
using Witnessmark.Records.Receiving;

namespace Witnessmark.Records.Tests;

/// <summary>Whatever is typed, there is an answer: never a crash, and never complete by accident.</summary>
public sealed partial class Robustness
{
    private static readonly string[] Nonsense =
    [
        "", "x", "[a, b]", "{a: b}", "-1", "1e9 mm", "79228162514264337593543950335 mm", "5.02.01 mm", "−5.02 mm", "½ in", ",", "none, none",
        "2031-02-30T25:61+99:00",
    ];

    /// <summary>Every line with a value; of the rows of a grid the first.</summary>
    public static TheoryData<int> Lines => [.. Enumerable.Range(0, Text.Length).Where(i => Key().IsMatch(Text[i]))];

    private static string[] Text { get; } = Receptions.Complete.TrimEnd('\n').Split('\n');

    [Theory]
    [MemberData(nameof(Lines))]
    public void Nonsense_behind_any_key_is_answered_and_never_complete(int line)
    {
        var colon = Text[line].IndexOf(':', StringComparison.Ordinal);
        foreach (var value in Nonsense)
            if (Hold([.. Text[..line], $"{Text[line][..(colon + 1)]} {value}", .. Text[(line + 1)..]]) is { } result)
                // a title and a note are anybody's words
                Assert.True(result.State != ReceptionState.Complete || Text[line].StartsWith("record:", StringComparison.Ordinal) || Harmless(line, value), $"{Text[line]} became {value}");
    }

    [Theory]
    [MemberData(nameof(Lines))]
    public void A_line_left_out_is_never_complete(int line)
    {
        if (Hold([.. Text[..line], .. Text[(line + 1)..]]) is { } result)
            Assert.NotEqual(ReceptionState.Complete, result.State);
    }

    /// <summary>Read sign by sign it would take minutes.</summary>
    [Fact]
    public void A_row_of_a_hundred_thousand_readings_is_unreadable()
    {
        var row = $"    cavity-depth: {string.Concat(Enumerable.Repeat("1.0 ", 100_000))}mm";
        var result = Hold([.. Text.Select(l => l.StartsWith("    cavity-depth:", StringComparison.Ordinal) ? row : l)]);
        Assert.Equal(ReceptionState.Refused, result?.State);
        Assert.Contains(result!.Findings, f => f.Rule.Name == "entry-unreadable");
    }

    /// <summary>Zero left over is what the sheet wants; a mechanic needs nobody who watches, and has a role of no check.</summary>
    private static bool Harmless(int line, string value) => Text[line].Trim() == $"left-over: {value}" || Text[line].Contains("- role:", StringComparison.Ordinal);

    [GeneratedRegex("^(?!#|      [DPE][2-9]).*: .+$")]
    private static partial Regex Key();

    /// <summary>Null when the reader has refused it already.</summary>
    private static ReceptionResult? Hold(string[] lines)
    {
        var content = string.Join('\n', lines).Replace("{hash}", Demo.Hash.Short12, StringComparison.Ordinal).Replace("{copy}", Demo.Copy.Mark, StringComparison.Ordinal);
        var findings = new FindingList();
        var signOff = SignOffReader.Read(RawFile.Of("records/x.yaml", Encoding.UTF8.GetBytes(content)), findings);
        return signOff is null || findings.InReadingOrder().Any(f => f.Severity == Severity.Fault) ? null : Reception.Hold(signOff, Demo.Library, []);
    }
}
