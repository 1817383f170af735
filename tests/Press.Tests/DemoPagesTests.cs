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
        await room.Prove([.. Prints.Demo.SelectMany(p => new[] { p.On(paper), p.Issued(paper) })]);
    }
}
