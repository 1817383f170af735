using System.Collections.Immutable;
using System.Globalization;

namespace Witnessmark.Rendering.Figures;

/// <param name="Number">As printed: 12, 16.3.</param>
/// <param name="Minutes">The longest time written; null when none is.</param>
/// <param name="Doers">Places of the roles that do it.</param>
/// <param name="Checker">Place of the role that checks it, or null.</param>
public sealed record CrewStep(string Number, string Name, decimal? Minutes, ImmutableArray<int> Doers, int? Checker);

/// <param name="Roles">One column each.</param>
/// <param name="Steps">One after the other; some have a time.</param>
public sealed record CrewTimes(ImmutableArray<string> Roles, ImmutableArray<CrewStep> Steps);

/// <summary>
/// Who works when: time runs down, a column a role, each step as long as its longest time. Work of one is a white bar, of
/// several together a black bar each, tied; a check is a hatched bar tied to the work. A step without a time is a thick line.
/// </summary>
public static class CrewBars
{
    private const double Axis = 15;
    private const double Columns = 18;
    private const double Narrowest = 24;
    private const double Widest = 42;
    private const double Between = 8;
    private const double Labels = 84;
    private const double Least = 60;
    private const double NoTime = 0.9;
    private const double Tie = 1.4;

    public static double Width(CrewTimes crew) => LabelsAt(crew) + Labels;

    /// <summary>mm drawn for a minute.</summary>
    public static double Scale(CrewTimes crew) =>
        Math.Max(Least, SideLabels.HeightOf(crew.Steps.Select(Says), Labels - 1)) / Math.Max(0.001, (double)crew.Steps.Sum(s => s.Minutes ?? 0));

    public static string Draw(string id, CrewTimes crew, Words words)
    {
        var heads = crew.Roles.Select(r => TextWidth.Fit(r, Column(crew) - 1.5, 3)).ToList();
        var top = (heads.Select(h => h.Length).DefaultIfEmpty(1).Max() * TextWidth.Leading) + 2;
        var scale = Scale(crew);
        var bottom = top + ((double)crew.Steps.Sum(s => s.Minutes ?? 0) * scale);
        var places = Places(crew, top, scale);
        var labels = SideLabels.Spread(places.Select(p => ((p.Top + p.Bottom) / 2, Says(p.Step))), Labels - 1, top - 1, bottom + 1);
        var legend = Math.Max(bottom, labels.Bottom) + 5;
        var svg = new Svg(id, Width(crew), legend + TextWidth.Leading + 5, words.WhoWorksWhen, string.Join(". ", crew.Steps.Select(s => Told(s, crew))));
        var hatch = svg.Hatch();
        for (var i = 0; i < heads.Count; i++)
            svg.Lines(Left(crew, i) + (Bar(crew) / 2), TextWidth.Leading / 2, heads[i], Anchor.Middle);
        Minutes(svg, crew, top, bottom, scale);
        foreach (var (step, from, to) in places)
            One(svg, crew, step, (from, to - from), hatch);
        labels.Draw(svg, LabelsAt(crew) - 12, LabelsAt(crew), [.. crew.Steps.Select(s => RightOf(s, crew))]);
        Legend(svg, legend, hatch, words);
        return svg.Write();
    }

    // wide enough for the longest word of a role
    private static double Column(CrewTimes crew) =>
        Math.Clamp(crew.Roles.SelectMany(r => r.Split(' ')).Select(w => TextWidth.Of(w) + 2).DefaultIfEmpty(0).Max(), Narrowest, Widest);

    private static double LabelsAt(CrewTimes crew) => Columns + (crew.Roles.Length * Column(crew)) + 12;

    private static double Left(CrewTimes crew, int role) => Columns + (role * Column(crew)) + (Between / 2);

    private static double Bar(CrewTimes crew) => Column(crew) - Between;

    private static ImmutableArray<(CrewStep Step, double Top, double Bottom)> Places(CrewTimes crew, double top, double scale)
    {
        var places = ImmutableArray.CreateBuilder<(CrewStep, double, double)>();
        foreach (var step in crew.Steps)
            places.Add((step, top, top += (double)(step.Minutes ?? 0) * scale));
        return places.ToImmutable();
    }

    private static void One(Svg svg, CrewTimes crew, CrewStep step, (double Y, double Height) at, string hatch)
    {
        var together = step.Doers.Length > 1;
        // a hair of white keeps bars that follow each other apart
        var (y, h) = at.Height >= NoTime ? (at.Y + 0.2, at.Height - 0.4) : (at.Y - (NoTime / 2), NoTime);
        foreach (var role in step.Doers)
            svg.Rect(Left(crew, role), y, Bar(crew), h, together || at.Height == 0 ? "#000" : "#fff", 0.35);
        if (step.Checker is { } checker && !step.Doers.Contains(checker))
            svg.Rect(Left(crew, checker), y, Bar(crew), h, hatch, 0.35);
        var (roles, tie) = (Roles(step), Math.Min(Tie, h / 2));
        foreach (var (left, right) in roles.Zip(roles.Skip(1)))
            svg.Rect(Left(crew, left) + Bar(crew), y + ((h - tie) / 2), Left(crew, right) - Left(crew, left) - Bar(crew), tie, "#000", 0.35);
    }

    private static List<int> Roles(CrewStep step) => [.. step.Doers.Concat(step.Checker is { } checker ? [checker] : []).Distinct().Order()];

    private static double RightOf(CrewStep step, CrewTimes crew) => Roles(step) is [.., var last] ? Left(crew, last) + Bar(crew) + 0.5 : LabelsAt(crew) - 12;

    private static void Minutes(Svg svg, CrewTimes crew, double top, double bottom, double scale)
    {
        var total = (double)crew.Steps.Sum(s => s.Minutes ?? 0);
        svg.Line(Axis, top, Axis, bottom, 0.5).Text(Axis - 3, TextWidth.Leading / 2, "min", Anchor.End);
        foreach (var minute in Ticks.Between(0, total, Ticks.Step(0, total, Math.Max(2, (int)((bottom - top) / 12)))))
            svg.Line(Axis - 1.5, top + (minute * scale), Axis, top + (minute * scale), 0.5).Text(Axis - 3, top + (minute * scale), Number(minute), Anchor.End);
    }

    private static void Legend(Svg svg, double y, string hatch, Words words)
    {
        var x = 1.0;
        foreach (var (fill, says) in new[] { ("#fff", words.OneAlone), ("#000", words.Together), (hatch, words.Checking) })
        {
            svg.Rect(x, y - 2, 7, 4, fill, 0.5).Text(x + 8.5, y, says);
            x += 13 + TextWidth.Of(says);
        }
        svg.Text(1, y + TextWidth.Leading + 0.6, words.LongestTimes);
    }

    private static string Says(CrewStep step) => $"{step.Number} {step.Name}{(step.Minutes is { } m ? $", {Number((double)m)}\u00A0min" : "")}";

    private static string Told(CrewStep step, CrewTimes crew) =>
        $"{Says(step)}: {string.Join(", ", step.Doers.Concat(step.Checker is { } c ? [c] : []).Select(r => crew.Roles[r]))}";

    private static string Number(double minutes) => minutes.ToString("0.##", CultureInfo.InvariantCulture);
}
