using Witnessmark.Language.Model;

namespace Witnessmark.Checking.Work;

/// <summary>States that verbs imply: a tightened group is torqued, a placed device is placed. Authors do not write them twice.</summary>
internal static class ImpliedStates
{
    /// <summary>The verbs that bring a value about; none for one that only <c>leaves</c> does; null for a value that is not known here.</summary>
    public static FactWord[]? Verbs(string value) => value switch
    {
        "torqued" => [FactWord.Tighten],
        "snug" => [FactWord.Snug],
        "loose" => [FactWord.Loosen],
        "fitted" => [FactWord.Fit],
        "removed" => [FactWord.Remove],
        "placed" => [FactWord.Place],
        "stored" => [FactWord.Recover],
        "full" => [FactWord.Fill],
        "drained" => [FactWord.Drain],
        "passed" => [FactWord.Test],
        "verified" => [],
        _ => null,
    };

    /// <summary>The things that a fact handles; a device by its kind, also when the step names a tag.</summary>
    public static IEnumerable<string> Things(Scope scope, Fact fact)
    {
        IEnumerable<string> named = fact.Value switch
        {
            Amounts amounts => amounts.All.Select(a => a.Thing.Value),
            NameList list when fact.Word is not (FactWord.By or FactWord.Zone or FactWord.Tools or FactWord.Tool) => list.Names.Select(n => n.Value),
            Landing landing => [landing.Load.Value],
            _ => [],
        };
        return named.SelectMany<string, string>(n => scope.Device(n) is { } device ? [n, device.Id.Value] : [n]);
    }
}
