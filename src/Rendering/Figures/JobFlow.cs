using System.Collections.Immutable;
using System.Globalization;

namespace Witnessmark.Rendering.Figures;

/// <param name="Number">As printed.</param>
/// <param name="Performs">The procedure that it is done by: <c>WB-20, block</c>; empty for a step of the job's own.</param>
/// <param name="Minutes">Longest time; null when none is written.</param>
/// <param name="MayBeLeft">Whether people may leave the machine after it.</param>
/// <param name="In">For each kind of device, whether some of it is in the machine after the step.</param>
public sealed record FlowStep(string Number, string Name, string Performs, decimal? Minutes, bool MayBeLeft, ImmutableArray<bool> In);

/// <param name="Heading">Empty for steps that stand under none.</param>
public sealed record FlowSection(string Heading, ImmutableArray<FlowStep> Steps);

/// <param name="Devices">Kinds that come up on the way, in the order of their first step.</param>
public sealed record Flow(ImmutableArray<string> Devices, ImmutableArray<FlowSection> Sections);

/// <summary>
/// A job from the first step to the last: what follows what, how long it takes at most and what o'clock of the work it is then, after
/// which steps the machine may be left, and which devices are in it.
/// </summary>
public static class JobFlow
{
    private const double Narrowest = 178;
    private const double Clock = 14;
    private const double Stop = 8;
    private const double Column = 5.6;
    private const double Spare = 1.8;
    private const double Least = 52;
    private const double LongestName = 45;

    public static string Draw(string id, Flow flow, Words words)
    {
        var (names, width) = (Names(flow), Width(flow));
        var heads = flow.Devices.Select(d => TextWidth.Fit(d, LongestName)).ToList();
        var head = heads.Select(d => TextWidth.Of(d)).Append(TextWidth.Of(words.MayBeLeft)).Max() + 3;
        var legend = head + flow.Sections.Sum(s => Height(s, names)) + 6;
        var svg = new Svg(id, width, legend + TextWidth.Leading + 4, words.JobInOrder, string.Join(" ", flow.Sections.SelectMany(s => s.Steps).Select(s => Told(s, flow, words))));
        svg.Text(Clock - 2, head - 3, "h", Anchor.End).Upright(Clock + (Stop / 2), head - 1.5, words.MayBeLeft);
        for (var i = 0; i < flow.Devices.Length; i++)
            svg.Upright(Left(names, i) + (Column / 2), head - 1.5, heads[i]);
        var (y, minutes) = (head, 0m);
        var before = flow.Devices.Select(_ => false).ToImmutableArray();
        foreach (var section in flow.Sections)
        {
            (y, minutes) = One(svg, section, before, (y, minutes), (names, width));
            before = section.Steps is [.., var last] ? last.In : before;
        }
        svg.Line(0.5, y, width - 0.5, y, 0.5);
        svg.Circle(3, legend - 1, 1.5, "#000", 0).Text(6.5, legend - 1, words.MayBeLeftAfter);
        var second = TextWidth.Of(words.MayBeLeftAfter) + 14;
        svg.Rect(second, legend - 3, 4, 4, "#000", 0).Text(second + 6, legend - 1, words.MustComeOut).Text(1, legend + TextWidth.Leading + 1, words.HoursOfJob);
        return svg.Write();
    }

    /// <summary>As wide as the devices leave it.</summary>
    private static double Names(Flow flow) => Math.Max(Least, Narrowest - Clock - Stop - (flow.Devices.Length * Column) - 1);

    public static double Width(Flow flow) => Clock + Stop + Names(flow) + (flow.Devices.Length * Column) + 1;

    private static double Left(double names, int device) => Clock + Stop + names + (device * Column);

    private static double Height(FlowSection section, double names) => HeadOf(section) + section.Steps.Sum(s => Height(s, names));

    private static double HeadOf(FlowSection section) => section.Heading.Length == 0 ? 0 : TextWidth.Leading + Spare;

    private static double Height(FlowStep step, double names) => (Lines(step, names).Length * TextWidth.Leading) + Spare;

    private static ImmutableArray<string> Lines(FlowStep step, double names) => TextWidth.Wrap(Says(step), names - 3);

    private static string Says(FlowStep step) => $"{step.Number} {step.Name}{(step.Performs.Length == 0 ? "" : $" · {step.Performs}")}{(step.Minutes is { } m ? $", {Number(m)}\u00A0min" : "")}";

    private static (double Y, decimal Minutes) One(Svg svg, FlowSection section, ImmutableArray<bool> before, (double Y, decimal Minutes) at, (double Names, double Width) wide)
    {
        var ((y, minutes), (names, width)) = (at, wide);
        svg.Line(0.5, y, width - 0.5, y, 0.9);
        if (section.Heading.Length > 0)
        {
            svg.Line(0.5, y + HeadOf(section), width - 0.5, y + HeadOf(section), 0.35);
            svg.Text(Clock + 1, y + (HeadOf(section) / 2), TextWidth.Fit(section.Heading, names + Stop - 3)).Text(Clock - 2, y + (HeadOf(section) / 2), OClock(minutes), Anchor.End);
            Bars(svg, before, y, HeadOf(section), names);
            y += HeadOf(section);
        }
        foreach (var step in section.Steps)
        {
            var height = Height(step, names);
            minutes += step.Minutes ?? 0;
            svg.Lines(Clock + Stop + 1, y + (Spare / 2) + (TextWidth.Leading / 2), Lines(step, names));
            if (step.MayBeLeft)
                svg.Circle(Clock + (Stop / 2), y + (height / 2), 1.5, "#000", 0);
            svg.Line(Clock, y + height, width - 0.5, y + height, 0.35);
            Bars(svg, step.In, y, height, names);
            y += height;
        }
        return (y, minutes);
    }

    private static void Bars(Svg svg, ImmutableArray<bool> inside, double y, double height, double names)
    {
        for (var i = 0; i < inside.Length; i++)
            if (inside[i])
                svg.Rect(Left(names, i) + 0.8, y, Column - 1.6, height, "#000");
    }

    private static string OClock(decimal minutes) => string.Create(CultureInfo.InvariantCulture, $"{(int)(minutes / 60)}:{(int)(minutes % 60):00}");

    private static string Told(FlowStep step, Flow flow, Words words)
    {
        var inside = flow.Devices.Where((_, i) => step.In[i]).ToList();
        return $"{Says(step)}{(step.MayBeLeft ? $"; {words.MayBeLeftAfter}" : "")}{(inside.Count == 0 ? "" : $"; {words.MustComeOut}: {string.Join(", ", inside)}")}.";
    }

    private static string Number(decimal minutes) => minutes.ToString("0.##", CultureInfo.InvariantCulture);
}
