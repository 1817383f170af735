namespace Witnessmark.Rendering.Checklist;

/// <summary>A sheet as the press takes it: HTML that leaves the place of the code empty, and the code.</summary>
public sealed record PressSheet(string Html, FootCode Code);
