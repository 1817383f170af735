using Scriban.Runtime;
using Witnessmark.Engineering;
using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;
using Witnessmark.Rendering.Figures;
using Witnessmark.Rendering.Site.Drawings;

namespace Witnessmark.Rendering.Site;

/// <summary>A machine's data sheet with its worked lines: where every number that a procedure uses comes from.</summary>
internal static class MachinePage
{
    public static OutputFile Render(Machine machine, SiteData data, PageFrame frame)
    {
        var worked = new WorkedLines(data.Library.Workshop);
        var words = Words.Of(data.Library.Workshop.Language?.Value);
        var content = new ScriptObject
        {
            ["id"] = machine.Id.Value,
            ["title"] = machine.Title?.Value ?? machine.Id.Value,
            ["serials"] = machine.Serials?.Value.ToString() ?? "",
            ["basis"] = machine.Basis?.Value ?? "",
            ["fasteners"] = new ScriptArray(machine.Fasteners.Select((g, i) => Group(g, worked, MachineDrawings.Ring(g, i, words)))),
            ["stacks"] = new ScriptArray(machine.Stacks.Select((s, i) => Stack(s, machine, worked, StackDrawing.Of(FigureId.Of("stack", i), s, machine.Parts.Find, words)))),
            ["shims"] = new ScriptArray(machine.Shims.Select((s, i) => ShimSheet.Of(s, FigureId.Of("shims", i), words))),
            ["wear"] = WearSheet.Of(machine, data.Wear, words),
            ["tables"] = Tables(machine),
        };
        return frame.Page(SitePages.PathOf(machine), machine.Title?.Value ?? machine.Id.Value, "machine.html", content);
    }

    private static ScriptObject Group(FastenerGroup group, WorkedLines worked, Drawing? drawing) => new()
    {
        ["id"] = group.Id.Value,
        ["name"] = DeclaredName.SpokenIn(group.Id.Value),
        ["what"] = Join($"{group.Count?.Value} × {group.Thread?.Value}", group.Length is { } l ? $"{l.Value} long" : "", group.PropertyClass is { } c ? $"class {c.Value}" : group.Strength ?? "",
            group.Condition is { } d ? $"threads {d.Value}" : "", group.NutFactor is { } k ? $"nut factor {k.Value}" : "", group.FitsOneWay is { } f ? $"fits one way: {f.Value}" : ""),
        ["torque"] = group.Torque is { } torque ? Measures.InBoth(torque.Value) : "",
        ["lines"] = Lines(worked.Of(group)),
        ["figure"] = drawing?.Model,
        ["basis"] = group.Basis?.Value ?? "",
    };

    private static ScriptObject Stack(PartStack stack, Machine machine, WorkedLines worked, Drawing? drawing) => new()
    {
        ["id"] = stack.Id.Value,
        ["name"] = DeclaredName.SpokenIn(stack.Id.Value),
        ["order"] = $"From the {stack.From?.Value}: " + string.Join(", ", stack.Order.Select(Row)),
        ["lines"] = Lines(worked.Of(stack, machine)),
        ["figure"] = drawing?.Model,
        ["basis"] = stack.Basis?.Value ?? "",
    };

    private static string Row(StackRow row)
    {
        var pieces = string.Join(", ", row.Pieces.Select(p => p.FacedTo is { } end ? $"{DeclaredName.SpokenIn(p.Part.Value)} (faced side to {end.Value})" : DeclaredName.SpokenIn(p.Part.Value)));
        return row.Times == 1 ? pieces : $"{row.Times} × ({pieces})";
    }

    private static ScriptArray Lines(IEnumerable<(string Label, string Line)> lines) =>
        new(lines.Select(l => new ScriptObject { ["label"] = l.Label, ["line"] = l.Line }));

    private static ScriptArray Tables(Machine machine)
    {
        var tables = new ScriptArray();
        Add("Parts", ["Part", "Mark", "Count", "Thickness", "Worn at", "Teeth", "Replaced"], machine.Parts.Select(p => (string[])
            [DeclaredName.SpokenIn(p.Id.Value), p.Mark?.Value ?? "", $"{p.Count?.Value}", Of(p.Thickness), Of(p.WornAt), p.Spline?.Value ?? "", p.Replace?.Value ?? p.Reuse?.Value ?? ""]));
        Add("Readings", ["Reading", "Of", "Points", "Judged by", "Limits", "Outside"], machine.Readings.Select(r => (string[])
            [DeclaredName.SpokenIn(r.Id.Value), DeclaredName.SpokenIn(r.Of?.Value ?? ""), $"{r.Points?.Value ?? 1}", r.Judge?.Value ?? "each",
                string.Join("; ", r.Bands.Select(b => $"{DeclaredName.SpokenIn(b.Name.Value)} {Measures.InBoth(b.Range.Value, r.JudgesDifference)}")), r.Outside?.Value ?? ""]));
        Add("Worked-out values", ["Value", "Formula", "Outside"], machine.Values.Select(v => (string[])
            [DeclaredName.SpokenIn(v.Id.Value), DeclaredName.SpokenIn(v.Formula?.Value ?? ""), v.Outside?.Value ?? ""]));
        Add("Devices that must come out again", ["Device", "Tags", "Blocks", "Wording"], machine.Devices.Select(d => (string[])
            [DeclaredName.SpokenIn(d.Id.Value), string.Join(" ", d.Tags.Select(t => t.Value)), DeclaredName.SpokenIn(string.Join(", ", d.Blocks.Select(b => b.Value))), d.Wording?.Value ?? ""]));
        Add("Hazards", ["Hazard", "Severity", "If ignored", "Controls"], machine.Hazards.Select(h => (string[])
            [DeclaredName.SpokenIn(h.Id.Value), $"{h.Severity?.Value}".ToLowerInvariant(), $"{h.IfIgnored?.Value}".ToLowerInvariant(), string.Join(", ", h.Controls.Select(c => c.Value))]));
        Add("Loads", ["Load", "Mass", "Gear", "Angle", "Radius"], machine.Loads.Select(l => (string[])
            [DeclaredName.SpokenIn(l.Id.Value), Of(l.Mass), DeclaredName.SpokenIn(l.Gear?.Value ?? ""), $"{l.Angle?.Value}", Of(l.Radius)]));
        Add("Interlocks", ["Rule", "Says", "Because"], machine.Interlocks.Select(i => (string[])[i.Id.Value, Says(i), i.Because?.Value ?? ""]));
        return tables;

        void Add(string title, string[] head, IEnumerable<string[]> rows)
        {
            var body = new ScriptArray(rows.Select(r => new ScriptArray(r)));
            if (body.Count > 0)
                tables.Add(new ScriptObject { ["title"] = title, ["head"] = new ScriptArray(head), ["rows"] = body });
        }
    }

    private static string Says(Interlock rule) => Join(
        Labelled("never", rule.Never), Labelled("before", rule.Before), Labelled("when", rule.When), Labelled("requires", rule.Requires),
        Labelled("every", rule.Every), Labelled("has", rule.Has), Labelled("after", rule.After), Labelled("owes", rule.Owes), Labelled("prove again", rule.ProveAgain));

    private static string Labelled(string label, Located<string>? value) => value is { } v ? $"{label} {DeclaredName.SpokenIn(v.Value)}" : "";

    private static string Of(Located<Toleranced>? value) => value is { } v ? Measures.InBoth(v.Value) : "";

    private static string Of(Located<Quantity>? value) => value is { } v ? Measures.InBoth(v.Value) : "";

    private static string Join(params string[] parts) => string.Join(", ", parts.Where(p => p.Length > 0));
}
