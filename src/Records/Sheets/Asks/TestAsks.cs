using System.Collections.Immutable;
using Witnessmark.Language.Model;

namespace Witnessmark.Records.Sheets;

/// <summary>A test asks for its readings and for its outcome.</summary>
internal static class TestAsks
{
    private static readonly ImmutableArray<string> Outcomes = ["passed", "failed"];

    public static IEnumerable<Ask> Of(string written, StepInPlace place, StepNames names) =>
        names.Test(written) is { } test
            ? test.Readings.SelectMany(r => ReadingAsks.Of(r.Value, place, names)).Append(new ChoiceAsk(test.Id.Value, Outcomes) { Stops = StopIfs.Of(test.Id.Value, Outcomes, place, names) })
            : [];
}
