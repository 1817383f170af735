using System.Collections.Immutable;

namespace Witnessmark.Engineering.Tightening;

public enum SequenceProblem
{
    /// <summary>Fewer than 3 or more than 96 bolts: no order is checked.</summary>
    CountOutOfRange,

    /// <summary>A number that no bolt has.</summary>
    NoSuchBolt,

    /// <summary>A bolt that stood there before.</summary>
    Twice,

    /// <summary>A bolt that does not stand there at all.</summary>
    LeftOut,

    /// <summary>The second bolt of a pair is not across from the first (even counts).</summary>
    NotOpposite,

    /// <summary>Four bolts in a row leave a quarter of the circle empty (counts divisible by 4).</summary>
    QuarterMissed,

    /// <summary>Two neighbours one after the other (from 5 bolts).</summary>
    Neighbours,
}

/// <param name="Position">In the written order, from 1; 0 when it is about the whole order.</param>
/// <param name="Bolt">The bolt it is about; 0 when it is about several.</param>
/// <param name="Says">One half sentence: <c>bolt 3 is left out</c>.</param>
public sealed record SequenceFault(SequenceProblem Problem, int Position, int Bolt, string Says);

/// <summary>A written order held against the laws of a star. Pairs and quarters are looked at only when every bolt is there once.</summary>
internal static class SequenceCheck
{
    public static ImmutableArray<SequenceFault> Of(ImmutableArray<int> sequence, int bolts)
    {
        if (bolts is < StarSequence.FewestBolts or > StarSequence.MostBolts)
            return [new(SequenceProblem.CountOutOfRange, 0, 0, $"no order is known for {bolts} bolts")];
        ImmutableArray<SequenceFault> miscounted = [.. Miscounted(sequence, bolts)];
        return miscounted.IsEmpty ? [.. NotAcross(sequence, bolts), .. QuartersMissed(sequence, bolts), .. Neighbours(sequence, bolts)] : miscounted;
    }

    private static IEnumerable<SequenceFault> Miscounted(ImmutableArray<int> sequence, int bolts)
    {
        var seen = new HashSet<int>();
        for (var i = 0; i < sequence.Length; i++)
        {
            var bolt = sequence[i];
            if (bolt < 1 || bolt > bolts)
                yield return new(SequenceProblem.NoSuchBolt, i + 1, bolt, $"there is no bolt {bolt} among {bolts}");
            else if (!seen.Add(bolt))
                yield return new(SequenceProblem.Twice, i + 1, bolt, $"bolt {bolt} stands there twice");
        }
        for (var bolt = 1; bolt <= bolts; bolt++)
            if (!seen.Contains(bolt))
                yield return new(SequenceProblem.LeftOut, 0, bolt, $"bolt {bolt} is left out");
    }

    private static IEnumerable<SequenceFault> NotAcross(ImmutableArray<int> sequence, int bolts)
    {
        if (bolts % 2 == 1)
            yield break;
        for (var i = 0; i + 1 < bolts; i += 2)
        {
            var across = ((sequence[i] - 1 + (bolts / 2)) % bolts) + 1;
            if (sequence[i + 1] != across)
                yield return new(SequenceProblem.NotOpposite, i + 2, sequence[i + 1], $"bolt {across} is across from bolt {sequence[i]}, not bolt {sequence[i + 1]}");
        }
    }

    private static IEnumerable<SequenceFault> QuartersMissed(ImmutableArray<int> sequence, int bolts)
    {
        if (bolts % 4 != 0)
            yield break;
        for (var i = 0; i < bolts; i += 4)
        {
            var four = sequence.AsSpan(i, 4).ToArray();
            if (four.Select(b => (b - 1) * 4 / bolts).Distinct().Count() < 4)
                yield return new(SequenceProblem.QuarterMissed, i + 1, 0, $"bolts {string.Join(' ', four)} leave a quarter of the circle empty");
        }
    }

    private static IEnumerable<SequenceFault> Neighbours(ImmutableArray<int> sequence, int bolts)
    {
        if (bolts < 5)
            yield break;
        for (var i = 1; i < bolts; i++)
            if (Math.Abs(sequence[i] - sequence[i - 1]) is var apart && (apart == 1 || apart == bolts - 1))
                yield return new(SequenceProblem.Neighbours, i + 1, sequence[i], $"bolts {sequence[i - 1]} and {sequence[i]} are neighbours");
    }
}
