using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Steps;

namespace Witnessmark.Reading.References;

/// <summary>
/// The line that pins what is performed at the one version that there is. What is performed stays what it was; a pin at another
/// version is for the author alone, since it says that he has read it again.
/// </summary>
internal static class NewPin
{
    private const string Key = "uses";

    public static Correction? In(Procedure procedure, string id, string version)
    {
        var source = procedure.Source;
        var pin = $"{id}: {version}";
        var does = $"`{pin}` is added under `{Key}:`.";
        return ((procedure.Node as DataMap)?.Find(Key)?.Value) switch
        {
            null => AtTheEnd(source, pin) is { } edit ? new Correction([edit], does) : null,
            DataMap { Entries: [.., var last] } map when source.Slice(map.At.Span)[0] != '{' => new Correction([Below(source, last, pin)], does),
            DataMap { At.Text: ['{', .., '}'] } map => Correction.Of(
                map.At.Part(map.At.Span.Length - 1, map.At.Span.Length - 1), map.Entries.IsEmpty ? pin : $", {pin}", does),
            _ => null,
        };
    }

    private static Replacement? AtTheEnd(SourceText source, string pin)
    {
        if (FrontMatterSpan.Find(source, new FindingList()) is not { Data.End: var end } || end == 0 || source.Content[end - 1] != '\n')
            return null;
        var line = Break(source, end - 1);
        return new Replacement(source.At(end, end), $"{Key}:{line}  {pin}{line}");
    }

    /// <summary>Behind the line of the last pin, as deep as it.</summary>
    private static Replacement Below(SourceText source, DataEntry last, string pin)
    {
        var end = source.Content.IndexOf('\n', last.Value.At.Span.End);
        end = end < 0 ? source.Content.Length : end;
        var line = Break(source, end);
        var at = end - (line.Length - 1);
        return new Replacement(source.At(at, at), line + new string(' ', last.Key.At.Start.Column - 1) + pin);
    }

    /// <summary>The line end that is in use there.</summary>
    private static string Break(SourceText source, int at) => at > 0 && at < source.Content.Length && source.Content[at - 1] == '\r' ? "\r\n" : "\n";
}
