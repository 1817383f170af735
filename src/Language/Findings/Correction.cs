using System.Collections.Immutable;
using Witnessmark.Language.Text;

namespace Witnessmark.Language.Findings;

/// <summary>
/// A change of a text that puts a finding right for certain: nobody could mean anything else by what is written. What would
/// change the work is said in words and never carried out.
/// </summary>
/// <param name="Edits">At least one, all in one file, apart from each other.</param>
/// <param name="Does">What they do, as a sentence: <c>`4,60` becomes `4.60`.</c></param>
public sealed record Correction(ImmutableArray<Replacement> Edits, string Does)
{
    public static Correction Of(Location at, string by, string does) => new([new Replacement(at, by)], does);

    /// <summary>The same thing by the name it has; null where nothing or more than one thing can be meant.</summary>
    public static Correction? Respelled(Located<string> written, IEnumerable<string> known) =>
        written.At.Text == written.Value && SameLetters.Only(written.Value, known) is { } meant
            ? Of(written.At, meant, $"`{written.Value}` becomes `{meant}`.")
            : null;
}

/// <param name="At">What is replaced; without length: where something is put in.</param>
public readonly record struct Replacement(Location At, string By);
