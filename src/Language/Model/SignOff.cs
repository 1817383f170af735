using System.Collections.Immutable;
using Witnessmark.Language.Quantities;
using Witnessmark.Language.Text;

namespace Witnessmark.Language.Model;

/// <summary>A sign-off that came back from the field, as it was typed.</summary>
public sealed record SignOff(SourceText Source, DataNode Node)
{
    /// <summary>What the record is called: date, unit, place, procedure.</summary>
    public Located<string>? Title { get; init; }
    public Located<string>? Procedure { get; init; }
    public Located<string>? Part { get; init; }
    public Located<string>? Version { get; init; }

    /// <summary>As printed: hexadecimal in groups of four; at least twelve digits.</summary>
    public Located<string>? Hash { get; init; }

    /// <summary>Language and hash of the words of a translated copy: <c>es 6A89 FCB9 9BC8</c>; null in the original's own words.</summary>
    public Located<string>? Words { get; init; }

    /// <summary>Set mark of the copy.</summary>
    public Located<string>? Copy { get; init; }

    /// <summary>When the copy was issued and by whom: the mark is worked out from both.</summary>
    public Located<string>? Issued { get; init; }
    public Located<string>? IssuedBy { get; init; }
    public Located<string>? Unit { get; init; }
    public Located<string>? Serial { get; init; }
    public Located<Quantity>? Hours { get; init; }
    public Located<string>? Place { get; init; }
    public ImmutableArray<CrewMember> Crew { get; init; } = [];
    public Located<string>? TypedBy { get; init; }
    public Located<string>? SheetImage { get; init; }
    public ImmutableArray<SignOffEntry> Entries { get; init; } = [];

    /// <summary>An empty list is a signed statement: <c>none, MO</c>.</summary>
    public Located<string>? Stops { get; init; }
    public Located<string>? Deviations { get; init; }
    public ImmutableArray<Located<string>> Owed { get; init; } = [];
    public ReleaseLine? Release { get; init; }
}

public sealed record CrewMember(Located<string> Initials, Located<string>? Role, Located<string>? ObservedBy);

/// <param name="Step">Printed code: <c>24/8</c>, <c>30.6/2</c>.</param>
/// <param name="Values">Every other key of the entry in order: count, reading or word by name.</param>
public sealed record SignOffEntry(Located<string> Step, ImmutableArray<DataEntry> Values, Location At)
{
    public DataNode? Find(string key) => Values.FirstOrDefault(v => v.Key.Value == key)?.Value;
}

public sealed record ReleaseLine(Located<string>? By, Located<string>? When, Location At);
