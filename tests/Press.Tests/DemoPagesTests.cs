using Witnessmark.Press.Tests.Proof;
using Witnessmark.Rendering.Checklist;

namespace Witnessmark.Press.Tests;

/// <summary>Every sheet of the demo, page by page.</summary>
[Collection("press")]
public sealed class DemoPagesTests(Room room)
{
    [Theory]
    [InlineData(Paper.A4)]
    [InlineData(Paper.Letter)]
    public async Task No_page_of_the_demo_breaks_a_rule(Paper paper)
    {
        var prints = Prints.Demo.SelectMany(p => new[] { p.On(paper), p.Issued(paper) }).ToList();
        Assert.NotEmpty(prints);
        var printed = await room.Press.Print([.. prints.Select(p => p.Sheet)]);

        var broken = prints.Zip(printed).SelectMany(p => ProvedPages.Broken(p.Second.Pdf, p.First).Select(b => $"{p.First}: {b}")).ToList();
        Assert.True(broken.Count == 0, string.Join('\n', broken));
    }
}
