using System.Collections.Immutable;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Witnessmark.Language.Text;

namespace Witnessmark.Language.Model;

/// <summary>What people read in one place: a title, a heading, a step, a message.</summary>
/// <param name="Says">What it is, in a sentence: <c>step 3</c>.</param>
/// <param name="Texts">Its texts without their Markdown, in order; none of them empty.</param>
public sealed record Passage(string Says, ImmutableArray<string> Texts, Location At)
{
    /// <summary>
    /// Four digits of SHA-256 over the words: the mark by which a translation says which words it was made from. How text is
    /// laid out or emphasised does not count; one changed word in 65,536 is missed.
    /// </summary>
    public static string MarkOf(IEnumerable<Passage> passages)
    {
        var words = string.Join('\n', passages.SelectMany(p => p.Texts).Select(Folded));
        return Convert.ToHexString(SHA256.HashData(Encoding.UTF8.GetBytes(words)))[..4];
    }

    private static string Folded(string text) =>
        string.Join(' ', text.Normalize(NormalizationForm.FormC).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}

/// <summary>The passages of a procedure or of its translation, each made in the same way, so that two can be compared.</summary>
public static class Passages
{
    /// <summary>All of a procedure, in the order printed.</summary>
    public static IEnumerable<Passage> Of(Procedure procedure)
    {
        yield return Title(procedure.Title, procedure.Heading, procedure.Introduction, procedure.Id.At);
        foreach (var part in procedure.Parts)
        {
            yield return Part(part, part.Name?.At ?? procedure.Id.At);
            foreach (var section in part.Sections)
                foreach (var passage in WithMessages(section, section.Heading?.At ?? procedure.Id.At).Concat(section.Steps.SelectMany(WithMessages)))
                    yield return passage;
        }
    }

    public static Passage Title(Located<string>? title, Located<string>? heading, ImmutableArray<Block> introduction, Location at) =>
        Of("the title", [title?.Value, heading?.Value, .. Words(introduction)], at);

    public static Passage Part(ProcedurePart part, Location at) => Of($"the part {part.Name?.Value}", Words(part.Prose), at);

    public static Passage Section(Section section, Location at) =>
        Of($"the section “{section.Heading?.Value}”", [section.Heading?.Value, .. Words(section.Prose)], at);

    public static Passage Step(Step step) => Of(
        string.Create(CultureInfo.InvariantCulture, $"step {step.WrittenNumber.Value}"),
        [step.Name.Value, step.Text.Plain(), .. step.Remarks.Select(r => r.Plain()), .. Words(step.Blocks), .. step.Facts.Select(f => f.Value).OfType<SpokenWords>().Select(s => s.Text.Value)],
        step.Name.At);

    public static Passage Message(SafetyMessage message, string of) => Of(
        $"the message of {of}",
        [message.Nature.Value, message.Rest.Plain(), .. message.Avoid.Select(a => a.Plain())],
        message.At);

    /// <summary>A step and the messages before it.</summary>
    public static IEnumerable<Passage> WithMessages(Step step)
    {
        var own = Step(step);
        return [.. step.Messages.Select(m => Message(m, own.Says)), own];
    }

    /// <summary>A section's heading and text, and the messages before it.</summary>
    public static IEnumerable<Passage> WithMessages(Section section, Location at)
    {
        var own = Section(section, at);
        return [.. section.Messages.Select(m => Message(m, own.Says)), own];
    }

    private static Passage Of(string says, IEnumerable<string?> texts, Location at) =>
        new(says, [.. texts.OfType<string>().Where(t => t.Length > 0)], at);

    private static IEnumerable<string> Words(ImmutableArray<Block> blocks) => blocks.SelectMany(b => b switch
    {
        Paragraph p => [p.Text.Plain()],
        BulletList l => l.Bullets.Select(t => t.Plain()),
        TextTable t => t.Head.Concat(t.Rows.SelectMany(r => r)).Select(c => c.Plain()),
        _ => Enumerable.Empty<string>(),
    });
}
