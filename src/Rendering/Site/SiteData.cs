using System.Collections.Immutable;
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
}

public sealed record SheetLink(string Says, string Path);

/// <param name="Body">Everything below the page's first sentence.</param>
public sealed record RulePageData(RuleInfo Rule, string Summary, ImmutableArray<Block> Body);

/// <summary>A page written by hand, from <c>site/pages</c>.</summary>
public sealed record WrittenPage(string Path, string Title, ImmutableArray<Block> Body);
