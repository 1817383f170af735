using System.Collections.Immutable;
using System.Text;
using Witnessmark.Language.Text;

namespace Witnessmark.Language.Model;

public enum ReleaseStatus
{
    Draft,
    InReview,
    Released,
    Withdrawn,
}

/// <summary>A procedure or job: front matter and body.</summary>
public sealed record Procedure(SourceText Source, Located<string> Id, DataNode Node) : WorkshopFile(Source, Node), IItem
{
    /// <summary>True for <c>job:</c>.</summary>
    public bool IsJob { get; init; }
    public Located<string>? Title { get; init; }

    /// <summary>1.2.3</summary>
    public Located<string>? Version { get; init; }
    public Located<ReleaseStatus>? Status { get; init; }
    public Located<string>? Language { get; init; }
    public Located<string>? Machine { get; init; }
    public Located<Applicability>? AppliesTo { get; init; }
    public ImmutableArray<(Located<string> Role, Located<int> Number)> Crew { get; init; } = [];
    public bool IsCommonPart { get; init; }

    /// <summary>What a common part is given: <c>group: fasteners</c>.</summary>
    public ImmutableArray<Parameter> Takes { get; init; } = [];

    /// <summary>Pinned versions of what it performs.</summary>
    public ImmutableArray<Pin> Uses { get; init; } = [];
    public ImmutableArray<Located<string>> UsesTools { get; init; } = [];
    public Located<string>? Basis { get; init; }
    public ImmutableArray<Located<string>> Authors { get; init; } = [];
    public ImmutableArray<Approval> Approvals { get; init; } = [];

    /// <summary>What this version leaves out on purpose, and why: a message, a hold point, a second person.</summary>
    public ImmutableArray<Dropped> Drops { get; init; } = [];

    public Items<ReadingItem> Readings { get; init; } = Items<ReadingItem>.None;
    public Items<WorkedValue> Values { get; init; } = Items<WorkedValue>.None;
    public Items<TestItem> Tests { get; init; } = Items<TestItem>.None;
    public Items<Hazard> Hazards { get; init; } = Items<Hazard>.None;
    public Items<DeviceKind> Devices { get; init; } = Items<DeviceKind>.None;
    public Items<CallLine> Calls { get; init; } = Items<CallLine>.None;

    /// <summary>The heading of level one, when written.</summary>
    public Located<string>? Heading { get; init; }

    public ImmutableArray<Block> Introduction { get; init; } = [];

    /// <summary>At least one; a procedure without <c># Part:</c> has one without a name.</summary>
    public ImmutableArray<ProcedurePart> Parts { get; init; } = [];

    public IEnumerable<Step> Steps => Parts.SelectMany(p => p.Steps);

    public ProcedurePart? Part(string name) => Parts.FirstOrDefault(p => p.Name?.Value == name);
}

public sealed record Applicability(Located<SerialRange>? Serials, ImmutableArray<Located<string>> Positions);

public sealed record Parameter(Located<string> Name, Located<string> Kind, bool MayBeLeftOut);

public sealed record Pin(Located<string> Procedure, Located<string> Version);

/// <param name="What">The danger of a message, or the name of a step.</param>
public sealed record Dropped(Located<string> What, Located<string> Reason);

public sealed record Approval(Located<string>? Role, Located<string>? By, Located<string>? Date, Location At);

/// <summary>A piece of a procedure with a contract of its own.</summary>
public sealed record ProcedurePart(Located<string>? Name, ImmutableArray<Fact> Facts, ImmutableArray<Block> Prose, ImmutableArray<Section> Sections)
{
    public IEnumerable<Step> Steps => Sections.SelectMany(s => s.Steps);
}

/// <summary>Steps done at one place. A part may begin with steps under no heading: then <paramref name="Heading"/> is null.</summary>
/// <param name="Messages">Messages that stand before the heading: they hold for every step of the section.</param>
public sealed record Section(
    Located<string>? Heading,
    ImmutableArray<Fact> Facts,
    ImmutableArray<Block> Prose,
    ImmutableArray<SafetyMessage> Messages,
    ImmutableArray<Step> Steps);

/// <summary>One numbered step.</summary>
/// <param name="WrittenNumber">The number in the file.</param>
/// <param name="Number">The number it prints as: its place in the document.</param>
/// <param name="Name">The bold words, without their last stop.</param>
/// <param name="Text">What follows the name in the first paragraph.</param>
/// <param name="Messages">Messages directly before it; they hold from here to the end of the section.</param>
/// <param name="Remarks">Bullets without a key.</param>
/// <param name="Blocks">Further paragraphs, tables, images of the step.</param>
public sealed record Step(
    Located<int> WrittenNumber,
    int Number,
    Located<string> Name,
    ImmutableArray<Inline> Text,
    ImmutableArray<SafetyMessage> Messages,
    ImmutableArray<Fact> Facts,
    ImmutableArray<ImmutableArray<Inline>> Remarks,
    ImmutableArray<Block> Blocks,
    Location At)
{
    /// <summary>The stable name within its section: <c>tighten-the-ring-bolts</c>.</summary>
    public string Slug => StepName.Slug(Name.Value);

    /// <summary>The name as it prints before its text: with the stop that the author wrote, or a full stop when nothing follows.</summary>
    public string NameWithStop
    {
        get
        {
            var content = Name.At.Source.Content;
            var behind = Name.At.Span.End < content.Length ? content[Name.At.Span.End] : ' ';
            if (behind is '.' or ',' or ';' or ':')
                return Name.Value + behind;
            return Text.IsEmpty && Name.Value is [.., var last] && char.IsLetterOrDigit(last) ? Name.Value + "." : Name.Value;
        }
    }

    public Fact? Find(FactWord word) => Facts.Find(word);

    public IEnumerable<Fact> All(FactWord word) => Facts.Where(f => f.Word == word);

    public T? Value<T>(FactWord word)
        where T : FactValue => Find(word)?.Value as T;
}

/// <summary>A safety message: <c>&gt; **WARNING: nature and consequence** more.</c> and bullets.</summary>
/// <param name="Word">As written: WARNING. <see cref="Signal"/> is null when it is no signal word.</param>
/// <param name="Nature">The bold words behind the colon.</param>
/// <param name="Rest">Text behind the bold words.</param>
/// <param name="Avoid">Bullets without a key: how to avoid it.</param>
/// <param name="Hazard">The declared hazard.</param>
public sealed record SafetyMessage(
    Located<string> Word,
    SignalWord? Signal,
    Located<string> Nature,
    ImmutableArray<Inline> Rest,
    ImmutableArray<ImmutableArray<Inline>> Avoid,
    Located<string>? Hazard,
    Location At);

public static class StepName
{
    /// <summary>Letters and digits in lower case, everything else one hyphen. Negation and side words stay in: they are what a name says.</summary>
    public static string Slug(string name)
    {
        var slug = name.Normalize(NormalizationForm.FormC).ToLowerInvariant().ToCharArray();
        var length = 0;
        foreach (var c in slug)
        {
            if (char.IsLetterOrDigit(c))
                slug[length++] = c;
            else if (length > 0 && slug[length - 1] != '-')
                slug[length++] = '-';
        }
        return new string(slug, 0, length).TrimEnd('-');
    }
}
