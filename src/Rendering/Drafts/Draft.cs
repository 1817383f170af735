using Witnessmark.Language.Text;
using Witnessmark.Rendering.Html;

namespace Witnessmark.Rendering.Drafts;

/// <summary>Files to write on from. Values come checked or quoted: a title may hold any sign that YAML has a use for.</summary>
public static class Draft
{
    public static string Workshop(string author) => Fill("workshop.yaml", ("author", author));

    public static string Machine(string machine) => Fill("machine.yaml", ("machine", machine));

    public static string Procedure(string id, string title, string language, string machine, string serials, string author) =>
        Fill("procedure.md", ("id", id), ("title", YamlScalar.Of(title)), ("heading", Heading(title)), ("language", language), ("machine", machine), ("serials", serials), ("author", author));

    private static string Fill(string name, params (string Name, string Value)[] values)
    {
        var text = Resources.Text("templates/new/" + name);
        foreach (var (key, value) in values)
            text = text.Replace("{{" + key + "}}", value, StringComparison.Ordinal);
        return text;
    }

    // a heading is plain words: signs that Markdown has a use for stand behind a backslash
    private static string Heading(string text) => string.Concat(text.Select(c => "\\`*_{}[]<>#|!&".Contains(c, StringComparison.Ordinal) ? "\\" + c : c.ToString()));
}
