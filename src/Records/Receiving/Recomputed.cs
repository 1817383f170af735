using System.Collections.Immutable;
using Witnessmark.Engineering;
using Witnessmark.Engineering.Formulas;
using Witnessmark.Engineering.Measuring;
using Witnessmark.Language.Quantities;
using Witnessmark.Records.Receiving.Reasons;
using Witnessmark.Records.Sheets;

namespace Witnessmark.Records.Receiving;

/// <summary>A value worked out again from the readings of the sign-off.</summary>
/// <param name="Allowed">
/// How far a hand calculation can be off and still be right, in the value's unit: every mean may have been rounded to the
/// gauge's last digit before it was added, and the result to its own.
/// </param>
internal sealed record Recomputed(Worked<Quantity> Worked, decimal Allowed)
{
    private const string CavityOf = "cavity of ";

    /// <summary>Null while a reading is missing, cannot be read or cannot be.</summary>
    public static Recomputed? Of(Held held, WorkedAsk ask)
    {
        if (ask.Value.Formula is not { } text || Formula.Parse(text.Value).Value is not { } formula)
            return null;
        var round = ask.Value.Round?.Value;
        if (formula.Evaluate(name => Value(held, name), round).Value is not { } worked)
            return null;
        var means = formula.Names.Sum(n => held.Answers<ReadingAsk>().Where(a => a.Ask.Key == n).Sum(a => Rounding(a.Ask)));
        return new Recomputed(worked, means + ((round?.Number ?? 0) / 2));
    }

    /// <summary>Half a last digit for each mean of several points.</summary>
    private static decimal Rounding(ReadingAsk ask) =>
        ask.Points < 2 ? 0 : ask.Pieces.Length * (ask.Reading.Resolution?.Value.Number ?? 0) / 2;

    private static Measured? Value(Held held, string name)
    {
        if (held.Answers<ReadingAsk>().FirstOrDefault(a => a.Ask.Key == name) is { } answer)
            return IsWhole(answer) ? Measured.Of(answer.Ask.Reading, [.. answer.Sound().Select(r => r.In(r.Unit!).ToImmutableArray())]) : null;
        if (name.StartsWith(CavityOf, StringComparison.Ordinal) && held.Plan!.Scope.Stack(name[CavityOf.Length..])?.Cavity is { } cavity)
            return Measured.Of(cavity.Value.Target);
        return held.Answers<WorkedAsk>().FirstOrDefault(a => a.Ask.Key == name) is { } worked
            && Typed.Text(worked.Value) is { } text && QuantityReader.Quantity(text.Value) is { Ok: true } read
            ? Measured.Of(read.Value)
            : null;
    }

    private static bool IsWhole(Answer<ReadingAsk> answer)
    {
        var rows = answer.Sound().ToList();
        // with a reading that cannot be, the value cannot be either: reading-impossible says so
        return rows.Count == answer.Ask.Pieces.Length
            && rows.All(r => r.In(r.Unit!).All(v => ReadingImpossible.IsPlausible(answer.Ask, v)))
            && rows.All(r => answer.Ask.Reading.UpToPoints ? r.Numbers.Length <= answer.Ask.Points : r.Numbers.Length == answer.Ask.Points);
    }
}
