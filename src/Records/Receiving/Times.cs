using Witnessmark.Language.Text;

namespace Witnessmark.Records.Receiving;

/// <param name="What">What was signed then, to begin a sentence with.</param>
internal readonly record struct Signed(Located<string> Text, string What);

/// <summary>The times of a sign-off in the order in which they must not go back.</summary>
internal static class Times
{
    public static IEnumerable<Signed> Of(Held held)
    {
        if (held.SignOff.Issued is { } issued && !Typed.IsEmpty(issued))
            yield return new Signed(issued, "The copy");
        foreach (var entry in held.Entries.OrderBy(e => held.Asked.IndexOf(e.Asked)))
            if (entry.At is { } at)
                yield return new Signed(at, $"Step {entry.Asked.Step.Code.Plain}");
        if (held.SignOff.Release?.When is { } release && !Typed.IsEmpty(release))
            yield return new Signed(release, "The release");
    }
}
