using System.Collections.Immutable;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Records.Hashing;
using Witnessmark.Records.Issuing;
using Witnessmark.Records.Sheets;

namespace Witnessmark.Records.Receiving;

/// <summary>A hash that was released at some time, from the workshop's register.</summary>
public sealed record ReleasedHash(string Procedure, string Version, string Hex)
{
    /// <summary>Why its text is not at hand, in a sentence; empty where nobody looked for it.</summary>
    public string NotAtHand { get; init; } = "";
}

/// <summary>A sign-off laid beside what was printed: what every reason looks at.</summary>
/// <param name="Plan">Null when the procedure or its part is not in this workshop.</param>
/// <param name="Hash">Of the procedure as it stands here.</param>
/// <param name="Released">Hashes of other versions, for saying which one was worked from.</param>
public sealed record Held(SignOff SignOff, Library Library, SheetPlan? Plan, ProcedureHash? Hash, ImmutableArray<ReleasedHash> Released)
{
    public Procedure? Procedure => Plan?.Procedure;

    /// <summary>In which words the copy was; null in the original's own. Records from before they were written down have none either.</summary>
    public CopyWords? Words => SignOff.Words is { } typed && !Typed.IsEmpty(SignOff.Words) ? CopyWords.Read(typed.Value) : null;

    /// <summary>The copy as the register has it: with that mark, of that time where two had one mark. Null when it has none.</summary>
    public IssuedCopy? Copy => SignOff.Copy is { } mark
        ? Library.Register.Copies.LastOrDefault(c => Same(c.Mark, mark) && SignOff.Issued is { } issued && c.IssuedAt.Value == issued.Value) ?? Library.Register.Copy(mark.Value.Trim())
        : null;

    /// <summary>The version that was printed, where the register has it and it is not the one in force.</summary>
    public OutOfForce? Older => Hash is { } hash && Procedure is { } procedure ? OutOfForce.Of(Library.Register, procedure.Id.Value, hash, SignOff) : null;

    /// <summary>What must be there, in printed order.</summary>
    public ImmutableArray<SheetEntry> Asked { get; } = Plan is null ? [] : SheetEntries.Of(Plan);

    /// <summary>What must be there after the choices that were made: a step that they rule out is not asked.</summary>
    public IEnumerable<SheetEntry> Required => Asked.Where(a => Due.Is(this, a) is not false);

    /// <summary>What is there and can be told to be a step of the sheet; of two for one step the first.</summary>
    public ImmutableArray<HeldEntry> Entries { get; private init; } = [];

    public static Held Of(SignOff signOff, Library library, ImmutableArray<ReleasedHash> released)
    {
        var procedure = signOff.Procedure is { } id ? library.Procedure(id.Value) : null;
        var part = signOff.Part?.Value;
        if (procedure is null || (part is not null && procedure.Part(part) is null))
            return new Held(signOff, library, null, null, released);
        var plan = SheetPlanner.Plan(library.ScopeOf(procedure), part);
        var held = new Held(signOff, library, plan, ProcedureHash.Of(library, procedure), released);
        return held with { Entries = [.. Matched(held)] };
    }

    /// <summary>Every value that was written for a kind of ask; empty ones are not written.</summary>
    public IEnumerable<Answer<T>> Answers<T>()
        where T : Ask =>
        from entry in Entries
        from ask in entry.Asked.Step.Asks.OfType<T>()
        let value = entry.Entry.Find(ask.Key)
        where !Typed.IsEmpty(value)
        from piece in TurnByTurn(ask, value!)
        select new Answer<T>(entry, ask, piece);

    /// <summary>Turn by turn where it was asked so; the rows of readings are told apart elsewhere.</summary>
    private static IEnumerable<DataNode> TurnByTurn(Ask ask, DataNode value) => ask is not ReadingAsk && ask.Turns is { } turns && value is DataMap map
        ? map.Entries.Where(e => turns.Names.Contains(e.Key.Value) && !Typed.IsEmpty(e.Value)).Select(e => e.Value)
        : [value];

    private static bool Same(Located<string> a, Located<string> b) => string.Equals(a.Value, b.Value.Trim(), StringComparison.OrdinalIgnoreCase);

    private static IEnumerable<HeldEntry> Matched(Held held)
    {
        var byCode = held.Asked.ToDictionary(a => a.Step.Code.ToString(), StringComparer.Ordinal);
        return held.SignOff.Entries
            .Where(e => byCode.ContainsKey(e.Step.Value))
            .DistinctBy(e => e.Step.Value, StringComparer.Ordinal)
            .Select(e => new HeldEntry(byCode[e.Step.Value], e));
    }
}

public sealed record HeldEntry(SheetEntry Asked, SignOffEntry Entry)
{
    public Located<string>? By => Typed.Text(Entry.Find(EntryKeys.By));

    public Located<string>? CheckedBy => Typed.Text(Entry.Find(EntryKeys.CheckedBy));

    public Located<string>? At => Typed.Text(Entry.Find(EntryKeys.At));

    /// <summary>A guarded step that did not apply, with the reason.</summary>
    public bool NotDone => Asked.Step.MayBeLeftOut && !Typed.IsEmpty(Entry.Find(EntryKeys.NotDone));

    /// <summary><c>step 2, Measure each friction disc</c></summary>
    public string Says => Asked.Says;
}

public sealed record Answer<T>(HeldEntry Entry, T Ask, DataNode Value)
    where T : Ask;
