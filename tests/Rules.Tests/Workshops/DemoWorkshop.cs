using System.Collections.Immutable;
using System.Text;
using Witnessmark.Checking;
using Witnessmark.Comparing;
using Witnessmark.Harness;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Reading;
using Witnessmark.Reading.References;

namespace Witnessmark.Rules.Tests.Workshops;

/// <summary>The demo workshop in memory: its files as text by path, changed by examples and cases, then read and checked.</summary>
internal sealed class DemoWorkshop
{
    private static readonly ImmutableSortedDictionary<string, string> AsItStands = Repo.Files(Repo.OneBrake)
        .ToImmutableSortedDictionary(f => f.Path, f => Encoding.UTF8.GetString(f.Bytes.Span), StringComparer.Ordinal);

    private DemoWorkshop(ImmutableSortedDictionary<string, string> files) => Files = files;

    public static DemoWorkshop Whole { get; } = new(AsItStands);

    /// <summary>Without its translations, that a changed word would make stale, and without its register: what an example changes would be a released version.</summary>
    public static DemoWorkshop InOneLanguage { get; } = new(AsItStands.RemoveRange(AsItStands.Keys.Where(p => IsTranslation(p) || IsRegister(p))));

    /// <summary>The same with its register.</summary>
    public static DemoWorkshop Registered { get; } = InOneLanguage.With(RegisterFile, AsItStands[RegisterFile]);

    /// <summary>Data sheet, tools, workshop file and common parts, without the procedures of the machine: a case brings its own.</summary>
    public static DemoWorkshop WithoutProcedures { get; } = new(AsItStands.RemoveRange(AsItStands.Keys.Where(p => IsOwnProcedure(p) || IsTranslation(p) || IsRegister(p))));

    /// <summary>Beside itself as it was: what an example changes has changed since then.</summary>
    public static DemoWorkshop Changing { get; } = new(InOneLanguage.Files) { Before = InOneLanguage };

    /// <summary>With every way through it followed.</summary>
    public static DemoWorkshop Followed { get; } = new(InOneLanguage.Files) { EveryWay = true };

    public ImmutableSortedDictionary<string, string> Files { get; }

    private bool EveryWay { get; init; }

    private DemoWorkshop? Before { get; init; }

    public DemoWorkshop With(string path, string text) => new(Files.SetItem(path, text)) { Before = Before, EveryWay = EveryWay };

    public ImmutableArray<Finding> Findings()
    {
        var findings = new FindingList();
        var library = Read(findings);
        ReferenceCheck.Check(library, findings);
        RuleSet.Check(library, findings);
        if (EveryWay)
            RuleSet.CheckEveryWay(library, findings);
        if (Before?.Read(new FindingList()) is { } before)
            RuleSet.CheckChanges(before, library, Comparer.Between(before, library), findings);
        return findings.InReadingOrder();
    }

    private Library Read(FindingList findings) => WorkshopReader.Read([.. Files.Select(f => RawFile.Of(f.Key, Encoding.UTF8.GetBytes(f.Value)))], findings);

    private const string RegisterFile = "register.yaml";

    private static bool IsRegister(string path) => path == RegisterFile;

    private static bool IsTranslation(string path) => path.Contains(".es.", StringComparison.Ordinal);

    private static bool IsOwnProcedure(string path) =>
        path.EndsWith(".md", StringComparison.Ordinal) && !path.StartsWith("common/", StringComparison.Ordinal);
}
