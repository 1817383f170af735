using System.Collections.Immutable;

namespace Witnessmark.Rendering.Figures;

/// <param name="From">First step during which it is so, counted from 0.</param>
/// <param name="To">Last such step.</param>
public readonly record struct Stretch(int From, int To);

/// <summary>Something that is so along the steps: a device in the machine, or a thing in a state.</summary>
public sealed record StripRow(string Name, bool Device, ImmutableArray<Stretch> Stretches);

/// <param name="Steps">Numbers as printed.</param>
public sealed record MachineStates(ImmutableArray<string> Steps, ImmutableArray<StripRow> Rows);

/// <summary>
/// What is in the machine when: a column a step, a row a device or a state. Devices, which must come out again, are black bars;
/// states are hatched. Many steps go on in a second strip below.
/// </summary>
public static class StateStrip
{
    public const double Width = 178;
    private const double Names = 58;
    private const double Spare = 1.8;
    private const double Bar = 3;
    private const double Between = 5;

    public static string Draw(string id, MachineStates states, Words words)
    {
        var column = states.Steps.Select(s => TextWidth.Of(s)).DefaultIfEmpty(1).Max() + Spare;
        var most = Math.Max(1, (int)((Width - Names - 0.5) / column));
        var strips = Enumerable.Range(0, (states.Steps.Length + most - 1) / most).Select(i => (From: i * most, To: Math.Min(states.Steps.Length, (i + 1) * most) - 1)).ToList();
        var height = strips.Sum(s => Height(states, s) + Between) + 4;
        var svg = new Svg(id, Width, height, words.WhatIsInWhen, string.Join(". ", states.Rows.Select(r => Told(r, states))));
        var hatch = svg.Hatch();
        var y = 0.5;
        foreach (var strip in strips)
        {
            One(svg, states, strip, (y, column, hatch), words);
            y += Height(states, strip) + Between;
        }
        var second = TextWidth.Of(words.MustComeOut) + 16;
        svg.Rect(1, y - 1, 7, Bar, "#000", 0.35).Text(9.5, y + 0.5, words.MustComeOut);
        svg.Rect(second, y - 1, 7, Bar, hatch, 0.5).Text(second + 8.5, y + 0.5, words.ItsState);
        return svg.Write();
    }

    private static void One(Svg svg, MachineStates states, (int From, int To) strip, (double Y, double Column, string Hatch) at, Words words)
    {
        var y = at.Y + (TextWidth.Leading / 2);
        svg.Text(1, y, words.Step);
        for (var step = strip.From; step <= strip.To; step++)
            svg.Label(Names + ((step - strip.From + 0.5) * at.Column), y, Svg.Floor, states.Steps[step]);
        y = at.Y + TextWidth.Leading + 1;
        var right = Names + ((strip.To - strip.From + 1) * at.Column);
        svg.Line(0.5, y, right, y, 0.5);
        foreach (var row in Within(states, strip))
        {
            var name = NameLines(row);
            svg.Lines(1, y + 0.8 + (TextWidth.Leading / 2), name);
            y += RowHeight(row);
            foreach (var stretch in row.Stretches.Where(s => Meets(s, strip)))
            {
                var (from, to) = (Math.Max(stretch.From, strip.From) - strip.From, Math.Min(stretch.To, strip.To) - strip.From + 1);
                svg.Rect(Names + (from * at.Column) + 0.3, y - (RowHeight(row) / 2) - (Bar / 2), ((to - from) * at.Column) - 0.6, Bar, row.Device ? "#000" : at.Hatch, 0.5);
            }
            svg.Line(0.5, y, right, y, 0.35);
        }
    }

    private static IEnumerable<StripRow> Within(MachineStates states, (int From, int To) strip) => states.Rows.Where(r => r.Stretches.Any(s => Meets(s, strip)));

    private static bool Meets(Stretch stretch, (int From, int To) strip) => stretch.From <= strip.To && stretch.To >= strip.From;

    private static double Height(MachineStates states, (int From, int To) strip) => TextWidth.Leading + 1 + Within(states, strip).Sum(RowHeight);

    private static double RowHeight(StripRow row) => (NameLines(row).Length * TextWidth.Leading) + 1.6;

    private static ImmutableArray<string> NameLines(StripRow row) => TextWidth.Wrap(row.Name, Names - 3);

    private static string Told(StripRow row, MachineStates states) =>
        $"{row.Name}: {string.Join(", ", row.Stretches.Select(s => s.From == s.To ? states.Steps[s.From] : $"{states.Steps[s.From]}–{states.Steps[s.To]}"))}";
}
