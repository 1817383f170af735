using Scriban.Runtime;
using Witnessmark.Rendering.Html;

namespace Witnessmark.Rendering.Site.Drawings;

/// <summary>A drawing on a page, and the words below it.</summary>
internal sealed record Drawing(string Svg, string Caption)
{
    public ScriptObject Model => new() { ["svg"] = new RawHtml(Svg), ["caption"] = Caption };
}
