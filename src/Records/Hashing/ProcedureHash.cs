using System.Collections.Immutable;
using System.Text;
using Witnessmark.Language.Model;

namespace Witnessmark.Records.Hashing;

/// <summary>
/// Two prints with one hash carry the same steps, numbers, messages and stops, whatever made them. The hash is SHA-256 of
/// the manifest: a text that an auditor can rebuild line by line, one line a thing that counts.
/// </summary>
/// <param name="Manifest">Ends with a line feed; <c>sha256sum</c> of the file gives <paramref name="Hex"/>.</param>
/// <param name="Hex">64 digits in lower case.</param>
public sealed record ProcedureHash(string Manifest, string Hex)
{
    private const string Form = "canon 1";

    /// <summary>The first twelve digits as they are printed: <c>3F9A C21B 77DE</c>.</summary>
    public string Short12 => ShortHash.Of(Hex);

    /// <summary>Whether a hash as it was typed (blanks, either case, at least twelve digits) is the beginning of this one.</summary>
    public bool IsBegunBy(string typed)
    {
        var digits = typed.Replace(" ", "", StringComparison.Ordinal).ToLowerInvariant();
        return digits.Length is >= ShortHash.Digits and <= 64 && Hex.StartsWith(digits, StringComparison.Ordinal);
    }

    /// <exception cref="InvalidOperationException">
    /// Text cannot be normalised on this machine: the same words could hash differently elsewhere, so nothing is hashed.
    /// </exception>
    public static ProcedureHash Of(Library library, Procedure procedure) => Of(library, procedure, []);

    private static ProcedureHash Of(Library library, Procedure procedure, ImmutableHashSet<string> within)
    {
        if (!NormalForm.Works)
            throw new InvalidOperationException(
                "No hash: this build of .NET does not normalise text (invariant globalization), so the same words could hash differently on another machine.");
        var lines = Lines(library, procedure, within.Add(procedure.Id.Value)).Order(StringComparer.Ordinal);
        var manifest = new StringBuilder(Form).Append('\n');
        foreach (var line in lines)
            manifest.Append(line).Append('\n');
        var text = manifest.ToString();
        return new ProcedureHash(text, Canon.Sha256(text));
    }

    private static IEnumerable<string> Lines(Library library, Procedure procedure, ImmutableHashSet<string> within)
    {
        var scope = library.ScopeOf(procedure);
        yield return $"head {BodyCanon.Head(procedure).Sha}";
        yield return $"body {BodyCanon.Body(procedure).Sha}";
        yield return $"derived {DerivedCanon.Of(scope).Sha}";
        if (DerivedCanon.Stops(scope) is { } stops)
            yield return $"stops {stops.Sha}";
        foreach (var (name, step) in StepLines.Of(procedure))
            yield return $"step/{name} {BodyCanon.Step(step).Sha}";
        foreach (var (name, item) in Reached.From(scope))
            yield return $"item/{name} {NodeCanon.Of(item.Node).Sha}";
        foreach (var performed in Performed(procedure))
            yield return $"performs/{performed} {Version(procedure, performed)} {HexOf(library, procedure, performed, within)}";
    }

    private static IEnumerable<string> Performed(Procedure procedure) =>
        procedure.Steps.SelectMany(s => s.All(FactWord.Perform))
            .Select(f => f.Value).OfType<PerformValue>()
            .Select(p => p.Procedure.Value)
            .Where(p => p != "this")
            .Distinct(StringComparer.Ordinal);

    private static string Version(Procedure procedure, string performed) =>
        procedure.Uses.FirstOrDefault(p => p.Procedure.Value == performed)?.Version.Value ?? "unpinned";

    /// <summary>The hash of what is performed; a word where there is none, so that nothing else can take its place.</summary>
    private static string HexOf(Library library, Procedure procedure, string performed, ImmutableHashSet<string> within)
    {
        if (within.Contains(performed))
            return "itself";
        return library.Procedure(performed) is { } callee && callee.Version?.Value == Version(procedure, performed)
            ? Of(library, callee, within).Hex
            : "not-here";
    }
}
