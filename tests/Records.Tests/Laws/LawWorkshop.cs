using System.Collections.Immutable;
using System.Text;
using Witnessmark.Harness;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Reading;
using Witnessmark.Records.Hashing;

namespace Witnessmark.Records.Tests.Laws;

/// <summary>A workshop whose texts are changed: what they are, and what each procedure's hash is.</summary>
internal sealed class LawWorkshop
{
    private LawWorkshop(string name, ImmutableSortedDictionary<string, string> texts)
    {
        (Name, Texts) = (name, texts);
        Library = Read(texts).Library;
        Hashes = HashesOf(Library);
    }

    public static ImmutableArray<LawWorkshop> All { get; } = [Of("demo", "tests/Workshops/one-brake"), Of("trial", "tests/Workshops/trial"), Accented()];

    public string Name { get; }

    public ImmutableSortedDictionary<string, string> Texts { get; }

    public Library Library { get; }

    public ImmutableSortedDictionary<string, string> Hashes { get; }

    /// <returns>With the first fault of the reader, or null.</returns>
    public static (Library Library, Finding? Fault) Read(ImmutableSortedDictionary<string, string> texts)
    {
        var findings = new FindingList();
        var library = WorkshopReader.Read([.. texts.Select(t => RawFile.Of(t.Key, Encoding.UTF8.GetBytes(t.Value)))], findings);
        return (library, findings.InReadingOrder().FirstOrDefault(f => f.Severity == Severity.Fault));
    }

    public static ImmutableSortedDictionary<string, string> HashesOf(Library library) =>
        library.Procedures.ToImmutableSortedDictionary(p => p.Id.Value, p => HashOf(library, p.Id.Value), StringComparer.Ordinal);

    public static string HashOf(Library library, string id) => library.Procedure(id) is { } procedure ? ProcedureHash.Of(library, procedure).Hex : "gone";

    private static LawWorkshop Of(string name, string folder) => new(name, Repo.Files(Repo.Path(folder.Split('/')))
        // the register names the hashes themselves
        .Where(f => f.Path != "register.yaml")
        .ToImmutableSortedDictionary(f => f.Path, f => Encoding.UTF8.GetString(f.Bytes.Span), StringComparer.Ordinal));

    /// <summary>The demo with accents in names and words, so that a letter can be written in two codes.</summary>
    private static LawWorkshop Accented()
    {
        var accented = new LawWorkshop("demo with accents", Of("demo", "tests/Workshops/one-brake").Texts.ToImmutableSortedDictionary(
            t => t.Key, t => t.Value.Replace("ring", "r\u00EDng", StringComparison.Ordinal).Replace("piston", "pist\u00F6n", StringComparison.Ordinal), StringComparer.Ordinal));
        return Read(accented.Texts).Fault is { } fault ? throw new InvalidOperationException($"{fault.Found} {fault.At.Source.Path}") : accented;
    }
}

/// <summary>A change of one text, in words; null when there is no place for it.</summary>
internal sealed record TextChange(string Words, string Text);

/// <summary>Throws that can be thrown again.</summary>
internal sealed class Dice(int seed)
{
    private readonly CsCheck.PCG _pcg = new(1, unchecked((ulong)seed));

    public int Below(int most) => (int)_pcg.Next((uint)most);

    public bool OneIn(int most) => Below(most) == 0;

    public T Of<T>(IReadOnlyList<T> all) => all[Below(all.Count)];
}
