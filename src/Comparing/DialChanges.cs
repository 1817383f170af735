using System.Globalization;
using Witnessmark.Language.Model;
using Witnessmark.Records.Sheets;

namespace Witnessmark.Comparing;

/// <summary>What is printed to be dialled, pass by pass: it rests on the house's passes and on how the program works them out, which no item tells.</summary>
internal static class DialChanges
{
    public static IEnumerable<Change> Between(Scope old, Scope made)
    {
        var (before, after) = (Printed(old), Printed(made));
        foreach (var key in before.Keys.Intersect(after.Keys))
        {
            if (before[key].Passes != after[key].Passes)
                yield return new Change(ChangeClass.Hazard, key.Step, $"passes of {key.Group}", before[key].Passes, after[key].Passes);
            if (before[key].Order != after[key].Order)
                yield return new Change(ChangeClass.Hazard, key.Step, $"order of {key.Group}", before[key].Order, after[key].Order);
        }
    }

    private static Dictionary<(string Step, string Group), (string Passes, string Order)> Printed(Scope scope)
    {
        var printed = new Dictionary<(string, string), (string, string)>();
        foreach (var step in scope.Procedure.Parts.SelectMany(p => SheetPlanner.Plan(scope, p.Name?.Value).Steps))
            foreach (var ask in step.Asks.OfType<PassAsk>())
                printed.TryAdd(($"step {step.Code.Plain} {step.Step.Name.Value}", ask.Group.Id.Value), (string.Join(", ", ask.Settings.Select(Says)), string.Join(" ", ask.Sequence)));
        return printed;
    }

    private static string Says(PassSetting setting) => string.Create(CultureInfo.InvariantCulture, $"{setting.Dial}{(setting.Circular ? " circular" : "")}");
}
