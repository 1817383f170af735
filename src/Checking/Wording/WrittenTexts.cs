using System.Collections.Immutable;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;

namespace Witnessmark.Checking.Wording;

/// <summary>All that people read in a procedure, piece by piece.</summary>
internal static class WrittenTexts
{
    private static readonly Once<Procedure, ImmutableArray<SafetyMessage>> InProcedure =
        new(p => [.. p.Parts.SelectMany(part => part.Sections).SelectMany(s => s.Messages.Concat(s.Steps.SelectMany(t => t.Messages)))]);

    public static IEnumerable<WrittenText> Of(Procedure procedure)
    {
        foreach (var text in Of(procedure.Introduction))
            yield return text;
        foreach (var part in procedure.Parts)
            foreach (var text in Of(part.Prose).Concat(part.Sections.SelectMany(Of)))
                yield return text;
    }

    public static IEnumerable<WrittenText> Of(Step step)
    {
        yield return WrittenText.Of(step.Name);
        yield return WrittenText.Of(step.Text);
        foreach (var remark in step.Remarks)
            yield return WrittenText.Of(remark);
        foreach (var text in Of(step.Blocks))
            yield return text;
        foreach (var fact in step.Facts)
            if (Spoken(fact) is { } spoken)
                yield return WrittenText.Of(spoken);
    }

    public static IEnumerable<WrittenText> Of(SafetyMessage message) =>
        [WrittenText.Of(message.Nature), WrittenText.Of(message.Rest), .. message.Avoid.Select(WrittenText.Of)];

    /// <summary>Every message with the section that it stands in.</summary>
    public static ImmutableArray<SafetyMessage> Messages(this Procedure procedure) => InProcedure.Of(procedure);

    private static IEnumerable<WrittenText> Of(Section section) =>
    [
        .. section.Messages.SelectMany(Of),
        .. Of(section.Prose),
        .. section.Steps.SelectMany(s => s.Messages.SelectMany(Of).Concat(Of(s))),
    ];

    private static IEnumerable<WrittenText> Of(ImmutableArray<Block> blocks) => blocks.IsEmpty ? [] : blocks.SelectMany(b => b switch
    {
        Paragraph p => [WrittenText.Of(p.Text)],
        BulletList l => l.Bullets.Select(WrittenText.Of),
        TextTable t => t.Head.Concat(t.Rows.SelectMany(r => r)).Select(WrittenText.Of),
        _ => [],
    });

    private static Located<string>? Spoken(Fact fact) => fact.Value switch
    {
        SpokenWords words => words.Text,
        ConditionValue condition => condition.Otherwise,
        _ => null,
    };
}
