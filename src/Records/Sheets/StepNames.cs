using System.Collections.Immutable;
using Witnessmark.Language.Model;

namespace Witnessmark.Records.Sheets;

/// <summary>
/// What a name in a step stands for: <c>{parameters}</c> are what was given, then the common part's own items, then those
/// of the procedure that the sheet is printed for.
/// </summary>
internal sealed record StepNames(Scope Root, Scope Own, Fills Given, Fills Shown)
{
    public static StepNames Of(Scope scope) => new(scope, scope, Fills.None, Fills.None);

    /// <summary>The name that was given for <c>{name}</c>; any other text as it stands, with the parameters in it filled.</summary>
    public string Filled(string written) => Given.In(written);

    public FastenerGroup? Fasteners(string written) => Find(written, (s, n) => s.Fasteners(n));

    public PartKind? Part(string written) => Find(written, (s, n) => s.Part(n));

    public PartStack? Stack(string written) => Find(written, (s, n) => s.Stack(n));

    public ReadingItem? Reading(string written) => Find(written, (s, n) => s.Reading(n));

    public WorkedValue? Value(string written) => Find(written, (s, n) => s.Value(n));

    public TestItem? Test(string written) => Find(written, (s, n) => s.Test(n));

    public DeviceKind? Device(string written) => Find(written, (s, n) => s.Device(n));

    public Wrench? Wrench(string written) => Find(written, (s, n) => s.Wrench(n));

    public Procedure? Callee(PerformValue perform) =>
        perform.Procedure.Value == "this" ? Own.Procedure : Root.Library.Procedure(perform.Procedure.Value);

    /// <summary>Names inside the performed part, with what this step gives it.</summary>
    public StepNames Into(Procedure callee, PerformValue perform)
    {
        var given = perform.Arguments.DistinctBy(a => a.Name.Value).ToImmutableDictionary(a => a.Name.Value, a => Filled(a.Value.Value));
        var shown = perform.Arguments.DistinctBy(a => a.Name.Value).ToImmutableDictionary(
            a => a.Name.Value,
            a => Root.Library.Tongue.Name(Filled(a.Value.Value)) + (a.AtPlace is { } at ? $" {Filled(at.Value)}" : ""));
        return new StepNames(Root, new Scope(Root.Library, callee, Root.Machine), new Fills(given), new Fills(shown));
    }

    private T? Find<T>(string written, Func<Scope, string, T?> find)
        where T : class
    {
        var name = Filled(written);
        return find(Own, name) ?? find(Root, name);
    }
}
