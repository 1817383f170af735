using Witnessmark.Language.Findings;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;
using Witnessmark.Reading.Faults;

namespace Witnessmark.Reading.Data;

/// <summary>Signs of the data language that bite people who only meant to write a text.</summary>
internal static class YamlSigns
{
    private const string Lost = "What is written and what is read are then two things, and nobody sees it.";

    /// <summary>False when there is a tab: nobody can tell how far in the line, or what follows, stands.</summary>
    public static bool HasNoTab(SourceText source, TextSpan span, FindingList findings)
    {
        var tab = source.Content.IndexOf('\t', span.Start, span.Length);
        if (tab < 0)
            return true;
        findings.Add(
            DataFaults.YamlTab,
            source.At(tab, tab + 1),
            "There is a tab here.",
            "A tab is as wide as each editor likes, so the same file looks right on one screen and wrong on the next; how far in a line stands says what it belongs to.",
            "Use blanks, two for each step in. Most editors have a setting \"insert spaces for tabs\".");
        return false;
    }

    /// <summary>A # behind a text begins a remark. Remarks have a blank behind the #; without one, words were probably lost.</summary>
    public static void ReportLostWords(SourceText source, TextSpan span, int behind, FindingList findings)
    {
        var at = behind;
        while (at < span.End && source.Content[at] == ' ')
            at++;
        if (at == behind || at + 1 >= span.End || source.Content[at] != '#' || source.Content[at + 1] is ' ' or '\r' or '\n')
            return;
        var end = source.Content.IndexOf('\n', at, span.End - at);
        var lost = source.At(at, at + source.Content[at..(end < 0 ? span.End : end)].TrimEnd().Length);
        findings.Add(
            DataFaults.YamlHash,
            lost,
            $"Everything from ` #` on is dropped here: `{Say.Short(lost.Text)}`.",
            $"A # behind a blank begins a remark that is not printed. {Lost}",
            "If it belongs to the text, put the whole text in quotes: \"rule 9 #3\". If it is a remark, put a blank behind the #.");
    }

    public static Finding Nothing(Location at) => new(
        DataFaults.YamlBroken,
        at,
        "There is nothing in it.",
        "Nobody can tell what the file is for.",
        "Begin with `key: value`, one to a line, or take the file out of the workshop folder.");

    public static Finding TooMuch(Location at) => new(
        DataFaults.TextTooLarge,
        at,
        $"This file has more than {Say.Number(YamlTree.MostNodes)} keys and values.",
        "No person wrote that by hand, and nobody can check it.",
        "Split the file by topic, or take it out of the workshop folder.");

    public static Finding TooDeep(Location at) => new(
        DataFaults.TextTooLarge,
        at,
        $"Values are nested more than {Say.Number(YamlTree.DeepestLevel)} deep here.",
        "A fact that lies this deep is overlooked in a review.",
        "Write it flat: one fact a line.");

    public static Finding HiddenByEscape(Location at, char sign) => new(
        DataFaults.TextHidden,
        at,
        $"The backslash in {Say.Short(at.Text)} writes a character that cannot be seen, {Decode.NameOf(sign)}.",
        "A text with unseen signs can look one way on the screen and mean another: on paper, 10 and 01 could change places.",
        "Take it out. A backslash that is meant as a backslash is written twice in double quotes, once in single ones.");

    public static Finding Anchor(Location at) => new(
        DataFaults.YamlAnchor,
        at,
        $"`{Say.Short(at.Text)}` takes a value from elsewhere (`&` names it, `*` and `<<` fetch it).",
        "A value must stand where it is used: in a review, and on a comparison of two versions, nobody sees where it came from.",
        "Write the value out here. If a text should begin with & or *, put it in quotes.");

    public static Finding Tag(Location at) => new(
        DataFaults.YamlTag,
        at,
        $"`{Say.Short(at.Text)}` at the beginning of a value tells a computer what kind of value it is.",
        "Here every value is read as written; what belongs where is known from the key.",
        "Leave it out. If a text should begin with !, put it in quotes.");

    public static Finding SecondDocument(Location at) => new(
        DataFaults.YamlDocuments,
        at,
        "A line of `---` begins a second document; only the first is read.",
        Lost,
        "Make it a file of its own, or take the line out.");

    /// <param name="whole">From bracket to bracket.</param>
    /// <param name="key">The key without a value.</param>
    public static Finding Braces(Location whole, Located<string> key) => new(
        DataFaults.YamlBraces,
        whole.Span.Start + 1 == key.At.Span.Start ? whole : key.At,
        $"`{Say.Short(key.Value)}` in `{Say.Short(whole.Text)}` is read as a key without a value.",
        "Curly brackets mean a list of `key: value`, and a comma begins the next key: the text that was meant is gone.",
        $"If it is a text, or goes on behind a comma, put that text in quotes: \"{Say.Short(key.Value)}\". A list of words goes in square brackets: [a, b].");

    public static Finding KeyIsNoWord(Location at) => new(
        DataFaults.YamlBroken,
        at,
        $"`{Say.Short(at.Text)}` stands where a key belongs.",
        "A key is one word or a few, so that a message can name it.",
        "Write `key: value`.");

    public static Finding KeyTwice(Located<string> again, Located<string> first) =>
        new(
            DataFaults.KeyTwice,
            again.At,
            $"`{Say.Short(again.Value)}` is written twice (first in line {Say.Number(first.At.Start.Line)}).",
            "Two values for one thing: whoever reads only one of them works with the wrong one half of the time.",
            "Keep one. If they are two things, give the second a name of its own.")
        {
            Further = [new FurtherPlace(first.At, "first written here")],
        };
}
