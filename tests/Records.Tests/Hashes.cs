using System.Globalization;
using System.Text;
using Witnessmark.Language.Model;
using Witnessmark.Records.Hashing;

namespace Witnessmark.Records.Tests;

/// <summary>Two prints with one hash carry the same steps, numbers, messages and stops; two spellings of one text have one hash.</summary>
public sealed class Hashes
{
    private const string Stack = "wheel-end/wb-40.md";
    private const string Torque = "common/wb-60.md";
    private const string Sheet = "machines/okr-34.yaml";
    private const string Tools = "tools/crane-truck.yaml";
    private const string Root = "workshop.yaml";

    private static readonly string Today = Demo.Hash.Hex;

    public static TheoryData<string, string, string, string> Spellings => new()
    {
        { "a unit as shops write it", Sheet, "235 ± 12 N·m", "235 ± 12 Nm" },
        { "a unit with a point", Sheet, "235 ± 12 N·m", "235 ± 12 N.m" },
        { "a comment", Sheet, "# where people can be hurt", "# where hands and feet can be hurt" },
        { "quotes", Sheet, "resolution: 0.01 mm", "resolution: \"0.01 mm\"" },
        { "a short map written in lines", Sheet, "  backing-ring: {count: 1}", "  backing-ring:\n    count: 1" },
        { "the order of keys", Sheet, "    thread: M16x2\n    length: 55 mm", "    length: 55 mm\n    thread: M16x2" },
        { "bullets as stars", Stack, "    - measure: cavity-depth", "    * measure: cavity-depth" },
        { "strong with underscores", Stack, "**Measure the cavity**", "__Measure the cavity__" },
        { "a wrapped line", Stack, "Wash and dry every piece first.", "Wash and dry\nevery piece first." },
        { "two blanks", Stack, "at 12, 4 and 8 o'clock", "at 12,  4 and 8 o'clock" },
        { "a number of its own with a bracket", Stack, "1. **Measure the cavity**", "1) **Measure the cavity**" },
        { "the status", Stack, "status: released", "status: in-review" },
        { "an approval", Stack, "\"2031-05-02\"", "\"2031-05-03\"" },
        { "an item that it does not use", Tools, "paint-pen: {kind: marking}", "paint-pen: {kind: writing}" },
        { "a lock that no step names", Sheet, "  support:\n", "  bed:\n    values: [down, up]\n  support:\n" },
        { "a limit of the house", Root, "lift-by-hand: 23 kg", "lift-by-hand: 20 kg" },
        { "shims that no step handles", Sheet, "most: 5   ", "most: 6   " },
        { "a person", Root, "  RK: {role: independent mechanic, mark-signs: K7}", "  RK: {role: independent mechanic}\n  SB: {role: mechanic}" },
    };

    public static TheoryData<string, string, string, string> Changes => new()
    {
        { "a digit that says the resolution", Sheet, "worn-at: 4.60 mm", "worn-at: 4.6 mm" },
        { "a torque", Sheet, "235 ± 12 N·m", "236 ± 12 N·m" },
        { "a unit", Sheet, "235 ± 12 N·m", "235 ± 12 lbf·ft" },
        { "a word of a step", Stack, "Oil every disc", "Oil each disc" },
        { "a word of its text", Stack, "no force.", "some force." },
        { "a message", Stack, "Nobody below the hook", "Nobody near the hook" },
        { "a signal word", Stack, "**WARNING: a moving", "**CAUTION: a moving" },
        { "the order of two facts", Stack, "    - fit: backing-ring-bolts 10 of 12\n    - snug: backing-ring-bolts 10 of 12", "    - snug: backing-ring-bolts 10 of 12\n    - fit: backing-ring-bolts 10 of 12" },
        { "a limit", Sheet, "good: 4.92 to 5.08 mm", "good: 4.92 to 5.07 mm" },
        { "a stop left out", Stack, "    - stop-if: plate-thickness = replace\n", "" },
        { "a count", Stack, "friction-disc = 9, steel", "friction-disc = 8, steel" },
        { "a hold point", Stack, "both faced sides outward", "both faced sides inward" },
        { "who checks", Stack, "checked-by: helper (concurrent)", "checked-by: helper (independent)" },
        { "a pinned version", Stack, "WB-60: 1.2.0", "WB-60: 1.1.0" },
        { "a word of the common part", Torque, "a remembered one", "a guessed one" },
        { "its own version", Stack, "version: 2.1.0", "version: 2.1.1" },
        { "the serials", Stack, "serials: from 0200", "serials: from 0300" },
        { "the gauge that a reading names", Tools, "range: 0 to 25 mm", "range: 0 to 24 mm" },
        { "the scale of the wrench", Tools, "scale: 5 N·m", "scale: 10 N·m" },
        { "the passes of the house", Root, "[30 %, 60 %,", "[40 %, 60 %," },
        { "words of a call", Root, "next is ___", "now comes ___" },
        { "a hazard", Sheet, "if-ignored: could\n    zone: brake-face", "if-ignored: will\n    zone: brake-face" },
        { "a zone that a hazard names", Sheet, "2 m around it", "3 m around it" },
        { "what must not be so at a stop", Sheet, "never: safe stop, brake-cavity = open", "never: safe stop, backing-ring is not fitted" },
        { "a bundle of conditions", Sheet, "    - wheel-chocks = placed\n", "" },
        { "the order of a stack", Sheet, "      - end-plate, faced side to piston\n      - friction-disc\n", "      - friction-disc\n      - end-plate, faced side to piston\n" },
    };

