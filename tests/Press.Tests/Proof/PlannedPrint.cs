using Witnessmark.Records.Hashing;
using Witnessmark.Records.Sheets;
using Witnessmark.Rendering;
using Witnessmark.Rendering.Checklist;

namespace Witnessmark.Press.Tests.Proof;

/// <summary>What stands at one place of a page, and what has to.</summary>
internal readonly record struct Margin(string Where, string There, string Wanted);

/// <summary>A print, what it was made from, and what each of its pages owes.</summary>
internal abstract record PlannedPrint(SheetPlan Plan, SheetIdentity Identity, Words Words, PressSheet Sheet)
{
    /// <summary>What must stand on one page whole.</summary>
    public abstract string Whole { get; }

    /// <summary>Holes to punch in the left margin.</summary>
    public virtual int Holes => 0;

    /// <summary>Frames around what stands in the head.</summary>
    public virtual int HeadFrames => 0;

    protected string Printed => Identity.PrintedAt.Length > 0 ? $" · {Words.Printed} {Identity.PrintedAt}" : "";

    protected string Wording => Identity.WordsHash is { } hash ? $" · {Words.Wording} {ShortHash.Of(hash)}" : "";

    protected string CodeStart =>
        string.Join(' ', new[] { Identity.Procedure, Identity.Version, ShortHash.Plain(Identity.Hash), Identity.SetMark }.OfType<string>()).ToUpperInvariant();

    /// <summary>Where words and drawings belong.</summary>
    public abstract Area Inner(Area paper);

    public abstract Area CodePlace(Area paper);

    public abstract string CodeSays(PrintedPage page, int pages);

    public abstract IEnumerable<Margin> Margins(PrintedPage page, int pages);

    /// <summary>What is asked of prints of this kind only.</summary>
    public abstract IEnumerable<Broken> Own(SheetText text, ReadThrough read, IReadOnlyList<PrintedPage> pages);

    /// <summary>As a copy for one machine.</summary>
    public PlannedPrint Issued(Paper paper) =>
        Again(Identity with { SetMark = "K7M", Unit = "14", Serial = "0417", Place = "CL", PrintedAt = "2031-06-11 06:40" }, paper);

    public PlannedPrint On(Paper paper) => Again(Identity, paper);

    protected abstract PlannedPrint Again(SheetIdentity identity, Paper paper);

    public sealed override string ToString() => $"{GetType().Name[..^"Print".Length].ToLowerInvariant()} of {Identity.Procedure} in {Words.Language}, {Plan.Steps.Count()} steps";
}
