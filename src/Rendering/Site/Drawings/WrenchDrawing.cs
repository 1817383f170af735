using Witnessmark.Engineering;
using Witnessmark.Engineering.Tightening;
using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;
using Witnessmark.Records.Sheets;
using Witnessmark.Rendering.Figures;

namespace Witnessmark.Rendering.Site.Drawings;

/// <summary>Wrench and adapter of a tightening, set for the full torque; nothing where no adapter is used or its lengths are not known.</summary>
internal static class WrenchDrawing
{
    public static Drawing? Of(PassAsk ask, SheetStep step, Words words)
    {
        if (ask is not { Group.Torque.Value: var torque, Wrench: { } wrench, Adapter: { } adapter })
            return null;
        if (wrench is not { Length.Value: var length, Range.Value: { Low: not null, High: not null } range, Scale.Value: var division } || adapter is not { Extension.Value: var extension })
            return null;
        if (Passes.Plan(torque, [new TorquePass(1, false)], wrench, adapter) is not [{ Gets: { } gets } full])
            return null;
        var angle = adapter.Angle?.Value.In(UnitTable.Get("deg")).Number ?? 0;
        var set = new AdaptedWrench(wrench.Id.Value, adapter.Id.Value, length, extension, (double)angle, range, division, full.Shown, full.Setting, gets.ToFigures(3));
        return new Drawing(AdapterOnWrench.Draw(FigureId.Of("adapter", step, ask), set, words), $"{set.Wrench} {words.Adapter} {set.Adapter}");
    }
}
