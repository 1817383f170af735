using System.Text;
using Witnessmark.Compiler;
using Witnessmark.Harness;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;

namespace Witnessmark.Rendering.Tests;

/// <summary>Three versions of one procedure, kept as git would keep them.</summary>
public sealed class VersionPageTests
{
    private const string Markup = "<script>alert(1)</script>\"'><img src=x onerror=alert(1)>";

    private static readonly IReadOnlyList<RawFile> Demo = [.. Repo.Files(Repo.OneBrake).Where(f => !Register.IsOne(f.Path) && !f.Path.EndsWith(".es.md", StringComparison.Ordinal))];

    private static readonly Dictionary<string, IReadOnlyList<RawFile>> Texts = new(StringComparer.Ordinal)
    {
        ["2.1.0"] = Demo,
        ["2.2.0"] = Changed("version: 2.1.0", "version: 2.2.0", "no force.", "little force."),
        ["2.3.0"] = Changed("version: 2.1.0", "version: 2.3.0", "no force.", "no force at all."),
    };

    [Fact]
    public void A_page_tells_when_each_version_was_in_force_what_it_changed_and_where_its_copies_are()
    {
        var page = Page(Three + Copies, "2.3.0", Kept);
        // the day's hashes are not approved text
        foreach (var version in Texts.Keys)
            page = page.Replace(Hash(version), $"{{hash of {version}}}", StringComparison.Ordinal).Replace(Grouped(version), $"{{short {version}}}", StringComparison.Ordinal);
        Approved.Check("Rendering.Tests/Approved/site-versions-wb-40.html", page);
    }

