using Witnessmark.Harness;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;

namespace Witnessmark.Comparing.Tests;

/// <summary>Whatever single thing somebody changes, the comparison is not silent, and does not make less of it than it is.</summary>
public sealed class MutantTests(ITestOutputHelper output)
{
    private static readonly IReadOnlyList<RawFile> Files = Repo.Files(Repo.OneBrake);
    private static readonly Library Demo = Case.Read(Files);

    [Fact]
    public void Every_number_of_the_data_sheet_that_the_demo_reaches() => Held(Mutants.Numbers(Demo, "WB-40"), 60);

    [Theory]
    [InlineData("WB-40", 50)]
    [InlineData("WB-60", 15)]
    public void Every_fact_of_every_step(string id, int least) => Held(Mutants.Facts(Demo.Procedure(id)!), least);

    [Fact]
    public void Every_line_and_long_word_of_every_message() => Held(Mutants.MessageLines(Demo.Procedure("WB-40")!), 20);

    [Theory]
    [InlineData("WB-40", 50)]
    [InlineData("WB-60", 40)]
    public void Every_word_of_every_step(string id, int least) => Held(Mutants.StepWords(Demo.Procedure(id)!), least);

    [Fact]
    public void What_is_only_layout_is_layout_or_nothing()
    {
        var mutants = Mutants.Layout(Files).ToList();
        Assert.True(mutants.Count > 100, $"only {mutants.Count} places");
        // one in seven, spread over all files: each is read anew
        var wrong = mutants.Where((_, i) => i % 7 == 0).Where(m => Compared(m).Class > ChangeClass.Layout).Select(m => m.ToString()).ToList();
        Assert.Empty(wrong);
    }

    private void Held(IEnumerable<Mutant> mutants, int least)
    {
        var all = mutants.ToList();
        Assert.True(all.Count >= least, $"only {all.Count} mutants: the test has lost its hold");
        var weak = all.SelectMany(Wrong).ToList();
        output.WriteLine($"{all.Count} mutants");
        Assert.Empty(weak);
    }

    private static IEnumerable<string> Wrong(Mutant mutant)
    {
        var made = Case.Read(mutant.Over(Files));
        var (there, back) = (Comparer.Between(Demo, made).Class, Comparer.Between(made, Demo).Class);
        if (there < mutant.Least)
            yield return $"{mutant}: {there}, not {mutant.Least}";
        if (there != back)
            yield return $"{mutant}: {there}, and {back} the other way round";
    }

    private static WorkshopComparison Compared(Mutant mutant) => Comparer.Between(Demo, Case.Read(mutant.Over(Files)));
}
