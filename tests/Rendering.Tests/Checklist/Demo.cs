using System.Text;
using Witnessmark.Harness;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Reading;
using Witnessmark.Records.Sheets;
using Witnessmark.Rendering.Checklist;

namespace Witnessmark.Rendering.Tests.Checklist;

/// <summary>Sheets of the demo workshop, also with a file of it changed.</summary>
internal static class Demo
{
    public static readonly SheetIdentity Issued = new(
        "WB-40", "2.1.0", "3f9ac21b77de" + new string('0', 52), "K7M", "14", "0417", "CL", "2031-06-11 06:40", "1a2b3c4d5e6f" + new string('0', 52));

    public static readonly SheetIdentity Specimen = Issued with { SetMark = null, Unit = null, Serial = null, Place = null };

    public static SheetPlan Plan() => Plan(Read());

    public static SheetPlan Plan(Library library) => SheetPlanner.Plan(library.ScopeOf(library.Procedure("WB-40")!), null);

    public static string Sheet() => SheetPage.Render(Plan(), Issued, Paper.A4, Words.English);

    public static Library Read(params (string Path, string From, string To)[] changes)
    {
        var files = Repo.Files(Repo.OneBrake).Select(f => Changed(f, changes)).ToList();
        return WorkshopReader.Read(files, new FindingList());
    }

    private static RawFile Changed(RawFile file, (string Path, string From, string To)[] changes)
    {
        var text = Encoding.UTF8.GetString(file.Bytes.Span);
        foreach (var (path, from, to) in changes.Where(c => c.Path == file.Path))
        {
            Assert.Contains(from, text, StringComparison.Ordinal);
            text = text.Replace(from, to, StringComparison.Ordinal);
        }
        return RawFile.Of(file.Path, Encoding.UTF8.GetBytes(text));
    }
}
