using System.Collections.Immutable;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;

namespace Witnessmark.Checking.Wording;

/// <summary>All that people read in a procedure, piece by piece.</summary>
internal static class WrittenTexts
{
    private static readonly Once<Procedure, ImmutableArray<SafetyMessage>> InProcedure = new(p => [.. FindMessages(p)]);

    public static void Read(Procedure procedure, Action<WrittenText> read)
    {
        Read(procedure.Introduction, read);
        foreach (var part in procedure.Parts)
        {
            Read(part.Prose, read);
            foreach (var section in part.Sections)
                Read(section, read);
        }
    }

    public static void Read(Step step, Action<WrittenText> read)
    {
        read(WrittenText.Of(step.Name));
        read(WrittenText.Of(step.Text));
        Read(step.Remarks, read);
        Read(step.Blocks, read);
        foreach (var fact in step.Facts)
            if (Spoken(fact) is { } spoken)
                read(WrittenText.Of(spoken));
    }

    public static void Read(SafetyMessage message, Action<WrittenText> read)
    {
        read(WrittenText.Of(message.Nature));
        ReadBehindNature(message, read);
    }

    /// <summary>What stands behind the bold words of a message.</summary>
    public static void ReadBehindNature(SafetyMessage message, Action<WrittenText> read)
    {
        read(WrittenText.Of(message.Rest));
        Read(message.Avoid, read);
    }

    /// <summary>Every message, in the order written.</summary>
    public static ImmutableArray<SafetyMessage> Messages(this Procedure procedure) => InProcedure.Of(procedure);

    private static IEnumerable<SafetyMessage> FindMessages(Procedure procedure)
    {
        foreach (var section in procedure.Parts.SelectMany(p => p.Sections))
        {
            foreach (var message in section.Messages)
                yield return message;
            foreach (var step in section.Steps)
                foreach (var message in step.Messages)
                    yield return message;
        }
    }

    private static void Read(Section section, Action<WrittenText> read)
    {
        foreach (var message in section.Messages)
            Read(message, read);
        Read(section.Prose, read);
        foreach (var step in section.Steps)
        {
            foreach (var message in step.Messages)
                Read(message, read);
            Read(step, read);
        }
    }

    private static void Read(ImmutableArray<Block> blocks, Action<WrittenText> read)
    {
        foreach (var block in blocks)
            if (block is Paragraph paragraph)
                read(WrittenText.Of(paragraph.Text));
            else if (block is BulletList list)
                Read(list.Bullets, read);
            else if (block is TextTable table)
                Read([.. table.Head, .. table.Rows.SelectMany(r => r)], read);
    }

    private static void Read(ImmutableArray<ImmutableArray<Inline>> texts, Action<WrittenText> read)
    {
        foreach (var text in texts)
            read(WrittenText.Of(text));
    }

    private static Located<string>? Spoken(Fact fact) => fact.Value switch
    {
        SpokenWords words => words.Text,
        ConditionValue condition => condition.Otherwise,
        _ => null,
    };
}
