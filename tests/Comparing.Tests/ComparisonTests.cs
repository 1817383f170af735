using Witnessmark.Harness;
using Witnessmark.Rendering.Comparisons;

namespace Witnessmark.Comparing.Tests;

/// <summary>What an auditor reads of a change, and whether he is told what it is.</summary>
public sealed class ComparisonTests
{
    public static TheoryData<string> Cases => [.. Case.Names];

    [Theory]
    [MemberData(nameof(Cases))]
    public void An_auditor_reads_what_was_approved(string name) => Approved.Check($"Comparing.Tests/Cases/{name}.approved.txt", ComparisonText.Of(Case.Of(name).Compared));

    [Theory]
    [MemberData(nameof(Cases))]
    public void The_first_change_that_he_reads_has_the_class_and_sense_that_somebody_decided_by_hand(string name)
    {
        var written = Case.Of(name);
        var changes = written.Compared.InReadingOrder;
        var first = changes.FirstOrDefault();
        Assert.Equal($"{written.Class} {written.Sense}", $"{written.Compared.Class} {first?.Sense}".ToLowerInvariant().Replace("layout ", "layout other", StringComparison.Ordinal));
        Assert.Subset(changes.SelectMany(c => c.Hazards).ToHashSet(StringComparer.Ordinal), written.Hazards.ToHashSet(StringComparer.Ordinal));
    }

    /// <summary><c>was:</c> is said in the newer of two states; the older one says nothing of what its steps will be called.</summary>
    public static TheoryData<string> TurnedRound => [.. Cases.Select(c => c.Data).Where(n => !Case.Of(n).JoinsByWas)];

    [Theory]
    [MemberData(nameof(TurnedRound))]
    public void Turned_round_it_has_the_same_class_and_what_was_looser_is_tighter(string name)
    {
        var written = Case.Of(name);
        var there = written.Compared;
        var back = Comparer.Between(written.New, written.Old);
        Assert.Equal(there.Class, back.Class);
        Assert.Equal(Senses(there, Sense.Looser), Senses(back, Sense.Tighter));
        Assert.Equal(Senses(there, Sense.Tighter), Senses(back, Sense.Looser));
    }

    private static int Senses(WorkshopComparison comparison, Sense sense) => comparison.InReadingOrder.Count(c => c.Sense == sense);
}
