using System.Collections.Immutable;

namespace Witnessmark.Rendering.Figures;

/// <param name="Name">The outcome.</param>
/// <param name="When">Any of these leads to it; empty when nothing is said.</param>
/// <param name="Then">What is done.</param>
/// <param name="Stops">Work stops there.</param>
public sealed record Branch(string Name, ImmutableArray<string> When, string Then, bool Stops);

/// <param name="Asked">What is decided or measured.</param>
public sealed record Decision(string Asked, ImmutableArray<Branch> Branches);

/// <summary>A decision as a trunk with its outcomes: what leads to each, its name, what is done then. A stop is white on black.</summary>
public static class DecisionFlow
{
    public const double Width = 170;
    private const double Trunk = 7;
    private const double When = 15;
    private const double WhenWidth = 52;
    private const double Box = 76;
    private const double BoxWidth = 36;
    private const double Then = 121;
    private const double ThenWidth = Width - Then - 1;
    private const double Gap = 3.5;
    private const double Pad = 3.2;

    public static string Draw(string id, Decision decision, Words words)
    {
        var rows = decision.Branches.Select(b => new Row(b, Alternatives(b, words), TextWidth.Wrap(b.Name, BoxWidth - 3), TextWidth.Wrap(b.Then, ThenWidth))).ToList();
        var asked = TextWidth.Wrap(decision.Asked, Width - 8);
        var head = (asked.Length * TextWidth.Leading) + Pad;
        var height = 1 + head + rows.Sum(r => r.Height + Gap) + 0.5;
        var svg = new Svg(id, Width, height, $"{words.Decision}: {decision.Asked}", string.Join(". ", decision.Branches.Select(b => Said(b, words))));
        svg.Rect(0.5, 0.5, asked.Max(l => TextWidth.Of(l)) + 6, head, "#fff", 0.9).Lines(3.5, 0.5 + ((Pad + TextWidth.Leading) / 2), asked);
        var y = 0.5 + head + Gap;
        foreach (var row in rows)
        {
            Draw(svg, row, y + (row.Height / 2));
            y += row.Height + Gap;
        }
        if (rows is [.., var last])
            svg.Line(Trunk, 0.5 + head, Trunk, y - Gap - (last.Height / 2), 0.7);
        return svg.Write();
    }

    private static void Draw(Svg svg, Row row, double middle)
    {
        var reach = row.When.Select(l => TextWidth.Of(l)).DefaultIfEmpty(0).Max();
        if (reach == 0)
            Arrow(svg, Trunk, Box, middle);
        else
        {
            svg.Line(Trunk, middle, When - 1.5, middle, 0.7);
            Centred(svg, When, middle, row.When, Anchor.Start, "#000");
            Arrow(svg, When + reach + 1.5, Box, middle);
        }
        var high = (row.Name.Length * TextWidth.Leading) + Pad;
        svg.Rect(Box, middle - (high / 2), BoxWidth, high, row.Branch.Stops ? "#000" : "#fff", 0.7);
        Centred(svg, Box + (BoxWidth / 2), middle, row.Name, Anchor.Middle, row.Branch.Stops ? "#fff" : "#000");
        Arrow(svg, Box + BoxWidth, Then - 1.5, middle);
        Centred(svg, Then, middle, row.Then, Anchor.Start, "#000");
    }

    private static void Centred(Svg svg, double x, double middle, ImmutableArray<string> lines, Anchor anchor, string fill) =>
        svg.Lines(x, middle - ((lines.Length - 1) / 2.0 * TextWidth.Leading), lines, anchor, fill);

    private static void Arrow(Svg svg, double from, double to, double y) =>
        svg.Line(from, y, to - 2.5, y, 0.7).Polygon([(to, y), (to - 3, y - 1.5), (to - 3, y + 1.5)], "#000");

    private static ImmutableArray<string> Alternatives(Branch branch, Words words) =>
        [.. branch.When.SelectMany((w, i) => TextWidth.Wrap(i == 0 ? w : $"{words.Or} {w}", WhenWidth))];

    private static string Said(Branch branch, Words words) =>
        $"{string.Join($" {words.Or} ", branch.When)}{(branch.When.IsEmpty ? "" : ": ")}{branch.Name}; {branch.Then}";

    private sealed record Row(Branch Branch, ImmutableArray<string> When, ImmutableArray<string> Name, ImmutableArray<string> Then)
    {
        public double Height => Math.Max(Math.Max(When.Length, Then.Length) * TextWidth.Leading, (Name.Length * TextWidth.Leading) + Pad);
    }
}
