using System.Collections.Immutable;
using Witnessmark.Comparing;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Records.Wear;

namespace Witnessmark.Rendering.Site;

/// <summary>Everything the site is made from.</summary>
/// <param name="Hashes">Twelve digits in groups of four, by procedure id.</param>
/// <param name="Sheets">Sheets to print by procedure id: what the link says and its path from the site's root.</param>
public sealed record SiteData(
    Library Library,
    ImmutableDictionary<string, string> Hashes,
    ImmutableDictionary<string, ImmutableArray<SheetLink>> Sheets,
    ImmutableArray<RulePageData> Rules,
    ImmutableArray<WrittenPage> Written,
    string ProgramVersion)
{
    public WearLog Wear { get; init; } = WearLog.None;

    public ImmutableArray<VersionStep> Versions { get; init; } = [];
}

/// <summary>What a version changed in the one that was released before it.</summary>
/// <param name="Version">Null for the files as they lie here, which nobody has released.</param>
/// <param name="Comparison">Null where it cannot be made.</param>
/// <param name="Why">Why it cannot, in a sentence.</param>
public sealed record VersionStep(ReleasedVersion Before, ReleasedVersion? Version, ProcedureComparison? Comparison, string Why);

public sealed record SheetLink(string Says, string Path);

/// <param name="Body">Everything below the page's first sentence.</param>
public sealed record RulePageData(RuleInfo Rule, string Summary, ImmutableArray<Block> Body);

/// <summary>A page written by hand, from <c>site/pages</c>.</summary>
public sealed record WrittenPage(string Path, string Title, ImmutableArray<Block> Body);
