using System.Text;
using Witnessmark.Compiler;
using Witnessmark.Harness;
using Witnessmark.Language.Text;
using Witnessmark.Press.Tests.Proof;
using Witnessmark.Rendering.Checklist;

namespace Witnessmark.Press.Tests;

/// <summary>One to four messages that hold for one step, of two to eight lines each: what the rule on their height says, on paper.</summary>
[Collection("press")]
public sealed class MessageRoomTests(Room room)
{
    private const int MostLines = 8;
    private const int Cautious = 2; // lines that the rule may be ahead of the paper, whose foot is lower than the lowest that it reckons with

    private static readonly (int Messages, int Lines)[] All = [.. from messages in Enumerable.Range(1, 4) from lines in Enumerable.Range(2, MostLines - 1) select (messages, lines)];

    [Theory]
    [InlineData(Paper.A4)]
    [InlineData(Paper.Letter)]
    public async Task Messages_that_the_rule_lets_pass_are_said_again_and_those_it_names_are_not(Paper paper)
    {
        var bench = Pipeline.Check([.. Repo.Files(Repo.OneBrake), .. All.Select(a => RawFile.Of($"generated/{Id(a)}.md", Encoding.UTF8.GetBytes(Procedure(a))))]);
        var named = All.Where(a => bench.Findings.Any(f => f.Rule.Name == "message-too-tall" && f.At.Source.Path == $"generated/{Id(a)}.md")).ToHashSet();
        var prints = Prints.Of(bench).Where(p => p.Identity.Procedure.StartsWith("MR-", StringComparison.Ordinal)).ToDictionary(p => p.Identity.Procedure);
        var printed = await room.Press.Print([.. All.Select(a => prints[Id(a)].On(paper).Sheet)]);
        var missed = All.Zip(printed).Where(p => Missed(prints[Id(p.First)].On(paper), p.Second)).Select(p => p.First).ToHashSet();

        Assert.Contains((3, 6), missed);
        Assert.Contains((3, 4), All.Except(named));
        Assert.Empty(missed.Except(named));
        Assert.Empty(named.Where(n => n.Lines + Cautious <= MostLines && !missed.Contains((n.Messages, n.Lines + Cautious))));
    }

    /// <summary>Two above it and its own: three of six lines.</summary>
    [Fact]
    public async Task A_message_of_a_common_part_counts_below_those_of_the_step_that_performs_it()
    {
        var caller = Procedure((2, 6))[..^Steps().Length] + "1. **Do the common part.**\n    - perform: MR-16\n";
        var common = Procedure((1, 6)).Replace("machine: okr-34\n", "common-part: yes\n", StringComparison.Ordinal).Replace("piston 1", "spring", StringComparison.Ordinal)
            .Replace("    - measure: cavity-depth\n    - tool: depth-gauge-100\n    - stop-if: cavity-depth = out-of-true\n", "    - Look.\n    - Feel.\n    - Listen.\n    - Wipe.\n", StringComparison.Ordinal);
        var bench = Pipeline.Check([.. Repo.Files(Repo.OneBrake), RawFile.Of("generated/MR-26.md", Encoding.UTF8.GetBytes(caller)), RawFile.Of("generated/MR-16.md", Encoding.UTF8.GetBytes(common))]);
        var print = Prints.Of(bench).Single(p => p.Identity.Procedure == "MR-26");

        var finding = Assert.Single(bench.Findings, f => f.Rule.Name == "message-too-tall");
        Assert.Equal("generated/MR-26.md", finding.At.Source.Path);
        Assert.Contains("3 messages in force with those of MR-16", finding.Found, StringComparison.Ordinal);
        Assert.True(Missed(print, (await room.Press.Print([print.Sheet]))[0]));
    }

    private static bool Missed(PlannedPrint print, PrintedSheet printed) =>
        MessageRules.Broken(print.Plan, ProvedPages.Pages(printed.Pdf, print)).Any(b => b.Rule == PageRule.Repeated);

    private static string Id((int Messages, int Lines) of) => $"MR-{of.Messages}{of.Lines}";

    private static string Procedure((int Messages, int Lines) of)
    {
        var text = new StringBuilder($"---\nprocedure: {Id(of)}\ntitle: Messages\nversion: 1.0.0\nstatus: draft\nlanguage: en\nmachine: okr-34\ncrew: {{mechanic: 1, helper: 1}}\nuses-tools: crane-truck\nauthors: [MO]\n---\n\n# Job\n\n- starts-with: made-safe\n- ends-with: backing-ring = fitted\n- by: mechanic\n\n## Wipe\n\n- zone: brake-face\n\n");
        foreach (var message in Enumerable.Range(1, of.Messages))
        {
            text.Append($"> **WARNING: piston {message} can hurt** your hand.\n");
            foreach (var line in Enumerable.Range(2, of.Lines - 1))
                text.Append($"> - Stay clear, {line}.\n");
            text.Append("> - hazard: pinched-fingers\n\n");
        }
        return text.Append(Steps()).ToString();
    }

    private static string Steps() => string.Concat(Enumerable.Range(1, 9).Select(step =>
        $"{step}. **Measure cavity {step}** as told.\n    - measure: cavity-depth\n    - tool: depth-gauge-100\n    - stop-if: cavity-depth = out-of-true\n    - checked-by: helper (independent)\n    - time: 2 min\n\n"));
}