    [Theory]
    [MemberData(nameof(Spellings))]
    public void Another_spelling_keeps_the_hash(string what, string path, string text, string by) =>
        Assert.True(Today == HashOf(Demo.With(path, text, by)), $"{what} changed the hash");

    [Theory]
    [MemberData(nameof(Changes))]
    public void Another_meaning_changes_the_hash(string what, string path, string text, string by) =>
        Assert.True(Today != HashOf(Demo.With(path, text, by)), $"{what} did not change the hash");

    [Fact]
    public void Shims_that_a_step_fits_are_hashed_with_it()
    {
        (string, Func<string, string>) fit = (Stack, t => t.Replace("    - fit: brake-stack\n", "    - fit: brake-stack, hub-shims\n", StringComparison.Ordinal));
        (string, Func<string, string>) other = (Sheet, t => t.Replace("0.13 mm, 0.25 mm", "0.14 mm, 0.25 mm", StringComparison.Ordinal));
        Assert.Equal(Today, HashOf(Demo.Changed([other])));
        Assert.NotEqual(HashOf(Demo.Changed([fit])), HashOf(Demo.Changed([fit, other])));
    }

    [Fact]
    public void Line_ends_of_another_system_keep_the_hash()
    {
        Assert.Equal(Today, HashOf(Demo.Changed(Stack, c => c.Replace("\n", "\r\n", StringComparison.Ordinal))));
        Assert.Equal(Today, HashOf(Demo.Changed(Sheet, c => c.Replace("\n", "\r\n", StringComparison.Ordinal))));
    }

    [Fact]
    public void The_order_of_steps_changes_the_hash()
    {
        var swapped = Demo.Changed(Stack, c => Swap(c, "3. **Measure each steel plate**", "4. **Measure both end plates**", "5. **Work"));
        Assert.NotEqual(Today, HashOf(swapped));
    }

    [Fact]
    public void One_letter_in_two_codes_has_the_hash_of_the_letter()
    {
        var one = Demo.With(Stack, "no force.", "no f\u00FCrce.");
        var two = Demo.With(Stack, "no force.", "no fu\u0308rce.");
        Assert.Equal(HashOf(one), HashOf(two));
    }

    [Theory]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    [InlineData("th-TH")]
    public void A_machine_in_another_country_makes_the_same_hash(string culture)
    {
        var here = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
            Assert.Equal(Today, HashOf(Demo.With(Root, "# The root", "# The root")));
        }
        finally
        {
            CultureInfo.CurrentCulture = here;
        }
    }

    [Fact]
    public void A_manifest_is_checked_with_sha256sum_line_by_line()
    {
        var lines = Demo.Hash.Manifest.TrimEnd('\n').Split('\n');
        Assert.Equal("canon 1", lines[0]);
        Assert.Equal(lines[1..].Order(StringComparer.Ordinal), lines[1..]);
        Assert.Contains(lines, l => l.StartsWith("step/build-the-stack/stack-from-the-piston-out ", StringComparison.Ordinal));
        Assert.Contains(lines, l => l.StartsWith("item/fasteners/backing-ring-bolts ", StringComparison.Ordinal));
        Assert.Contains(lines, l => l.StartsWith("item/tool/micrometer-25 ", StringComparison.Ordinal));
        Assert.Contains(lines, l => l.StartsWith("performs/WB-60 1.2.0 ", StringComparison.Ordinal));
        var bytes = System.Security.Cryptography.SHA256.HashData(Encoding.UTF8.GetBytes(Demo.Hash.Manifest));
        Assert.Equal(Convert.ToHexStringLower(bytes), Demo.Hash.Hex);
    }

    [Fact]
    public void The_printed_hash_is_twelve_digits_in_groups_of_four()
    {
        Assert.Matches("^[0-9A-F]{4} [0-9A-F]{4} [0-9A-F]{4}$", Demo.Hash.Short12);
        Assert.True(Demo.Hash.IsBegunBy(Demo.Hash.Short12));
        Assert.True(Demo.Hash.IsBegunBy(Demo.Hash.Hex));
        Assert.False(Demo.Hash.IsBegunBy(Demo.Hash.Short12[..9]));
        Assert.False(Demo.Hash.IsBegunBy(""));
    }

    [Fact]
    public void Text_that_cannot_be_normalised_would_be_found_out()
    {
        Assert.True(NormalForm.Works);
        Assert.False(NormalForm.WorksWith(text => text));
    }

    private static string HashOf(Library library) => ProcedureHash.Of(library, library.Procedure("WB-40")!).Hex;

    private static string Swap(string text, string first, string second, string end)
    {
        int a = text.IndexOf(first, StringComparison.Ordinal), b = text.IndexOf(second, StringComparison.Ordinal), c = text.IndexOf(end, StringComparison.Ordinal);
        return text[..a] + "3." + text[(b + 2)..c] + "4." + text[(a + 2)..b] + text[c..];
    }
}
