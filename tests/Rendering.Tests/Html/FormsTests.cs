using System.Text;
using Witnessmark.Harness;
using Witnessmark.Rendering.Checklist;
using Witnessmark.Rendering.Fender;
using Witnessmark.Rendering.Html;
using Witnessmark.Rendering.Tags;

namespace Witnessmark.Rendering.Tests.Html;

/// <summary>The hash of the forms at the foot of a print covers what made the page: templates, styles, measures and the code of its drawings.</summary>
public sealed class FormsTests
{
    [Fact]
    public void The_drawings_inside_the_program_are_those_of_the_house()
    {
        var folder = Repo.Path("src", "Rendering", "Figures");
        var house = Directory.EnumerateFiles(folder, "*.cs", SearchOption.AllDirectories)
            .Select(f => Resources.Figures + Path.GetRelativePath(folder, f).Replace('\\', '/')).Order(StringComparer.Ordinal).ToList();
        Assert.Contains("figures/BoltCircle.cs", house);
        Assert.Equal(house, Resources.Names.Where(n => n.StartsWith(Resources.Figures, StringComparison.Ordinal)));
        Assert.All(house, n => Assert.Equal(File.ReadAllText(Path.Combine(folder, n[Resources.Figures.Length..])).ReplaceLineEndings("\n"), Resources.Text(n).TrimStart('\uFEFF').ReplaceLineEndings("\n")));
    }

    [Fact]
    public void A_drawing_more_or_one_byte_of_it_is_another_hash()
    {
        var without = Resources.Hash("templates/sheet", "site/sheet.css");
        Assert.NotEqual(without, Resources.Hash("templates/sheet", "site/sheet.css", Resources.Figures));
        var bytes = Encoding.UTF8.GetBytes(Resources.Text("figures/BoltCircle.cs"));
        var changed = bytes.ToArray();
        changed[^2] ^= 1;
        Assert.NotEqual(Resources.Hash([("figures/BoltCircle.cs", bytes)]), Resources.Hash([("figures/BoltCircle.cs", changed)]));
        Assert.Equal(Resources.Hash([("figures/BoltCircle.cs", bytes)]), Resources.Hash("figures/BoltCircle.cs"));
    }

    [Fact]
    public void Sheet_card_and_tags_have_hashes_of_their_own() =>
        Assert.Equal(3, new[] { SheetIdentity.OwnTemplateHash, FenderCard.OwnTemplateHash, TagPage.OwnTemplateHash }.Distinct().Count());
}
