namespace Witnessmark.Rules.Tests.Workshops;

/// <summary>What a file declares is missed in many places when it cannot be read; that is one cause and one finding.</summary>
public sealed class OneCauseTests
{
    [Theory]
    [InlineData("machines/okr-34.yaml", "because: nobody leaves a load in the air", "because: shop rule 9: nobody leaves a load in the air")]
    [InlineData("tools/crane-truck.yaml", "title: Crane truck 2", "title: Crane truck: the second")]
    [InlineData("workshop.yaml", "workshop: Cressel Ridge field crew", "workshop: Cressel Ridge: field crew")]
    public void A_colon_in_a_text_is_one_finding_whatever_stands_on_the_file(string path, string text, string broken)
    {
        var content = DemoWorkshop.Whole.Files[path];
        Assert.Contains(text, content, StringComparison.Ordinal);
        var finding = Assert.Single(DemoWorkshop.Whole.With(path, content.Replace(text, broken, StringComparison.Ordinal)).Findings());
        Assert.Equal("yaml-broken", finding.Rule.Name);
    }
}
