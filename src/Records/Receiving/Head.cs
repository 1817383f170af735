using Witnessmark.Language.Model;
using Witnessmark.Language.Text;

namespace Witnessmark.Records.Receiving;

/// <summary>Places in the file for what is missing there.</summary>
internal static class Head
{
    /// <summary>The key when it stands there without a value, else the beginning of the file.</summary>
    public static Location PlaceOf(SignOff signOff, string key) =>
        signOff.Node is DataMap map && map.Find(key) is { } entry ? entry.Key.At : signOff.Source.At(0, 0);
}
