using Scriban.Runtime;

namespace Witnessmark.Rendering.Html;

/// <summary>Models of templates are built by hand: no reflection, and a template sees only what was put there.</summary>
internal static class PartModel
{
    /// <summary>A template and what it shows: <c>{{ part it.template it }}</c>.</summary>
    public static ScriptObject Showing(this ScriptObject model, string template)
    {
        model["template"] = template;
        return model;
    }
}
