using Witnessmark.Language.Model;

namespace Witnessmark.Rendering.Html;

/// <summary>How a safety message looks: the same words for the style on paper and on screen.</summary>
internal static class SignalLook
{
    /// <summary>Classes of its box: <c>warning</c>, <c>military warning</c>.</summary>
    public static string Kind(SignalWord word, SignalScheme scheme) =>
        (scheme == SignalScheme.Military ? "military " : "") + word.ToString().ToLowerInvariant();
}
