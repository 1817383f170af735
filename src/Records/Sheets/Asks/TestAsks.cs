using Witnessmark.Language.Model;

namespace Witnessmark.Records.Sheets;

/// <summary>A test asks for its readings and for its outcome.</summary>
internal static class TestAsks
{
    public static IEnumerable<Ask> Of(string written, StepInPlace place, StepNames names) =>
        names.Test(written) is { } test
            ? test.Readings.SelectMany(r => ReadingAsks.Of(r.Value, place, names)).Append(new ChoiceAsk(test.Id.Value, ["passed", "failed"]))
            : [];
}
