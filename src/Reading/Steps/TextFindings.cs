using Witnessmark.Language.Findings;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;
using Witnessmark.Reading.Faults;

namespace Witnessmark.Reading.Steps;

/// <summary>Findings about text that is neither step nor message.</summary>
internal static class TextFindings
{
    public static Finding RawHtml(Location at) => new(
        StepFaults.RawHtml,
        at,
        $"`{Say.Short(at.Text)}` is raw HTML.",
        "A Git host, the sheet and the site each show it differently, and it could hide or change what the crew reads.",
        "Write it as Markdown: **bold**, a list, a table, an image. To show the sign itself, write `&lt;`.");

    public static Finding LinkOutside(Location at, string target, string trouble) => new(
        StepFaults.LinkOutside,
        at,
        target.Length == 0 ? $"This link {trouble}." : $"The link to `{Say.Short(target)}` {trouble}.",
        "A sheet is read far from any network, and a link must not carry anyone out of the workshop's own pages unseen.",
        "Give a path of a file in this workshop, or an address that begins with `https://`.");

    public static Finding TooDeep(Location at) => new(
        StepFaults.NestedTooDeep,
        at,
        $"`{Say.Short(at.Text)}` is nested too deeply to be printed.",
        "A sheet has steps and, under them, facts and remarks; a third level would be lost.",
        "Make it a bullet or a paragraph of the step, indented by four.");

    public static Finding NotPrinted(Location at, string what, string putRight) => new(
        StepFaults.NotPrinted,
        at,
        $"{what} cannot be printed on a sheet.",
        "What is not printed is not read by anyone who does the work.",
        putRight);

    public static Finding NoStep(Location at) => new(
        StepFaults.NothingWritten,
        at,
        "There is no step in this file.",
        "A procedure without steps would be released as done without anyone doing anything.",
        "Write steps as a numbered list: `1. **Name in the imperative.** What to do.`");

    public static Finding PartWithoutStep(Located<string> name) => new(
        StepFaults.NothingWritten,
        name.At,
        $"There is no step in the part `{Say.Short(name.Value)}`.",
        "It would be performed, and signed as done, without anyone doing anything.",
        "Write its steps below it, or take the heading out.");

    public static Finding HeadingTooDeep(Location at, int level) => new(
        StepFaults.HeadingLevel,
        at,
        $"`{Say.Short(at.Text)}` is a heading of level {level}.",
        "A procedure has a title, parts and sections; a deeper heading would have no contract and no place on the sheet.",
        "Use `## ` for a section, or make it bold text.");

    public static Finding SecondTitle(Location at) => new(
        StepFaults.HeadingLevel,
        at,
        $"`{Say.Short(at.Text)}` is a second title.",
        "Facts and contracts below it would belong to nobody.",
        "A piece with a contract of its own is `# Part: name`; a group of steps at one place is `## Name`.");

    public static Finding NoTitleYet(Location at) => new(
        StepFaults.HeadingLevel,
        at,
        $"The section `{Say.Short(at.Text)}` stands before any title.",
        "A sheet is known by its title, and the contract stands under it.",
        "Begin with `# Title`, then sections with `## Name`.");

    public static Finding PartName(Location at, string name) => new(
        StepFaults.PartName,
        at,
        name.Length == 0 ? "This part has no name." : $"`{Say.Short(name)}` cannot be the name of a part.",
        "Other procedures perform a part by its name, in one word.",
        $"Write it like this: `# Part: {(name.Length == 0 ? "strip" : Language.Model.StepName.Slug(name))}`.");

    public static Finding PartTwice(Location at, Location first, string name) => new(
        StepFaults.PartName,
        at,
        first.Text == name ? $"There are two parts with the name `{name}`." : $"The parts `{first.Text}` and `{name}` differ only in capitals or signs.",
        "Whoever performs it would get one or the other.",
        "Give one of them another name.")
    {
        Further = [new FurtherPlace(first, "the first one")],
    };

    public static Finding BetweenSteps(Location at, int step) => new(
        StepFaults.TextBetweenSteps,
        at,
        $"This text stands behind step {step} and belongs to no step.",
        "On the sheet it has no place: the crew reads steps one by one.",
        $"If it belongs to step {step}, indent it by four. If it is for the whole section, put it under the heading.");
}
