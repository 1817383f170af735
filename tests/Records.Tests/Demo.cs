using System.Text;
using Witnessmark.Harness;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Reading;
using Witnessmark.Reading.Records;
using Witnessmark.Records.Hashing;
using Witnessmark.Records.Issuing;
using Witnessmark.Records.Sheets;

namespace Witnessmark.Records.Tests;

/// <summary>The demo workshop, as it is and with one thing changed.</summary>
internal static class Demo
{
    private static readonly IReadOnlyList<RawFile> Files = Repo.Files(Repo.OneBrake);

    public static readonly Library Registered = WorkshopReader.Read(Files, new FindingList());

    /// <summary>Without its register: what is held against it here was issued by nobody.</summary>
    public static readonly Library Library = Registered with { Register = Language.Model.Register.Empty };

    public static Procedure Stack => Library.Procedure("WB-40")!;

    public static Scope StackScope => Library.ScopeOf(Stack);

    public static SheetPlan Plan => SheetPlanner.Plan(StackScope, null);

    public static SheetPlan PlanOf(Library library) => SheetPlanner.Plan(library.ScopeOf(library.Procedure("WB-40")!), null);

    public static string HashOf(Library library) => ProcedureHash.Of(library, library.Procedure("WB-40")!).Hex;

    public static ProcedureHash Hash => ProcedureHash.Of(Library, Stack);

    public static CopyIdentity Copy => CopyFor("14", "0417", "CL");

    public static CopyIdentity CopyFor(string unit, string serial, string place) => Marked(new CopyIdentity(Hash, unit, serial, place, "2031-06-11T06:40+02:00", "RK"));

    public static CopyIdentity Marked(CopyIdentity copy) => copy with { Mark = SetMark.Free("K", copy.Lines, _ => false)! };

    /// <summary>The demo with some text of one file replaced, wherever it stands there.</summary>
    public static Library With(string path, string text, string by) => Changed(path, content =>
    {
        Assert.Contains(text, content, StringComparison.Ordinal);
        return content.Replace(text, by, StringComparison.Ordinal);
    });

    public static Library Changed(string path, Func<string, string> change) => Changed([(path, change)]);

    public static Library Changed(IEnumerable<(string Path, Func<string, string> Change)> changes)
    {
        var files = Files.ToDictionary(f => f.Path, StringComparer.Ordinal);
        foreach (var (path, change) in changes)
        {
            var before = Encoding.UTF8.GetString(files[path].Bytes.Span);
            files[path] = RawFile.Of(path, Encoding.UTF8.GetBytes(change(before)));
        }
        return WorkshopReader.Read([.. files.Values], new FindingList()) with { Register = Language.Model.Register.Empty };
    }

    /// <summary>
    /// A typed sign-off. <c>{hash}</c>, <c>{copy}</c> and <c>{words}</c> stand for what is printed today: they change whenever a word of the demo does.
    /// The mark fits the head as it is typed, unless the case writes one of its own.
    /// </summary>
    public static SignOff Read(string path, string content, Library? library = null)
    {
        var hash = library is null ? Hash : ProcedureHash.Of(library, library.Procedure("WB-40")!);
        var filled = content.Replace("{hash}", hash.Short12, StringComparison.Ordinal);
        filled = filled.Replace("{words}", Words(library ?? Library).ToString(), StringComparison.Ordinal);
        var head = Parse(path, filled.Replace("{copy}", "none", StringComparison.Ordinal));
        var copy = new CopyIdentity(hash, Text(head.Unit), Text(head.Serial), Text(head.Place), Text(head.Issued), Text(head.IssuedBy)) { Words = head.Words is { } words ? CopyWords.Read(words.Value) : null };
        return Parse(path, filled.Replace("{copy}", "K" + SetMark.Tail(copy.Lines), StringComparison.Ordinal));
    }

    /// <summary>A register as it is written, with the hash of that library.</summary>
    public static Register Register(string text, Library library)
    {
        var hash = ProcedureHash.Of(library, library.Procedure("WB-40")!).Hex;
        return WorkshopReader.Read([RawFile.Of("register.yaml", Encoding.UTF8.GetBytes(text.Replace("{hash}", hash, StringComparison.Ordinal)))], new FindingList()).Register;
    }

    /// <summary>In which the demo is printed in Spanish.</summary>
    public static CopyWords Words(Library library) =>
        CopyWords.Of(SheetLanguages.Spanish, WordsHash.Of(SheetTranslations.Of(library.ScopeOf(library.Procedure("WB-40")!), SheetLanguages.Spanish)).Hex);

    private static string Text(Located<string>? text) => text?.Value ?? "";

    private static SignOff Parse(string path, string content)
    {
        var findings = new FindingList();
        var signOff = SignOffReader.Read(RawFile.Of(path, Encoding.UTF8.GetBytes(content)), findings);
        Assert.Empty(findings.InReadingOrder().Select(f => f.Found));
        return signOff!;
    }
}
