using System.Text;
using Witnessmark.Harness;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Reading;
using Witnessmark.Reading.References;
using Witnessmark.Records.Sheets;
using Witnessmark.Rendering.Checklist;

namespace Witnessmark.Rendering.Tests.Checklist;

/// <summary>A sheet with tests, decisions, endings, a loop and parts that are performed under a condition.</summary>
public class FlowSheetTests
{
    private static readonly IReadOnlyList<RawFile> Files = Repo.Files(Repo.Path("tests", "Rendering.Tests", "Cases", "pedal"));

    private static readonly Library Pedal = WorkshopReader.Read(Files, new FindingList());

    [Fact]
    public void The_case_is_read_without_a_finding()
    {
        var findings = new FindingList();
        ReferenceCheck.Check(WorkshopReader.Read(Files, findings), findings);
        Assert.Empty(findings.InReadingOrder().Select(f => $"{f.At.Start.Line}: {f.Found}"));
    }

    [Fact]
    public void The_sheet_reads_as_approved() => Approved.Check("Rendering.Tests/Checklist/wb-94.approved.html", Markup.Body(Sheet()));

    [Fact]
    public void A_test_says_what_passes_it_and_its_reading_what_each_band_is_called()
    {
        var html = Sheet();
        Assert.Contains("passes when pedal pressure holds", html, StringComparison.Ordinal);
        Assert.Contains("look again after 10\u00A0min", html, StringComparison.Ordinal);
        Assert.Contains("<span class=\"judge\">drops</span> <span class=\"native\">below 3.80 MPa</span>", html, StringComparison.Ordinal);
        Assert.Contains("held on the brake in second gear, does not move · empty · 10\u00A0mph", html, StringComparison.Ordinal);
    }

    [Fact]
    public void Steps_of_a_looped_section_say_so_where_they_are_performed_and_its_heading_is_not_there()
    {
        const string Job = """
            ---
            job: whole
            title: The whole of it
            version: 1.0.0
            status: draft
            machine: okr-34
            crew: {mechanic: 1, helper: 1, operator: 1}
            uses:
              WB-94: 1.0.0
            ---

            # The whole of it

            1. **Find it.**
                - perform: WB-94
            """;
        var library = WorkshopReader.Read([.. Files, RawFile.Of("whole.md", Encoding.UTF8.GetBytes(Job))], new FindingList());
        var html = SheetPage.Render(SheetPlanner.Plan(library.ScopeOf(library.Procedure("whole")!), null), Demo.Specimen, Paper.A4, Words.English);
        Assert.Contains("<b>For each:</b> wheel end CL, RL, CR, until pedal hold passed", html, StringComparison.Ordinal);
    }

    private static SheetPlan Plan() => SheetPlanner.Plan(Pedal.ScopeOf(Pedal.Procedure("WB-94")!), null);

    private static string Sheet() => SheetPage.Render(Plan(), Demo.Specimen, Paper.A4, Words.English);
}
