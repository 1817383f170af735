using System.Collections.Immutable;
using Witnessmark.Language.Model;

namespace Witnessmark.Records.Hashing;

/// <summary>Head, body and steps of a procedure. Left out: status, approvals, authors, and what was declared but is not used.</summary>
internal static class BodyCanon
{
    /// <summary>Front matter that is not hashed here: living facts, pins (a line of their own) and items (a line each, when used).</summary>
    private static readonly ImmutableHashSet<string> NotInHead =
        ["status", "approvals", "authors", "uses", "readings", "values", "tests", "hazards", "devices", "calls"];

    public static Canon Head(Procedure procedure) => NodeCanon.Of(procedure.Node, NotInHead);

    /// <summary>Everything between the steps and their order.</summary>
    public static Canon Body(Procedure procedure) => Canon.Map(
        ("heading", Canon.Maybe(procedure.Heading?.Value)),
        ("introduction", ProseCanon.Of(procedure.Introduction)),
        ("parts", Canon.List(procedure.Parts.Select(Part))));

    public static Canon Step(Step step) => Canon.Map(
        ("name", Canon.Text(step.Name.Value)),
        ("text", ProseCanon.Of(step.Text)),
        ("facts", FactCanon.Of(step.Facts)),
        ("remarks", ProseCanon.Bullets(step.Remarks)),
        ("blocks", ProseCanon.Of(step.Blocks)));

    private static Canon Part(ProcedurePart part) => Canon.Map(
        ("name", Canon.Maybe(part.Name?.Value)),
        ("facts", FactCanon.Of(part.Facts)),
        ("prose", ProseCanon.Of(part.Prose)),
        ("sections", Canon.List(part.Sections.Select(Section))));

    private static Canon Section(Section section) => Canon.Map(
        ("heading", Canon.Maybe(section.Heading?.Value)),
        ("messages", Messages(section.Messages)),
        ("facts", FactCanon.Of(section.Facts)),
        ("prose", ProseCanon.Of(section.Prose)),
        ("steps", Canon.List(section.Steps.Select(s => Canon.Map(("step", Canon.Text(s.Slug)), ("messages", Messages(s.Messages)))))));

    private static Canon Messages(ImmutableArray<SafetyMessage> messages) => Canon.List(messages.Select(Message));

    public static Canon Message(SafetyMessage message) => Canon.Map(
        ("word", Canon.Text(message.Word.Value)),
        ("nature", Canon.Text(message.Nature.Value)),
        ("rest", ProseCanon.Of(message.Rest)),
        ("avoid", ProseCanon.Bullets(message.Avoid)),
        ("hazard", Canon.Maybe(message.Hazard?.Value)));
}