    [Fact]
    public void Without_git_it_says_so_and_has_all_the_rest()
    {
        var page = Page(Three + Copies, "2.3.0", v => new KeptFiles(null, $"No git here has kept the files of {v.Version}."));
        Assert.Contains("What differs from 2.1.0 is not known. No git here has kept the files of 2.1.0.", page, StringComparison.Ordinal);
        Assert.DoesNotContain("<table class=\"changes\">", page, StringComparison.Ordinal);
        foreach (var version in Texts.Keys)
            Assert.Contains($"<code class=\"all-digits\">{Hash(version)}</code>", page, StringComparison.Ordinal);
        Assert.Contains("K7M", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Files_that_do_not_give_the_registered_hash_are_not_compared()
    {
        var page = Page(Three, "2.3.0", v => v.Version.Value == "2.1.0" ? Kept(v) with { Files = Stored(Changed("no force.", "full force.")) } : Kept(v));
        Assert.Contains("What differs is not known for certain: the files that git has for 2.1.0 give the hash", page, StringComparison.Ordinal);
        Assert.DoesNotContain("full", page, StringComparison.Ordinal);
    }

    [Fact]
    public void What_stands_in_the_register_is_text_and_nothing_else()
    {
        var yaml = "\"" + Markup.Replace("\"", "\\\"", StringComparison.Ordinal) + "\"";
        var register = $$"""
            register: crew
            released:
              - {procedure: WB-40, version: "2.1.0", hash: "{{Hash("2.1.0")}}", date: "2031-05-02", by: RK, approvals: [{{yaml}}]}
              - {procedure: WB-40, version: {{yaml}}, hash: {{yaml}}, date: {{yaml}}, by: {{yaml}}, approvals: [{{yaml}}]}
              - {procedure: {{yaml}}, version: {{yaml}}, hash: {{yaml}}, date: {{yaml}}, by: {{yaml}}, approvals: [{{yaml}}]}
            withdrawn:
              - {procedure: WB-40, version: {{yaml}}, date: {{yaml}}, by: {{yaml}}, why: {{yaml}}}
            copies:
              - {copy: {{yaml}}, procedure: WB-40, version: "2.1.0", hash: {{yaml}}, unit: {{yaml}}, serial: {{yaml}}, place: {{yaml}}, issued: {{yaml}}, by: {{yaml}}, to: {{yaml}}, part: {{yaml}}}
              - {copy: K7M, procedure: WB-40, version: "2.1.0", hash: {{yaml}}, unit: {{yaml}}, serial: {{yaml}}, place: {{yaml}}, issued: {{yaml}}, by: {{yaml}}}
            ended:
              - {copy: {{yaml}}, spoiled: {{yaml}}, by: {{yaml}}, why: {{yaml}}}
            """;
        var pages = Built(register, "2.1.0", _ => new KeptFiles(null, Markup)).Where(p => p.Key.EndsWith(".html", StringComparison.Ordinal)).ToList();
        Assert.Contains(pages, p => p.Key == "versions/wb-40.html" && p.Value.Contains("&lt;script&gt;alert(1)&lt;/script&gt;&quot;&#39;&gt;&lt;img src=x onerror=alert(1)&gt;", StringComparison.Ordinal));
        Assert.All(pages, p => Assert.DoesNotContain("<script", p.Value, StringComparison.OrdinalIgnoreCase));
        Assert.All(pages, p => Assert.DoesNotContain("<img", p.Value, StringComparison.OrdinalIgnoreCase));
        Assert.All(pages, p => Assert.Matches("^[a-z0-9/.-]+$", p.Key));
    }

    [Theory]
    [InlineData("2.3.0", "in force", "In force since 2031-08-01. A sheet in hand is in force when its foot says 2.3.0 and ")]
    [InlineData("2.2.0", "withdrawn", "Withdrawn on 2031-07-20 by RK: force word in doubt. A sheet in hand is in force when its foot says 2.3.0 and ")]
    [InlineData("2.1.0", "replaced", "Replaced: this text was released on 2031-05-02, and another is in force. A sheet in hand is in force when its foot says 2.3.0 and ")]
    public void A_procedure_says_whether_the_sheet_in_hand_is_in_force(string here, string word, string says)
    {
        var built = Built(Three, here, Kept);
        Assert.Contains(says, built["procedures/wb-40.html"], StringComparison.Ordinal);
        Assert.Contains($"<b class=\"standing-word\">{word}</b>", built["index.html"], StringComparison.Ordinal);
    }

    [Fact]
    public void What_has_changed_since_the_release_is_compared_with_it()
    {
        var built = Built(Released("2.1.0", "2031-05-02"), "2.2.0", Kept);
        Assert.Contains("Changed since 2.1.0 was released on 2031-05-02", built["procedures/wb-40.html"], StringComparison.Ordinal);
        Assert.Contains("What differs from 2.1.0 to 2.2.0", built["versions/wb-40.html"], StringComparison.Ordinal);
        Assert.Contains("<del>no</del> <ins>little</ins>", built["versions/wb-40.html"], StringComparison.Ordinal);
        Assert.Contains("This workshop keeps no register", Built("register: crew\n", "2.1.0", Kept)["procedures/wb-40.html"], StringComparison.Ordinal);
    }

    [Fact]
    public void Sign_offs_of_an_earlier_version_still_show_wear_where_its_text_is_kept()
    {
        var records = Repo.Records(Repo.OneBrake);
        var register = Repo.Read("tests", "Workshops", "one-brake", "register.yaml").Replace("\nreleased:\n", $"\nreleased:\n{Line("2.2.0", "2033-09-01")}", StringComparison.Ordinal);
        const string trend = "<th scope=\"row\">16670 h</th>";
        Assert.Contains(trend, Built(register, "2.2.0", Kept, records)["machines/okr-34.html"], StringComparison.Ordinal);
        var without = Built(register, "2.2.0", _ => new KeptFiles(null, "No git here."), records)["machines/okr-34.html"];
        Assert.DoesNotContain(trend, without, StringComparison.Ordinal);
        Assert.Contains("3 records gave no point", without, StringComparison.Ordinal);
        // what was asked of git is not asked for every record
        var asked = 0;
        Built(register, "2.2.0", v => { asked++; return Kept(v); }, records);
        Assert.Equal(2, asked);
    }

    [Fact]
    public void A_record_is_not_held_against_files_that_do_not_give_the_registered_hash()
    {
        var record = Repo.Records(Repo.OneBrake)[0];
        var register = Repo.Read("tests", "Workshops", "one-brake", "register.yaml").Replace("\nreleased:\n", $"\nreleased:\n{Line("2.2.0", "2033-09-01")}", StringComparison.Ordinal);
        RawFile[] files = [.. Texts["2.2.0"], RawFile.Of("register.yaml", Encoding.UTF8.GetBytes(register))];
        var other = new KeptVersions(Stored(files), _ => new KeptFiles(Stored(Changed("no force.", "full force.")), ""));
        var finding = Assert.Single(Pipeline.Receive(Pipeline.Check(files), record, other).Findings);
        Assert.Equal("hash-unknown", finding.Rule.Name);
        Assert.StartsWith("The files that git has for 2.1.0 give the hash ", finding.PutRight, StringComparison.Ordinal);
        var kept = Pipeline.Receive(Pipeline.Check(files), record, other with { Of = Kept });
        Assert.Equal("2.1.0", kept.Older?.Printed.Version.Value);
        Assert.True(kept.Older?.IssuedBefore);
    }

    private static string Three => Released("2.1.0", "2031-05-02") + Line("2.2.0", "2031-07-01") + Line("2.3.0", "2031-08-01") + "withdrawn:\n  - {procedure: WB-40, version: 2.2.0, date: \"2031-07-20\", by: RK, why: force word in doubt}\n";

    private static string Copies => $$"""
        copies:
          - {copy: K7M, procedure: WB-40, version: 2.1.0, hash: "{{Hash("2.1.0")}}", unit: "14", serial: "0417", place: CL, issued: "2031-06-11T06:40+02:00", by: RK, to: MO}
          - {copy: K9M, procedure: WB-40, version: 2.2.0, hash: "{{Hash("2.2.0")}}", unit: "14", serial: "0417", place: CR, issued: "2031-07-11T06:40+02:00", by: RK}
          - {copy: KRT, procedure: WB-40, version: 2.3.0, hash: "{{Hash("2.3.0")}}", unit: "14", serial: "0417", place: CR, issued: "2031-08-11T06:40+02:00", by: RK, to: MO}
        ended:
          - {copy: K9M, spoiled: "2031-07-20", by: RK, why: called back}
        """;

    private static string Released(string version, string date) => "register: crew\nreleased:\n" + Line(version, date);

    private static string Line(string version, string date) => $"  - {{procedure: WB-40, version: {version}, hash: \"{Hash(version)}\", date: \"{date}\", by: RK, approvals: [RK]}}\n";

    private static KeptFiles Kept(ReleasedVersion version) => new(Stored(Texts[version.Version.Value]), "");

    private static StoredFile[] Stored(IEnumerable<RawFile> files) => [.. files.Select(StoredFile.Of)];

    private static string Page(string register, string here, Func<ReleasedVersion, KeptFiles> kept) => Built(register, here, kept)["versions/wb-40.html"];

    private static Dictionary<string, string> Built(string register, string here, Func<ReleasedVersion, KeptFiles> kept, IReadOnlyList<RawFile>? records = null)
    {
        RawFile[] files = [.. Texts[here], RawFile.Of("register.yaml", Encoding.UTF8.GetBytes(register))];
        return Pipeline.Build(Pipeline.Check(files), "0.0.0", records ?? [], new KeptVersions(Stored(files), kept)).ToDictionary(f => f.Path, f => Encoding.UTF8.GetString(f.Bytes.Span));
    }

    private static string Hash(string version)
    {
        var library = Pipeline.Check(Texts[version]).Library;
        return Witnessmark.Records.Hashing.ProcedureHash.Of(library, library.Procedure("WB-40")!).Hex;
    }

    private static string Grouped(string version) => Witnessmark.Records.Hashing.ShortHash.Of(Hash(version));

    private static IReadOnlyList<RawFile> Changed(params string[] swaps) =>
        [.. Demo.Select(f => f.Path != "wheel-end/wb-40.md" ? f : RawFile.Of(f.Path, Encoding.UTF8.GetBytes(swaps.Chunk(2).Aggregate(Encoding.UTF8.GetString(f.Bytes.Span), Swapped))))];

    private static string Swapped(string text, string[] swap)
    {
        Assert.Contains(swap[0], text, StringComparison.Ordinal);
        return text.Replace(swap[0], swap[1], StringComparison.Ordinal);
    }
}
