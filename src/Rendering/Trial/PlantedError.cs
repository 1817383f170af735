using System.Collections.Immutable;

namespace Witnessmark.Rendering.Trial;

/// <summary>One error of a trial sheet: what stands on the true one, what stands there now.</summary>
/// <param name="Where">Step code, or the section for a whole page.</param>
/// <param name="Edits">What is changed in the markup of the true sheet, and nothing else.</param>
/// <param name="StrayMark">Set mark of the copy that the pages of a section have strayed from: they are told apart in their margins only.</param>
public sealed record PlantedError(ErrorKind Kind, string Where, string Was, string Becomes, ImmutableArray<TrialEdit> Edits, string? StrayMark = null);

/// <summary>In the order in which they are looked for: what fewer sheets have comes first.</summary>
public enum ErrorKind
{
    FacingTurned,
    WrongUnit,
    ChangedLimit,
    WrongDeviceTag,
    WrongCount,
    StepsSwapped,
    BoxMissing,
    WrongTorque,
    MessageMissing,
    PageOfAnotherCopy,
}

/// <param name="Step">The article that it stands in: <c>step-6</c>; empty: anywhere in the body.</param>
/// <param name="From">The first place of this is changed.</param>
public sealed record TrialEdit(string Step, string From, string To)
{
    private const string ArticleEnd = "</article>";

    /// <summary>Whether the sheet has the text there.</summary>
    public bool IsIn(string html) => Place(html) >= 0;

    /// <exception cref="InvalidOperationException">The sheet does not have the text: a fault of ours.</exception>
    public string In(string html)
    {
        var at = Place(html);
        return at < 0 ? throw new InvalidOperationException($"{Step} has no “{From}”") : string.Concat(html.AsSpan(0, at), To, html.AsSpan(at + From.Length));
    }

    private int Place(string html)
    {
        var start = html.IndexOf(Step.Length == 0 ? "<main>" : $"id=\"{Step}\"", StringComparison.Ordinal);
        if (start < 0)
            return -1;
        var end = Step.Length == 0 ? html.Length : html.IndexOf(ArticleEnd, start, StringComparison.Ordinal);
        var at = html.AsSpan(start, end - start).IndexOf(From, StringComparison.Ordinal);
        return at < 0 ? -1 : start + at;
    }
}
