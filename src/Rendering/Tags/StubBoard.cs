using System.Collections.Immutable;
using Scriban.Runtime;
using Witnessmark.Records.Tags;
using Witnessmark.Rendering.Checklist;
using Witnessmark.Rendering.Html;

namespace Witnessmark.Rendering.Tags;

/// <summary>
/// A place for each stub, as large as the stub. Clipped over its place, the stub hides the words STILL IN; what can be read
/// is in the machine.
/// </summary>
internal static class StubBoard
{
    /// <summary>Places that fit on a board of one row of a leaf, of two and of three.</summary>
    private static readonly ImmutableArray<int> Fits = [4, 12, 20];

    public static IEnumerable<Cut> Of(ImmutableArray<DeviceStay> devices, SheetContext context) =>
        devices.Chunk(Fits[^1]).Select(places => new Cut(
            new ScriptObject
            {
                ["word"] = context.Words.Stubs,
                ["how"] = context.Words.ClipStubs,
                ["places"] = new ScriptArray(places.Select(d => Place(d, context))),
            }.Showing("tag-board.html"),
            Wide: true,
            Rows: 1 + Fits.Count(f => places.Length > f)));

    public static string ComesOut(DeviceStay device, Words words) =>
        device.Out is { } step ? $"{words.ComesOut} {words.AtStepNumber} {step}" : words.StaysIn;

    private static ScriptObject Place(DeviceStay device, SheetContext context) => new()
    {
        ["tag"] = device.Tag,
        ["still_in"] = context.Words.StillIn,
        ["kind"] = context.Tongue.Name(device.Kind.Id.Value),
        ["comes_out"] = ComesOut(device, context.Words),
    };
}
