namespace Witnessmark.Press.Tests.Proof;

/// <summary>Nothing stands on anything else, and nothing leaves the print area.</summary>
internal static class InkRules
{
    private const double Hair = 0.8;
    private const double Edge = 1.2;
    private const double Air = 1; // pt between two words that do not belong together

    public static IEnumerable<Broken> Broken(PrintedPage page)
    {
        foreach (var run in page.Runs.Where(r => !page.Inner.Holds(r.Place, Edge)))
            yield return new Broken(page.Number, PageRule.Inside, $"\"{run.Text}\" runs out of the print area: {Where(run.Place, page)}");
        foreach (var drawn in page.Drawn.Where(d => !page.Inner.Holds(d, Edge)))
            yield return new Broken(page.Number, PageRule.Inside, $"something drawn runs out of the print area: {Where(drawn, page)}");
        for (var i = 0; i < page.Runs.Count; i++)
            for (var j = i + 1; j < page.Runs.Count; j++)
                if (page.Runs[i].Place.Meets(page.Runs[j].Place, -Air, Hair))
                    yield return new Broken(page.Number, PageRule.Overlap, $"\"{page.Runs[i].Text}\" and \"{page.Runs[j].Text}\" stand on or against each other");
        foreach (var frame in page.Frames)
            foreach (var run in page.Runs.Where(r => r.Place.Meets(frame, Hair) && !frame.Holds(r.Place, 0)))
                yield return new Broken(page.Number, PageRule.Overlap, $"\"{run.Text}\" crosses the line of a box");
        for (var i = 0; i < page.Frames.Count; i++)
            for (var j = i + 1; j < page.Frames.Count; j++)
                if (page.Frames[i].Meets(page.Frames[j], Hair) && !page.Frames[i].Holds(page.Frames[j], 0) && !page.Frames[j].Holds(page.Frames[i], 0))
                    yield return new Broken(page.Number, PageRule.Overlap, "two boxes stand on each other");
    }

    private static string Where(Area area, PrintedPage page) =>
        $"{(area.Left - page.Inner.Left) / Area.Millimetre:0.0} left, {(page.Inner.Right - area.Right) / Area.Millimetre:0.0} right, {(area.Bottom - page.Inner.Bottom) / Area.Millimetre:0.0} below, {(page.Inner.Top - area.Top) / Area.Millimetre:0.0} mm above are left";
}
