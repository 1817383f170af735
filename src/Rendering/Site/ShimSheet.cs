using Scriban.Runtime;
using Witnessmark.Engineering.Shims;
using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;
using Witnessmark.Language.Wording;
using Witnessmark.Rendering.Site.Drawings;

namespace Witnessmark.Rendering.Site;

/// <summary>A pack of shims on the machine's page: what it sets, the as-built pack as a drawing, and the pack for every play.</summary>
internal static class ShimSheet
{
    public static ScriptObject Of(ShimItem shims, string figure, Words words)
    {
        var setting = ShimSetting.Of(shims);
        return new ScriptObject
        {
            ["id"] = shims.Id.Value,
            ["name"] = DeclaredName.SpokenIn(shims.Id.Value),
            ["what"] = shims.What is { } what ? $"{Say.Capital(what.Value.TrimEnd('.'))}." : "",
            ["says"] = Says(shims),
            ["lines"] = setting is null ? [] : Lines(setting, shims),
            ["figure"] = setting is null ? null : ShimDrawing.Of(figure, shims, setting.Stock, words)?.Model,
            ["caption"] = shims.AsBuilt is { } built ? $"With a pack of {built.Value} in. Find the play that was measured." : "",
            ["measured_in"] = $"{shims.Plausible?.Value.Unit}",
            ["made_in"] = $"{setting?.Stock.Unit}",
            ["rows"] = setting is null ? [] : Rows(setting, shims),
            ["other"] = setting is null ? "" : $"Another pack in: new pack = old pack {(setting.ThickerIsLooser ? '−' : '+')} (play − {setting.Target}). Measure the play again with the new pack in.",
            ["missing"] = Missing(shims, setting),
            ["basis"] = shims.Basis?.Value ?? "",
        };
    }

    private static string Says(ShimItem shims) => string.Join(". ", new[]
    {
        $"Sizes in stock: {Say.And(shims.Sizes.Select(s => $"{s.Value}"))}, up to {Say.Number(shims.Most?.Value ?? ShimItem.UsualMost)} pieces",
        shims.ThickerIs is { } way ? $"A thicker pack is {way.Value}" : "",
        shims.Play is { } play ? $"Play: {Measures.InBoth(play.Value)}{(shims.Target is { } aim ? $", aim at {aim.Value}" : "")}" : "",
    }.Where(s => s.Length > 0)) + ".";

    /// <summary>Why something that belongs here is not here.</summary>
    private static string Missing(ShimItem shims, ShimSetting? setting) => (setting, shims) switch
    {
        (null, _) => "No pack is worked out: sizes, direction or play do not say enough, or the sizes make too many packs.",
        (_, { AsBuilt: null }) => "No pack is drawn or listed: nothing says how thick the pack was as built.",
        var (s, i) when s.Stock.Pieces(i.AsBuilt!.Value.Value) is null => $"The pack as built is not drawn: up to {Say.Number(s.Stock.Most)} pieces of the sizes in stock do not make {i.AsBuilt.Value.Value}.",
        (_, { Plausible: null }) => "No packs are listed: nothing says which plays can be measured.",
        var (s, i) when ShimTable.Of(s, i.AsBuilt!.Value.Value, i.Plausible!.Value.Value).IsEmpty => $"No packs are listed: {i.Plausible.Value.Value} is open at one end or has too many steps.",
        _ => "",
    };

    // the rule, with the largest play that can be measured
    private static ScriptArray Lines(ShimSetting setting, ShimItem shims)
    {
        if (shims is not { AsBuilt: { } built, Plausible.Value.High: { } most } || setting.Choose(built.Value, most.Value) is not { } choice)
            return [];
        var lines = new ScriptArray { Line($"pack for a play of {most.Value}", choice.Wanted.Line), Line("packs that keep the play", $"{choice.Window}") };
        if (choice.Pack is { } pack)
        {
            lines.Add(Line("fewest pieces of them", pack.Sum.Line));
            lines.Add(Line("play with it in", pack.Play.Line));
        }
        return lines;
    }

    private static ScriptObject Line(string label, string line) => new() { ["label"] = label, ["line"] = line };

    private static ScriptArray Rows(ShimSetting setting, ShimItem shims) =>
        shims is { AsBuilt: { } built, Plausible: { } plausible } ? new(ShimTable.Of(setting, built.Value, plausible.Value).Select(r => Row(r, built.Value))) : [];

    private static ScriptObject Row(ShimRow row, Quantity built) => new()
    {
        ["play"] = Between(row.From, row.To),
        ["stays"] = row.Stays,
        ["pack"] = row.Stays ? built.NumberText : row.Choice.Pack?.Sum.Value.NumberText ?? "",
        ["pieces"] = row.Stays ? "as it was" : row.Choice.Pack is { } made ? Pieces(made) : "",
        ["then"] = row.Stays ? Between(row.From, row.To) : row.Choice.Pack is { } pack ? Between(pack.Play.Value, row.LastPlay!.Value) : "",
        ["none"] = row.Stays || row.Choice.Pack is not null ? "" : $"none: {row.Choice.Refusal!.Says}",
    };

    // equal ones together, as they are picked from the drawer; none breaks at its sign
    private static string Pieces(ShimPackMade pack) => string.Join(", ", pack.Pieces.GroupBy(p => p.Number).Select(g => $"{Say.Number(g.Count())}\u00A0×\u00A0{g.First().NumberText}"));

    private static string Between(Quantity from, Quantity to) => from == to ? from.NumberText : $"{from.NumberText} to {to.NumberText}";
}
