using System.Collections.Immutable;
using Witnessmark.Language.Wording;
using Witnessmark.Records.Sheets;
using Witnessmark.Rendering.Figures;

namespace Witnessmark.Rendering.Site.Drawings;

/// <summary>Devices and states of a part, step by step; nothing when there are neither.</summary>
internal static class StateDrawing
{
    public static Drawing? Of(SheetPlan plan, string id, Words words)
    {
        var steps = plan.Steps.ToList();
        var told = new ThingStates(plan, words);
        var states = steps.Select(told.During).ToList();
        var rows = Rows([.. Devices(plan)], device: true).Concat(Rows(states, device: false)).ToImmutableArray();
        return steps.Count == 0 || rows.IsEmpty
            ? null
            : new Drawing(StateStrip.Draw(id, new MachineStates([.. steps.Select(s => s.Code.Plain)], rows), words), words.WhatIsInWhen);
    }

    /// <summary>What is in the machine during each step: what was in before it, and what it places.</summary>
    private static IEnumerable<ImmutableArray<string>> Devices(SheetPlan plan)
    {
        foreach (var section in plan.Sections)
        {
            var before = section.StillIn;
            foreach (var step in section.Steps.SelectMany(s => s.Performed.Prepend(s)))
            {
                yield return [.. before.Concat(step.LeavesIn).SelectMany(s => s.Tags, (s, tag) => $"{DeclaredName.Spoken(s.Kind.Id.Value)}\n{tag}").Distinct(StringComparer.Ordinal)];
                before = step.LeavesIn;
            }
        }
    }

    private static IEnumerable<StripRow> Rows(List<ImmutableArray<string>> during, bool device)
    {
        var named = during.SelectMany(d => d).Distinct(StringComparer.Ordinal).Select(name => (Name: name, Stretches: Stretches(during, name)));
        // tags of one kind that are in during the same steps share a row
        return named
            .GroupBy(n => (Kind: n.Name.Split('\n')[0], Steps: string.Join(' ', n.Stretches)))
            .Select(g => new StripRow(string.Join(' ', g.Select(n => n.Name.Split('\n')[^1]).Where(t => t != g.Key.Kind).Prepend(g.Key.Kind)), device, g.First().Stretches));
    }

    private static ImmutableArray<Stretch> Stretches(List<ImmutableArray<string>> during, string name)
    {
        var stretches = ImmutableArray.CreateBuilder<Stretch>();
        for (var i = 0; i < during.Count; i++)
        {
            if (!during[i].Contains(name))
                continue;
            if (stretches.Count > 0 && stretches[^1].To == i - 1)
                stretches[^1] = stretches[^1] with { To = i };
            else
                stretches.Add(new Stretch(i, i));
        }
        return stretches.ToImmutable();
    }
}
