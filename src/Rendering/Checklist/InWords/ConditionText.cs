using Witnessmark.Language.Model;

namespace Witnessmark.Rendering.Checklist.InWords;

/// <summary>Conditions as they are printed: <c>lock-pins = all engaged</c> is "lock pins all engaged".</summary>
internal sealed record ConditionText(Scope Scope, Words Words, Func<string, string> Fill)
{
    private const int Deepest = 8;

    /// <summary>With the limits that a verdict stands for: "end play in window (0.05 to 0.15 mm)".</summary>
    public string WithLimits(Condition condition) => string.Join($" {Words.And} ", condition.All.Select(c => Of(c) + Limits(c)));

    private Tongue Tongue => Scope.Library.Tongue;

    public string Of(Condition condition) => string.Join($" {Words.And} ", condition.All.Select(Of));

    /// <summary>Each thing by itself, bundles taken apart: the cells of the head.</summary>
    public IEnumerable<string> Each(Condition condition) => condition.All.SelectMany(c => Each(c, 0));

    private IEnumerable<string> Each(Clause clause, int depth)
    {
        if (clause is not BundleClause { Name.Value: var name } || depth > Deepest || Scope.Machine?.Conditions.Find(name) is not { } bundle)
            return [Of(clause)];
        return bundle.All.SelectMany(c => c.Value.All).SelectMany(c => Each(c, depth + 1));
    }

    private string Of(Clause clause) => clause switch
    {
        StateClause s => State(s),
        BundleClause b => Tongue.Name(b.Name.Value),
        PeopleClause p => $"{Words.PeopleIn} {Shown(p.Zone.Value)}",
        DevicesClause d => Devices(d),
        MomentClause { Moment: "safe stop" } => Words.SafeStop,
        MomentClause { Moment: "end of step" } => Words.EndOfStep,
        MomentClause m => m.Moment,
        _ => "",
    };

    private string State(StateClause s)
    {
        var at = s.AtPlace is { } place ? $" {Words.At} {Shown(place.Value)}" : "";
        var not = s.Negated ? $" {Words.Not}" : "";
        return $"{Thing(s.Thing.Value)}{at}{not} {string.Join($" {Words.Or} ", s.Values.Select(v => Tongue.Value(Fill(v.Value), Fill(s.Thing.Value))))}";
    }

    private string Limits(Clause clause)
    {
        if (clause is not StateClause { Negated: false } s || Scope.Reading(Fill(s.Thing.Value)) is not { IsLook: false } reading)
            return "";
        var ranges = reading.Bands.Where(b => s.Values.Any(v => v.Value == b.Name.Value)).Select(b => new QuantityWords(Words).Text(b.Range.Value));
        return string.Join($" {Words.Or} ", ranges) is { Length: > 0 } limits ? $" ({limits})" : "";
    }

    // devices are known by their tags on the machine
    private string Thing(string written)
    {
        var name = Fill(written);
        return Scope.Device(name) is { } device && device.Id.Value == name
            ? $"{Tongue.Name(name)} {string.Join(' ', device.Tags.Select(t => t.Value))}"
            : Tongue.Name(name);
    }

    private string Devices(DevicesClause d)
    {
        var which = d.ThatBlock is { } what ? $" {Words.ThatBlocks} {Shown(what.Value)}" : "";
        return $"{(d.Every ? Words.EveryDevice : Words.AnyDevice)}{which} {Tongue.Value(Fill(d.Value.Value), null)}";
    }

    private string Shown(string written) => Tongue.Name(Fill(written));
}
