using Witnessmark.Language.Model;

namespace Witnessmark.Records.Sheets;

internal static class CountAsks
{
    /// <summary>A count without a number is the number on the data sheet; of a thing without one, any number is written down.</summary>
    public static CountAsk Of(Amount amount, StepNames names)
    {
        var name = names.Filled(amount.Thing.Value);
        var expected = amount.Count?.Value ?? Declared(name, names);
        return new CountAsk(name, Mark(name, names), expected ?? 0, amount.AtLeast || expected is null);
    }

    private static int? Declared(string name, StepNames names) =>
        names.Fasteners(name)?.Count?.Value ?? names.Part(name)?.Count?.Value ?? names.Device(name)?.Tags.Length;

    private static string Mark(string name, StepNames names) => names.Part(name)?.Letters ?? name;
}
