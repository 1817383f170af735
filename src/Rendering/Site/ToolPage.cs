using Scriban.Runtime;
using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;

namespace Witnessmark.Rendering.Site;

/// <summary>What is on a truck: ranges and ratings that the rules go by, and until when each wrench and gauge may be used.</summary>
internal static class ToolPage
{
    private const string NoDate = "no date on record";

    public static string PathOf(ToolList tools) => $"tools/{SitePages.FileName(tools.Id.Value)}.html";

    public static OutputFile Render(ToolList tools, SiteData data, PageFrame frame)
    {
        var title = tools.Title?.Value ?? tools.Id.Value;
        var content = new ScriptObject { ["title"] = title, ["id"] = tools.Id.Value, ["tables"] = Tables(tools, data.Library.Register) };
        return frame.Page(PathOf(tools), title, "tools.html", content);
    }

    public static string Extent(ToolList tools) => string.Join(", ", new (int Number, string One, string Many)[]
    {
        (tools.Wrenches.Count, "wrench", "wrenches"), (tools.Gauges.Count, "gauge", "gauges"), (tools.Lifting.Count, "piece of lifting gear", "pieces of lifting gear"),
        (tools.Containers.Count, "container", "containers"), (tools.Others.Count, "other tool", "other tools"),
    }.Where(c => c.Number > 0).Select(c => Say.Count(c.Number, c.One, c.Many)));

    private static ScriptArray Tables(ToolList tools, Register register)
    {
        var tables = new ScriptArray();
        Add("Wrenches and adapters", ["Tool", "Calibrated until", "Kind", "Range", "Division", "Length"], tools.Wrenches.Select(w => (string[])
            [DeclaredName.Spoken(w.Id.Value), w.IsTorqueWrench ? Due(w.Id.Value, register) : "–", w.Kind?.Value ?? "", Of(w.Range), Of(w.Scale), Of(w.Length ?? w.Extension)]));
        Add("Gauges", ["Gauge", "Calibrated until", "Measures", "Range", "Reads to"], tools.Gauges.Select(g => (string[])
            [DeclaredName.Spoken(g.Id.Value), g.Calibrated?.Value is true ? Due(g.Id.Value, register) : "is not calibrated", g.Measures?.Value ?? "", Of(g.Range), Of(g.Resolution)]));
        Add("Lifting gear", ["Gear", "Legs", "Mass", "Rated", "At radius"], tools.Lifting.Select(l => (string[])
            [DeclaredName.Spoken(l.Id.Value), $"{l.Legs?.Value}", Of(l.Mass), Of(l.Rated), string.Join("; ", l.Chart.Select(c => $"{Measures.InBoth(c.Radius.Value)}: {Measures.InBoth(c.Capacity.Value)}"))]));
        Add("Containers", ["Container", "For", "Holds", "Wording"], tools.Containers.Select(c => (string[])
            [DeclaredName.Spoken(c.Id.Value), DeclaredName.SpokenIn(c.For?.Value ?? ""), Of(c.Volume), c.Wording?.Value ?? ""]));
        Add("Other tools", ["Tool", "Kind", "For"], tools.Others.Select(o => (string[])[DeclaredName.Spoken(o.Id.Value), o.Kind?.Value ?? "", o.For?.Value ?? ""]));
        return tables;

        void Add(string heading, string[] head, IEnumerable<string[]> rows)
        {
            var body = new ScriptArray(rows.Select(r => new ScriptArray(r)));
            if (body.Count > 0)
                tables.Add(new ScriptObject { ["title"] = heading, ["head"] = new ScriptArray(head), ["rows"] = body });
        }
    }

    /// <summary>Of each tool of that name the latest date: <c>W-0312 until 2032-03-14</c>.</summary>
    private static string Due(string tool, Register register)
    {
        var dates = register.Calibrated.Where(c => c.Tool.Value == tool).GroupBy(c => c.Number.Value, StringComparer.Ordinal)
            .Select(g => $"{g.Key}: {g.Select(c => c.Due.Value).Order(StringComparer.Ordinal).Last()}").Order(StringComparer.Ordinal).ToList();
        return dates.Count == 0 ? NoDate : string.Join("; ", dates);
    }

    private static string Of(Located<Quantity>? value) => value is { } v ? Measures.InBoth(v.Value) : "";

    private static string Of(Located<QuantityRange>? value) => value is { } v ? Measures.InBoth(v.Value) : "";
}
