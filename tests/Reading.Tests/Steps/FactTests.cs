using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Facts;

namespace Witnessmark.Reading.Tests.Steps;

public sealed class FactTests
{
    public static TheoryData<FactWord> Words => [.. FactWords.All.Select(r => r.Word)];

    [Theory]
    [MemberData(nameof(Words))]
    public void The_example_in_the_message_of_a_fact_reads_itself(FactWord word)
    {
        var findings = new FindingList();
        var place = new[] { FactPlace.Step, FactPlace.Heading, FactPlace.TranslatedStep }.First(p => word.Row().Place.HasFlag(p));
        var fact = FactReader.Read(Bullet.Of(Written($"{word.Spelled()}: {FactExamples.Of(word)}").At), place, findings);
        Told.Nothing(findings);
        Assert.Equal(word, fact!.Word);
    }

    [Theory]
    [InlineData("a = b or c or d = e", "a = b or c|d = e")]
    [InlineData("a = b, c = d or e = f, g = h", "a = b, c = d|e = f, g = h")]
    [InlineData("made-safe or lines-blanked", "made-safe|lines-blanked")]
    [InlineData("a = b or c, d is not e or f", "a = b or c, d is not e or f")]
    [InlineData("made-safe or a = b", "made-safe|a = b")]
    public void A_value_stays_with_its_thing_and_a_new_thing_begins_a_new_alternative(string written, string alternatives)
    {
        var findings = new FindingList();
        var read = ConditionReader.Alternatives(Written(written), findings);
        Told.Nothing(findings);
        Assert.Equal(alternatives.Split('|'), read!.Value.Select(c => c.At.Text));
    }

    [Fact]
    public void A_condition_knows_its_thing_its_place_and_its_values()
    {
        var read = ConditionReader.Read(Written("lock-pins at CL is not 2 of 6 retracted or loose, every device that blocks travel = stored, people in pin-line"), new FindingList())!;
        var state = Assert.IsType<StateClause>(read.All[0]);
        Assert.Equal(("lock-pins", "CL", true), (state.Thing.Value, state.AtPlace!.Value.Value, state.Negated));
        Assert.Equal(["2 of 6 retracted", "loose"], state.Values.Select(v => v.Value));
        Assert.All(state.Values.Append(state.Thing), t => Assert.Equal(t.Value, t.At.Text));
        var devices = Assert.IsType<DevicesClause>(read.All[1]);
        Assert.Equal((true, "travel", "stored"), (devices.Every, devices.ThatBlock!.Value.Value, devices.Value.Value));
        Assert.Equal("pin-line", Assert.IsType<PeopleClause>(read.All[2]).Zone.Value);
    }

    [Fact]
    public void Text_behind_a_dash_says_what_to_do_then()
    {
        var fact = FactReader.Read(Bullet.Of(Written("stop-if: oil-temperature = hot - wait until it is below 50 degC").At), FactPlace.Step, new FindingList());
        Assert.Equal("wait until it is below 50 degC", Assert.IsType<ConditionValue>(fact!.Value).Otherwise!.Value.Value);
    }

    [Fact]
    public void A_performed_part_is_given_things_at_places()
    {
        var fact = FactReader.Read(Bullet.Of(Written("perform: WB-60 part tighten group = cooling-clamps at A, wrench = TW-100").At), FactPlace.Step, new FindingList());
        var perform = Assert.IsType<PerformValue>(fact!.Value);
        Assert.Equal(("WB-60", "tighten"), (perform.Procedure.Value, perform.Part!.Value.Value));
        Assert.Equal([("group", "cooling-clamps", "A"), ("wrench", "TW-100", null)], perform.Arguments.Select(a => (a.Name.Value, a.Value.Value, a.AtPlace?.Value)));
    }

    private static Located<string> Written(string text)
    {
        var source = new SourceText("wb-99.md", text);
        return new Located<string>(text, source.At(0, text.Length));
    }
}
