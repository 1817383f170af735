using Witnessmark.Harness;
using Witnessmark.Press.Tests.Proof;
using Witnessmark.Rendering.Checklist;

namespace Witnessmark.Press.Tests;

/// <summary>Every sheet, card and leaf of tags of the showcase as it is issued, page by page.</summary>
[Collection("press")]
public sealed class ShowcasePagesTests(Room room)
{
    public static TheoryData<string, Paper> All
    {
        get
        {
            var all = new TheoryData<string, Paper>();
            foreach (var folder in Directory.EnumerateDirectories(Repo.Path("procedures")).Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal))
                foreach (var paper in new[] { Paper.A4, Paper.Letter })
                    all.Add(folder, paper);
            return all;
        }
    }

    [Theory]
    [MemberData(nameof(All))]
    public async Task No_page_of_the_showcase_breaks_a_rule(string folder, Paper paper)
    {
        var sheets = Prints.Of(Repo.Files(Repo.Path("procedures", folder)));
        await room.Prove([.. sheets.SelectMany(s => Prints.Tags(s, paper).Prepend<PlannedPrint>(Prints.Card(s, paper)).Prepend(s)).Select(p => p.Issued(paper))]);
    }
}
