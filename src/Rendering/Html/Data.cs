using Scriban.Runtime;

namespace Witnessmark.Rendering.Html;

/// <summary>Models for templates, built by hand: no reflection, and a template sees only what was put here.</summary>
public static class Data
{
    public static ScriptArray List(IEnumerable<object?> items)
    {
        var list = new ScriptArray();
        foreach (var item in items)
            list.Add(item);
        return list;
    }

    /// <summary>A template and what it shows: <c>{{ part it.template it }}</c>.</summary>
    internal static ScriptObject Showing(this ScriptObject model, string template)
    {
        model["template"] = template;
        return model;
    }
}
