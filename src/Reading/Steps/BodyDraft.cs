using System.Collections.Immutable;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Facts;

namespace Witnessmark.Reading.Steps;

/// <summary>A procedure's text while it is read: title, parts, sections.</summary>
internal sealed class BodyDraft(TextKind kind, FindingList findings)
{
    public Located<string>? Title { get; set; }

    public List<PartDraft> Parts { get; } = [new PartDraft(null, kind, findings)];

    public PartDraft Part => Parts[^1];

    public SectionDraft? Section => Part.Sections.LastOrDefault();

    public bool HasSteps => Section is { Steps.Count: > 0 };

    public int StepCount { get; set; }

    /// <summary>Said once.</summary>
    public bool HasTooMany { get; set; }

    /// <summary>The part that needs no name: what stands under the title.</summary>
    public PartDraft Untitled => Parts[0];

    /// <summary>Names of parts in which nothing is done.</summary>
    public IEnumerable<Located<string>> Empty =>
        Parts.Where(p => p.Sections.All(s => s.Steps.Count == 0)).Select(p => p.Name).OfType<Located<string>>();

    /// <summary>Who, where, with what: the facts of a heading that hold for all below it. A contract and a loop are its own.</summary>
    public static bool HoldsBelow(Fact fact) => fact.Word.Row().Place.HasFlag(FactPlace.Step) && fact.Word != FactWord.ForEach;

    public Body Finish()
    {
        var introduction = Untitled.Prose.ToImmutableArray();
        var parts = Parts.Skip(1).Select(p => p.Finish(p.Prose, Untitled.Facts.All));
        if (Untitled.Sections.Count > 0 || !parts.Any())
            parts = parts.Prepend(Untitled.Finish([], []));
        return new Body(Title, Untitled.Facts.All, introduction, [.. parts]);
    }
}

internal sealed class PartDraft(Located<string>? name, TextKind kind, FindingList findings)
{
    public Located<string>? Name { get; } = name;

    /// <summary>Names that differ in capitals or signs only would be one file.</summary>
    public bool IsCalled(string name) => Name is { } own && StepName.Slug(own.Value) == StepName.Slug(name);

    public FactList Facts { get; } = new(kind.Heading, findings);

    public List<Block> Prose { get; } = [];

    public List<SectionDraft> Sections { get; } = [];

    /// <param name="prose">Of the part; the prose under the title is the procedure's.</param>
    /// <param name="above">Facts under the title: those that hold for all below, unless the part has its own.</param>
    public ProcedurePart Finish(IEnumerable<Block> prose, ImmutableArray<Fact> above)
    {
        var inherited = above.Where(f => BodyDraft.HoldsBelow(f) && Facts.All.All(own => own.Word != f.Word));
        return new ProcedurePart(Name, [.. Facts.All, .. inherited], [.. prose], [.. Sections.Select(s => s.Finish())]);
    }
}

internal sealed class SectionDraft(Located<string>? heading, ImmutableArray<SafetyMessage> messages, TextKind kind, FindingList findings)
{
    public FactList Facts { get; } = new(kind.Heading, findings);

    public List<Block> Prose { get; } = [];

    public List<Step> Steps { get; } = [];

    public Section Finish() => new(heading, Facts.All, [.. Prose], messages, [.. Steps]);
}

/// <summary>What a procedure's text says, below its front matter.</summary>
/// <param name="UnderTitle">Facts of the heading of level one.</param>
internal sealed record Body(Located<string>? Title, ImmutableArray<Fact> UnderTitle, ImmutableArray<Block> Introduction, ImmutableArray<ProcedurePart> Parts);
