using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Reading;
using Witnessmark.Reading.Records;
using Witnessmark.Reading.References;
using Witnessmark.Records.Hashing;
using Witnessmark.Records.Receiving;

namespace Witnessmark.Compiler;

/// <summary>Holds a sign-off against the very text that was printed: the one here, or an earlier one whose files give the registered hash.</summary>
internal sealed class Receiving(Bench bench, KeptVersions kept)
{
    // many records are typed from one version: its text is read once
    private readonly Dictionary<string, (Library Library, string NotAtHand)> _earlier = new(StringComparer.Ordinal);

    /// <summary>With the library that it was held against.</summary>
    public (SignOff? SignOff, ReceptionResult Result, Library Printed) Hold(RawFile record)
    {
        var findings = new FindingList();
        var signOff = SignOffReader.Read(record, findings);
        var read = findings.InReadingOrder();
        if (signOff is null || ReceptionResult.StateOf(read) == ReceptionState.Refused)
            return (signOff, new ReceptionResult(ReceptionState.Refused, read, Asked: 0, Given: 0), bench.Library);
        var (printed, why) = Printed(bench.Library, signOff);
        var released = bench.Library.Register.Released.Select(r => new ReleasedHash(r.Procedure.Value, r.Version.Value, r.Hash.Value) { NotAtHand = why });
        var held = Reception.Hold(signOff, printed, [.. released]);
        findings.AddRange(held.Findings);
        var all = findings.InReadingOrder();
        return (signOff, held with { Findings = all, State = ReceptionResult.StateOf(all) }, printed);
    }

    private (Library Library, string NotAtHand) Printed(Library here, SignOff signOff)
    {
        if (signOff is not { Procedure: { } id, Hash: { } typed })
            return (here, "");
        // the paper is of the text as it lies here
        if (here.Procedure(id.Value) is { } procedure && ProcedureHash.Of(here, procedure).IsBegunBy(typed.Value))
            return (here, "");
        // nobody ever released that hash
        if (here.Register.History(id.Value).LastOrDefault(r => new ProcedureHash("", r.Hash.Value).IsBegunBy(typed.Value)) is not { } version)
            return (here, "");
        if (!_earlier.TryGetValue(version.Hash.Value, out var text))
            _earlier[version.Hash.Value] = text = Earlier(here, version);
        return text;
    }

    private (Library Library, string NotAtHand) Earlier(Library here, ReleasedVersion version)
    {
        var (files, why) = kept.Of(version);
        if (files is null)
            return (here, why);
        var then = Read(files);
        var hash = then.Procedure(version.Procedure.Value) is { } text ? ProcedureHash.Of(then, text) : null;
        if (hash?.IsBegunBy(version.Hash.Value) != true)
            return (here, $"The files that git has for {version.Version} give {(hash is null ? "no such procedure" : $"the hash {hash.Short12}")}, so nothing can be held against them.");
        // who works here and what was put on record is known today
        return (then with { Register = here.Register, Workshop = then.Workshop with { People = here.Workshop.People } }, "");
    }

    private static Library Read(IReadOnlyList<StoredFile> files)
    {
        var findings = new FindingList();
        var library = WorkshopReader.Read([.. files.Where(f => !Register.IsOne(f.Path)).Select(f => f.Read())], findings);
        ReferenceCheck.Check(library, findings);
        return library;
    }
}
