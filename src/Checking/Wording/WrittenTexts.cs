using System.Collections.Immutable;
using Witnessmark.Language.Model;

namespace Witnessmark.Checking.Wording;

/// <summary>All that people read in a procedure, piece by piece.</summary>
internal static class WrittenTexts
{
    public static IEnumerable<WrittenText> Of(Procedure procedure)
    {
        foreach (var text in Of(procedure.Introduction))
            yield return text;
        foreach (var part in procedure.Parts)
            foreach (var text in Of(part.Prose).Concat(part.Sections.SelectMany(Of)))
                yield return text;
    }

    public static IEnumerable<WrittenText> Of(Step step) =>
    [
        WrittenText.Of(step.Name),
        WrittenText.Of(step.Text),
        .. step.Remarks.Select(WrittenText.Of),
        .. Of(step.Blocks),
        .. step.Facts.SelectMany(Spoken),
    ];

    public static IEnumerable<WrittenText> Of(SafetyMessage message) =>
        [WrittenText.Of(message.Nature), WrittenText.Of(message.Rest), .. message.Avoid.Select(WrittenText.Of)];

    /// <summary>Every message with the section that it stands in.</summary>
    public static IEnumerable<SafetyMessage> Messages(this Procedure procedure) =>
        procedure.Parts.SelectMany(p => p.Sections).SelectMany(s => s.Messages.Concat(s.Steps.SelectMany(t => t.Messages)));

    private static IEnumerable<WrittenText> Of(Section section) =>
    [
        .. section.Messages.SelectMany(Of),
        .. Of(section.Prose),
        .. section.Steps.SelectMany(s => s.Messages.SelectMany(Of).Concat(Of(s))),
    ];

    private static IEnumerable<WrittenText> Of(ImmutableArray<Block> blocks) => blocks.SelectMany(b => b switch
    {
        Paragraph p => [WrittenText.Of(p.Text)],
        BulletList l => l.Bullets.Select(WrittenText.Of),
        TextTable t => t.Head.Concat(t.Rows.SelectMany(r => r)).Select(WrittenText.Of),
        _ => [],
    });

    private static IEnumerable<WrittenText> Spoken(Fact fact) => fact.Value switch
    {
        SpokenWords words => [WrittenText.Of(words.Text)],
        ConditionValue { Otherwise: { } otherwise } => [WrittenText.Of(otherwise)],
        _ => [],
    };
}
