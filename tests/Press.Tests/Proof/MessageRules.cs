using Witnessmark.Language.Model;
using Witnessmark.Records.Sheets;

namespace Witnessmark.Press.Tests.Proof;

/// <summary>Codes and messages of the plan, looked for on paper: the sheet's own markup has no say here.</summary>
internal static class MessageRules
{
    private const double CodeSize = 20; // pt, --code in sheet.css

    public static IEnumerable<Broken> Broken(SheetPlan plan, IReadOnlyList<PrintedPage> pages)
    {
        var codes = pages.SelectMany((p, i) => Codes(p).Select(c => (c.Code, c.At, Page: i))).ToLookup(c => c.Code);
        var planned = plan.Steps.Select(s => s.Code.ToString()).ToList();
        foreach (var code in planned.Where(c => codes[c].Count() != 1))
            yield return new Broken(codes[code].FirstOrDefault().Page + 1, PageRule.Code, $"step {code} stands on {(codes[code].Any() ? "pages " + string.Join(", ", codes[code].Select(c => pages[c.Page].Number)) : "no page")}");
        foreach (var other in codes.Where(c => !planned.Contains(c.Key)))
            yield return new Broken(pages[other.First().Page].Number, PageRule.Code, $"there is no step {other.Key}");
        foreach (var section in plan.Sections)
            foreach (var broken in Section([.. section.Steps.SelectMany(s => s.Performed.Prepend(s))], codes, pages))
                yield return broken;
    }

    private static IEnumerable<Broken> Section(List<SheetStep> steps, ILookup<string, (string Code, int At, int Page)> codes, IReadOnlyList<PrintedPage> pages)
    {
        var inForce = new List<(string Nature, int Until)>();
        var last = -1;
        for (var i = 0; i < steps.Count; i++)
        {
            if (!codes[steps[i].Code.ToString()].Any())
                continue;
            var (_, at, page) = codes[steps[i].Code.ToString()].First();
            inForce.RemoveAll(m => m.Until < i);
            foreach (var nature in Begin(steps, i).Select(m => SheetText.Bare(steps[i].Fills.In(m.Nature.Value))))
            {
                inForce.Add((nature, Until(steps, i)));
                if (Above(pages[page], nature, at) < 0)
                    yield return new Broken(pages[page].Number, PageRule.Message, $"\"{nature}\" does not stand above step {steps[i].Code}");
            }
            if (page != last)
                foreach (var (nature, _) in inForce.Where(m => Above(pages[page], m.Nature, at) < 0))
                    yield return new Broken(pages[page].Number, PageRule.Repeated, $"\"{nature}\" holds for step {steps[i].Code} and is not said on its page");
            last = page;
        }
    }

    /// <summary>Messages before a section hold from its first step on.</summary>
    private static IEnumerable<SafetyMessage> Begin(List<SheetStep> steps, int at)
    {
        var own = steps[at];
        return steps.FindIndex(s => AreTogether(s, own)) == at ? own.Place.Section.Messages.Concat(own.Step.Messages) : own.Step.Messages;
    }

    /// <summary>A message holds to the end of its section; one of a common part to the end of that, this time.</summary>
    private static int Until(List<SheetStep> steps, int at) =>
        ReferenceEquals(steps[at].Place.Section, steps[0].Place.Section) ? steps.Count - 1 : steps.FindLastIndex(s => AreTogether(s, steps[at]));

    private static bool AreTogether(SheetStep a, SheetStep b) => ReferenceEquals(a.Place.Section, b.Place.Section) && a.Within == b.Within;

    private static int Above(PrintedPage page, string nature, int code)
    {
        var at = page.Text.IndexOf(nature, StringComparison.Ordinal);
        return at >= 0 && at < code && page.Signs[at].Place.Bottom > page.Signs[code].Place.Bottom ? at : -1;
    }

    /// <summary>Codes are the one thing of their size that begins at the left edge with a figure: <c>16.2/7</c>.</summary>
    public static IEnumerable<(string Code, int At)> Codes(PrintedPage page)
    {
        for (var i = 0; i < page.Signs.Count; i++)
        {
            if (!char.IsDigit(page.Signs[i].Value) || Math.Abs(page.Signs[i].Size - CodeSize) > 0.5 || page.Signs[i].Place.Left > page.Inner.Left + 2)
                continue;
            var slash = page.Text.IndexOf('/', i);
            if (slash > 0 && page.Text.AsSpan(i, slash - i).TrimStart("0123456789.").IsEmpty)
                yield return (page.Text[i..(slash + 2)], i);
        }
    }
}
