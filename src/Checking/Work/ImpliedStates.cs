using Witnessmark.Language.Model;

namespace Witnessmark.Checking.Work;

/// <summary>States that verbs imply: a tightened group is torqued, a placed device is placed. Authors do not write them twice.</summary>
internal static class ImpliedStates
{
    private const string Verified = "verified";

    /// <summary>The verbs that bring a value about; none for one that only <c>leaves</c> does; null for a value that is not known here.</summary>
    public static FactWord[]? Verbs(string value) => value == Verified ? [] : ImpliedValues.Verb(value) is { } verb ? [verb] : null;

    /// <summary>Whether a fact handles a thing; a device by its kind, also when the step names a tag.</summary>
    public static bool Handles(this Fact fact, string thing, Scope scope)
    {
        if (!fact.HandlesAnything())
            return false;
        if (fact.Value is Landing landing)
            return Means(landing.Load.Value, thing, scope);
        if (fact.Value is Amounts amounts)
            foreach (var amount in amounts.All)
                if (Means(amount.Thing.Value, thing, scope))
                    return true;
        if (fact.Value is NameList list)
            foreach (var name in list.Names)
                if (Means(name.Value, thing, scope))
                    return true;
        return false;
    }

    /// <summary>Whether a fact handles anything; who does it, where and with what is handled by nobody.</summary>
    public static bool HandlesAnything(this Fact fact) =>
        fact.Word is not (FactWord.By or FactWord.Zone or FactWord.Tools or FactWord.Tool) && fact.Value is Amounts or Landing or NameList;

    private static bool Means(string name, string thing, Scope scope) =>
        name == thing || (IsDevice(thing, scope) && scope.Device(name)?.Id.Value == thing);

    private static bool IsDevice(string kind, Scope scope) => (scope.Procedure.Devices.Find(kind) ?? scope.Machine?.Devices.Find(kind)) is not null;
}
