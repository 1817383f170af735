namespace Witnessmark.Rendering.Checklist;

/// <summary>A sheet as the press takes it.</summary>
/// <param name="Code">The code that every page gets; the HTML leaves its place empty. Null: the pages have none, or bring their own.</param>
public sealed record PressSheet(string Html, FootCode? Code);
