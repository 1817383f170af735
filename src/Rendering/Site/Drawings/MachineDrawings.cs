using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;
using Witnessmark.Rendering.Checklist.Asks;
using Witnessmark.Rendering.Figures;

namespace Witnessmark.Rendering.Site.Drawings;

/// <summary>Drawings of a data sheet.</summary>
internal static class MachineDrawings
{
    /// <summary>Of a group that says its pitch circle; another one need not stand on a circle.</summary>
    public static Drawing? Ring(FastenerGroup group, int which, Words words) =>
        group is { PitchCircle: not null, Count.Value: > 1 and var count }
            ? new(BoltCircle.Draw(FigureId.Of("bolts", which), PassBlock.Ring(group, count, passes: 0, Tongue.AsWritten), words), $"{DeclaredName.Spoken(group.Id.Value)}. {words.BoltCircle}")
            : null;
}
