using Witnessmark.Harness;
using Witnessmark.Language.Quantities;

namespace Witnessmark.Engineering.Tests;

/// <summary>Worked examples of others: a row of worked-examples.csv by its id, read in text unless its row says memory.</summary>
internal static class Published
{
    /// <param name="answer">Which of several answers, from 0: <c>37 / 28 lbf*ft</c> is dry and lubricated.</param>
    public static Quantity Output(string id, int answer = 0)
    {
        var row = Csv.Reference("worked-examples.csv").Single(r => r["id"] == id);
        Assert.Equal("text-found", row["verified"]);
        var written = row["published_output"].Replace("about ", "").Split(" (")[0];
        var answers = written.Contains(';') ? written.Split("; ") : written.Split(" / ");
        var unit = written.Contains(';') ? "" : written[written.LastIndexOf(' ')..];
        return Given.Q(answers[answer].EndsWith(unit, StringComparison.Ordinal) ? answers[answer] : answers[answer] + unit);
    }
}
