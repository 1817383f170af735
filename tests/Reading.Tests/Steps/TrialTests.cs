using System.Text.RegularExpressions;
using Witnessmark.Harness;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Steps;

namespace Witnessmark.Reading.Tests.Steps;

/// <summary>A whole workshop of nine procedures and a job, written in the language before there was a reader.</summary>
public sealed partial class TrialTests
{
    public static TheoryData<string> Files => [.. ProcedureFiles.In("tests", "Workshops", "trial"), .. ProcedureFiles.In("tests", "Workshops", "one-brake")];

    [Theory]
    [MemberData(nameof(Files))]
    public void Every_procedure_reads_without_finding(string path)
    {
        var findings = new FindingList();
        Assert.NotNull(ProcedureReader.Read(ProcedureFiles.Source(path), findings));
        Told.Nothing(findings);
    }

    [Fact]
    public void The_trial_has_238_steps() =>
        Assert.Equal(238, ProcedureFiles.In("tests", "Workshops", "trial").Select(Read).Sum(p => p.Steps.Count()));

    [Theory]
    [MemberData(nameof(Files))]
    public void Every_step_and_fact_that_a_search_finds_is_read(string path)
    {
        var body = Repo.Read(path).Split("\n---\n", 2)[1];
        var procedure = Read(path);
        Assert.Equal(StepLine.Count(body), procedure.Steps.Count());
        Assert.Equal(StepFactLine.Count(body), procedure.Steps.Sum(s => s.Facts.Length));
        Assert.Equal(HeadingFactLine.Count(body), procedure.Parts.Sum(p => p.Facts.Length + p.Sections.Sum(s => s.Facts.Length)));
        Assert.Equal(MessageLine.Count(body), procedure.Parts.SelectMany(p => p.Sections).Sum(s => s.Messages.Length + s.Steps.Sum(t => t.Messages.Length)));
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void Every_text_is_the_text_at_its_place(string path)
    {
        var texts = Walk.Texts(Read(path)).ToList();
        Assert.True(texts.Count > 50);
        // the turns of a numbered loop are worked out: `1 to 6` is where each of them stands
        foreach (var text in texts.Where(t => !t.At.Text.Contains(" to ", StringComparison.Ordinal)))
            Assert.Equal(text.Value, text.At.Text);
    }

    [Fact]
    public void The_steps_of_a_part_the_heading_above_them_and_their_messages_are_where_they_belong()
    {
        var procedure = Read("tests/Workshops/trial/wheel-end/wb-05.md");
        Assert.Equal(["lock", "zero", "start"], procedure.Parts.Select(p => p.Name!.Value.Value));
        Assert.Equal([3, 2, 3], procedure.Parts.Select(p => p.Steps.Count()));
        var empty = procedure.Part("zero")!.Steps.First();
        Assert.Equal("Empty the accumulators", empty.Name.Value);
        Assert.Equal("Press the brake pedal to the floor 30 times.", empty.Text.Plain());
        var message = Assert.Single(empty.Messages);
        Assert.Equal(SignalWord.Danger, message.Signal);
        Assert.Equal("16 MPa in the accumulators will drive oil through the skin", message.Nature.Value);
        Assert.Equal("when a fitting is opened.", message.Rest.Plain());
        Assert.Equal("stored-pressure", message.Hazard!.Value.Value);
        Assert.Equal("Pump the pedal until the gauge stays at zero, then read it again.", Assert.Single(message.Avoid).Plain());
        Assert.Equal(4, empty.Number);
        var strokes = Assert.IsType<Amounts>(empty.Find(FactWord.Count)!.Value).All[0];
        Assert.Equal(("pedal-strokes", 30, true), (strokes.Thing.Value, strokes.Count!.Value.Value, strokes.AtLeast));
    }

    [Fact]
    public void What_stands_under_the_title_holds_for_every_part_that_says_nothing_else()
    {
        var part = Assert.Single(Read("tests/Reading.Tests/Cases/Steps/title-above-parts.md").Parts);
        Assert.Equal(["starts-with: made-safe", "zone: none", "by: mechanic"], part.Facts.Select(f => $"{f.Word.Spelled()}: {f.Text.Value.Split(' ')[0]}"));
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void Line_ends_of_another_system_change_nothing_that_is_read(string path)
    {
        var source = ProcedureFiles.Source(path);
        var findings = new FindingList();
        var other = ProcedureReader.Read(new SourceText(path, source.Content.ReplaceLineEndings("\r\n")), findings)!;
        Told.Nothing(findings);
        Assert.Equal(Walk.Texts(Read(path)).Select(t => t.Value), Walk.Texts(other).Select(t => t.Value));
        Assert.Equal(Read(path).Steps.Select(s => s.Text.Plain()), other.Steps.Select(s => s.Text.Plain()));
    }

    private static Procedure Read(string path) => ProcedureReader.Read(ProcedureFiles.Source(path), new FindingList())!;

    [GeneratedRegex(@"^[0-9]+\. \*\*", RegexOptions.Multiline)]
    private static partial Regex StepLine { get; }

    [GeneratedRegex("^    - [a-z-]+: ", RegexOptions.Multiline)]
    private static partial Regex StepFactLine { get; }

    [GeneratedRegex("^- [a-z-]+: ", RegexOptions.Multiline)]
    private static partial Regex HeadingFactLine { get; }

    [GeneratedRegex(@"^> \*\*[A-Z]+: ", RegexOptions.Multiline)]
    private static partial Regex MessageLine { get; }
}
