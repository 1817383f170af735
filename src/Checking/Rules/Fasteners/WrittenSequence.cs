using System.Collections.Immutable;
using Witnessmark.Engineering.Tightening;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;

namespace Witnessmark.Checking.Rules.Fasteners;

/// <summary>An order of tightening that the author wrote, and what is wrong with it.</summary>
internal sealed record WrittenSequence(FastenerGroup Group, int Bolts, ImmutableArray<SequenceFault> Problems)
{
    /// <summary>Groups without an order of their own get the star for their count, which is right by construction.</summary>
    public static IEnumerable<WrittenSequence> Of(Machine machine)
    {
        foreach (var group in machine.Fasteners)
            if (group is { Sequence.IsEmpty: false, Count.Value: var bolts })
                yield return new WrittenSequence(group, bolts, StarSequence.Problems([.. group.Sequence.Select(s => s.Value)], bolts));
    }

    /// <summary>The number that is wrong, or the whole list when one is left out.</summary>
    public Location At(SequenceFault fault)
    {
        if (fault.Position is > 0 and var position && position <= Group.Sequence.Length)
            return Group.Sequence[position - 1].At;
        var first = Group.Sequence[0].At;
        return new Location(first.Source, first.Span.Cover(Group.Sequence[^1].At.Span));
    }

    public string PutRight => StarSequence.For(Bolts) is { IsEmpty: false } star
        ? $"Leave the line out and the star for {Bolts} bolts is printed: {string.Join(' ', star)}."
        : "Name every bolt once.";
}
