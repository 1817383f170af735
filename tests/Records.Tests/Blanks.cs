using Witnessmark.Harness;
using Witnessmark.Records.Issuing;
using Witnessmark.Records.Receiving;
using Witnessmark.Records.Sheets;

namespace Witnessmark.Records.Tests;

public sealed class Blanks
{
    private static readonly string Blank = BlankSignOff.Write(Demo.Plan, Demo.Copy);

    [Fact]
    public void The_blank_is_what_somebody_fills_in_in_three_minutes() =>
        Approved.Check("Records.Tests/Sheets/wb-40-blank.approved.yaml", Blank
            .Replace(Demo.Hash.Short12, "{hash}", StringComparison.Ordinal)
            .Replace($"copy: \"{Demo.Copy.Mark}\"", "copy: \"{copy}\"", StringComparison.Ordinal)
            .Replace($"copy: {Demo.Copy.Mark}", "copy: \"{copy}\"", StringComparison.Ordinal));

    [Fact]
    public void A_blank_as_it_was_made_is_open_and_nothing_in_it_is_wrong()
    {
        var result = Reception.Hold(Demo.Read("records/blank.yaml", Blank), Demo.Library, []);
        Assert.Equal(ReceptionState.Open, result.State);
        Assert.Equal(0, result.Given);
        Assert.DoesNotContain("entry-missing", result.Findings.Select(f => f.Rule.Name));
    }

    [Fact]
    public void A_blank_has_an_entry_for_every_step_that_asks()
    {
        var signOff = Demo.Read("records/blank.yaml", Blank);
        Assert.Equal(SheetEntries.Of(Demo.Plan).Select(e => e.Step.Code.ToString()), signOff.Entries.Select(e => e.Step.Value));
    }

    [Fact]
    public void The_blank_of_a_translated_copy_names_its_words_and_asks_for_the_same()
    {
        var copy = Demo.Marked(Demo.Copy with { Words = Demo.Words(Demo.Library) });
        var blank = BlankSignOff.Write(Demo.Plan, copy);
        Assert.NotEqual(Demo.Copy.Mark, copy.Mark);
        Assert.Equal(Blank.Replace($"copy: {Demo.Copy.Mark}", $"words: {copy.Words}\ncopy: {copy.Mark}", StringComparison.Ordinal), blank);
        // whoever takes the line out has a blank that fits no copy
        var without = blank.Replace($"words: {copy.Words}\n", "", StringComparison.Ordinal);
        Assert.Equal(["copy-mark-wrong"], Reasons(without));
        Assert.DoesNotContain("copy-mark-wrong", Reasons(blank));

        static IEnumerable<string> Reasons(string text) =>
            Reception.Hold(Demo.Read("records/blank.yaml", text), Demo.Library, []).Findings.Select(f => f.Rule.Name).Where(n => n is "copy-mark-wrong" or "words-unknown");
    }

    [Theory]
    [InlineData("NO")]
    [InlineData("off")]
    [InlineData("0417")]
    [InlineData("12:30")]
    [InlineData("say \"14\"")]
    public void What_a_copy_is_for_is_read_back_as_it_was_given(string unit)
    {
        var signOff = Demo.Read("records/blank.yaml", BlankSignOff.Write(Demo.Plan, Demo.CopyFor(unit, "0417", "CL")));
        Assert.Equal(unit, signOff.Unit?.Value);
        Assert.Equal("0417", signOff.Serial?.Value);
    }
}
