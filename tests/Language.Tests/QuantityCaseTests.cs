using Witnessmark.Harness;
using Witnessmark.Language.Quantities;
using Witnessmark.Language.Text;

namespace Witnessmark.Language.Tests;

/// <summary>Every line of <c>Cases/quantities.txt</c> is a test.</summary>
public sealed class QuantityCaseTests
{
    public static TheoryData<string, string, string> Cases()
    {
        var cases = new TheoryData<string, string, string>();
        var lines = Repo.Read("tests", "Language.Tests", "Cases", "quantities.txt").Split('\n');
        foreach (var line in lines.Where(l => l.Contains(" => ") && !l.StartsWith('#')))
        {
            var bar = line.IndexOf(" | ", StringComparison.Ordinal);
            var arrow = line.LastIndexOf(" => ", StringComparison.Ordinal);
            cases.Add(line[..bar], line[(bar + 3)..Math.Max(bar + 3, arrow)], line[(arrow + 4)..]);
        }
        return cases;
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void It_is_read_as_the_line_says(string how, string text, string means)
    {
        var read = how switch
        {
            "quantity" => Told(text, QuantityReader.Quantity(text), q => $"{q}"),
            "toleranced" => Told(text, QuantityReader.Toleranced(text), t => t.Beside is { } beside ? $"{t} beside {beside}" : $"{t}"),
            "range" => Told(text, QuantityReader.Range(text), Told),
            "share" => Told(text, QuantityReader.Share(text), s => $"{s}"),
            _ => $"no reader called {how}",
        };

        Assert.Equal(means, read);
    }

    private static string Told<T>(string text, Parsed<T> parsed, Func<T, string> told)
        where T : struct =>
        parsed.Fault is { } fault ? $"{Marked(text, fault.At)} {fault.Problem}{Meant(fault.Suggestion)}" : told(parsed.Value);

    private static string Meant(string? suggestion) => suggestion is null ? "" : $" meant {suggestion}";

    private static string Told(QuantityRange range) => string.Join(' ', new[]
    {
        range.Low is { } low ? $"{(low.Inclusive ? "from" : "above")} {low.Value}" : "",
        range.High is { } high ? $"{(high.Inclusive ? "up to" : "below")} {high.Value}" : "",
    }.Where(s => s.Length > 0));

    private static string Marked(string text, TextSpan at) => $"{text[..at.Start]}[{text[at.Start..at.End]}]{text[at.End..]}";
}
