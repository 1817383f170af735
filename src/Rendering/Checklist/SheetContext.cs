using System.Collections.Immutable;
using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;
using Witnessmark.Records.Sheets;
using Witnessmark.Rendering.Checklist.InWords;
using Witnessmark.Rendering.Html;

namespace Witnessmark.Rendering.Checklist;

/// <summary>What every block of a sheet needs to know.</summary>
internal sealed record SheetContext(SheetPlan Plan, SheetIdentity Identity, Words Words)
{
    public Scope Scope => Plan.Scope;

    /// <summary>How names and texts of the data read.</summary>
    public Tongue Tongue => Scope.Library.Tongue;

    public QuantityWords Quantities => new(Words);

    /// <summary>Who does a step of the section that does not say: the section's <c>by</c>, or the part's. Stands in the section's heading.</summary>
    public ImmutableArray<string> UsualDoers(SheetSection section) =>
        section.Section.Facts.Concat(Plan.Part.Facts).FirstOrDefault(f => f.Word == FactWord.By)?.Value is NameList by
            ? [.. by.Names.Select(n => Tongue.Name(n.Value))]
            : [];

    /// <summary><c>wheel end CL, CR</c></summary>
    public string Loop(Fact loop, Fills fills) => loop.Value is Loop { OfGroup: null } each
        ? $"{Tongue.Name(fills.In(each.Kind.Value))} {string.Join(", ", each.In.Select(n => Tongue.Name(fills.In(n.Value))))}".TrimEnd()
        : fills.In(loop.Text.Value);

    /// <summary>What the steps of a section are repeated for, and until when; null when they are not.</summary>
    public string? Rounds(Section section, Fills fills) => section.Facts.Find(FactWord.ForEach) is not { } loop
        ? null
        : Loop(loop, fills) + (section.Facts.Find(FactWord.Until)?.Value is ConditionValue until ? $", {Words.Until} {Conditions(fills).Of(until.Condition)}" : "");

    public string StackEnd(PartStack stack, string? name) => Words.StackEnd(Tongue, stack, name);

    public ConditionText Conditions(Fills fills) => new(Scope, Words, fills.In);

    public static RawHtml Text(ImmutableArray<Inline> text, Fills fills) => ProseHtml.Inlines(text, fills.In);

    public static RawHtml Blocks(ImmutableArray<Block> blocks, Fills fills) => ProseHtml.Blocks(blocks, fills.In);

    /// <summary>Declared in the machine's sheet, the procedure, or the common part that is performed.</summary>
    public Scope ScopeOf(SheetStep step) =>
        ReferenceEquals(step.Place.Procedure, Scope.Procedure) ? Scope : new Scope(Scope.Library, step.Place.Procedure, Scope.Machine);

    /// <summary>The time of a section stands for those of its steps.</summary>
    public static ImmutableArray<QuantityRange> Durations(SheetSection section) =>
        section.Section.Facts.Find(FactWord.Time)?.Value is Duration whole ? [whole.Range] : [.. section.Steps.SelectMany(Durations)];

    private static IEnumerable<QuantityRange> Durations(SheetStep step)
    {
        var inner = step.Performed.SelectMany(Durations);
        return step.Place.Step.Value<Duration>(FactWord.Time) is { } own ? inner.Prepend(own.Range) : inner;
    }
}
