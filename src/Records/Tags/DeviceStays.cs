using System.Collections.Immutable;
using Witnessmark.Language.Model;
using Witnessmark.Records.Sheets;

namespace Witnessmark.Records.Tags;

/// <summary>When each device goes in and comes out, in the order of going in.</summary>
internal static class DeviceStays
{
    private const string AtEach = "each";

    public static ImmutableArray<DeviceStay> Of(ProcedurePart part, ImmutableArray<PlannedStep> steps, StepNames names)
    {
        var stays = new List<DeviceStay>();
        var before = DevicesIn.None.After([.. part.Facts, .. part.Sections.SelectMany(s => s.Facts)], names);
        Note(stays, before.All, null);
        foreach (var step in steps)
        {
            var after = before.After(step.Sheet.Step.Facts, step.Names);
            Note(stays, after.All.Except(before.All).Concat(InTurn(FactWord.Place, step)), step.Sheet.Code);
            foreach (var (_, tag) in before.All.Except(after.All).Concat(InTurn(FactWord.Recover, step)))
                Leave(stays, tag, step.Sheet.Code);
            before = after;
        }
        return [.. stays];
    }

    // one that goes in again keeps the step of its first time and comes out at its last
    private static void Note(List<DeviceStay> stays, IEnumerable<(DeviceKind Kind, string Tag)> devices, StepCode? step)
    {
        foreach (var (kind, tag) in devices)
        {
            var known = stays.FindIndex(s => s.Tag == tag);
            if (known < 0)
                stays.Add(new DeviceStay(kind, tag, step, null));
            else
                stays[known] = stays[known] with { Out = null };
        }
    }

    private static void Leave(List<DeviceStay> stays, string tag, StepCode step)
    {
        var at = stays.FindIndex(s => s.Tag == tag);
        if (at >= 0)
            stays[at] = stays[at] with { Out = step };
    }

    // "one at each place" and a loop use every tag of the kind, turn by turn
    private static IEnumerable<(DeviceKind Kind, string Tag)> InTurn(FactWord word, PlannedStep step)
    {
        var loops = step.Sheet.Place.Effective(FactWord.ForEach) is not null;
        return step.Sheet.Step.Facts.Where(f => f.Word == word).Select(f => f.Value).OfType<Amounts>().SelectMany(a => a.All)
            .Where(a => loops || a.AtPlace?.Value == AtEach)
            .Select(a => (Kind: step.Names.Device(a.Thing.Value), Name: step.Names.Filled(a.Thing.Value)))
            .Where(d => d.Kind is not null && d.Kind.Id.Value == d.Name)
            .SelectMany(d => d.Kind!.Tags.Select(t => (d.Kind!, t.Value)));
    }
}
