namespace Witnessmark.Rendering.Messages;

/// <summary>How words are marked on a terminal. Nothing depends on colour alone: the words say it too.</summary>
public sealed record Ink(string Fault, string Query, string Remark, string Label, string Quiet, string Off)
{
    public static readonly Ink None = new("", "", "", "", "", "");

    /// <summary>Bold red, bold yellow, bold cyan, bold, dim (ECMA-48 select graphic rendition).</summary>
    public static readonly Ink Terminal = new("\u001b[1;31m", "\u001b[1;33m", "\u001b[1;36m", "\u001b[1m", "\u001b[2m", "\u001b[0m");
}
