using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Data;
using Witnessmark.Reading.Facts;
using Witnessmark.Reading.Faults;

namespace Witnessmark.Reading.Sheets;

/// <summary>Rules of the machine, and its openings.</summary>
internal static class InterlockReader
{
    private const string WhenExample = "plates = reuse";
    private const string RequiresExample = "brake-stack = verified";
    private const string NeverExample = "engine = running, any device that blocks engine-start = placed";

    public static Items<Interlock> Interlocks(Fields sheet) =>
        new(sheet.Each("interlocks", "{never: …, because: …}", One));

    public static Items<Opening> Openings(Fields sheet) =>
        new(sheet.Each("openings", "{open-when: hub = removed, covered-by: bore-cover}", (id, opening) => new Opening(
            id,
            opening.Map,
            opening.Condition("open-when", "hub = removed"),
            opening.Name("covered-by", "bore-cover"))));

    private static Interlock One(Located<string> id, Fields rule)
    {
        var interlock = new Interlock(id, rule.Map)
        {
            Never = rule.Text("never", NeverExample),
            NeverWhen = rule.Condition("never", NeverExample)?.Value,
            When = rule.Text("when", WhenExample),
            OnlyWhen = rule.Condition("when", WhenExample)?.Value,
            Requires = rule.Text("requires", RequiresExample),
            Needed = rule.Condition("requires", RequiresExample)?.Value,
            Owes = rule.Text("owes", "wheel-nut re-torque after 2 h, 10 h"),
            Because = rule.Text("because", "a hung load can drop or swing"),
            Basis = rule.Text("basis"),
        };
        interlock = Waiting(interlock, rule);
        CheckForm(interlock, rule);
        return interlock;
    }

    private static Interlock Waiting(Interlock interlock, Fields rule)
    {
        var (before, after) = (rule.Text("before", "backing-ring becomes fitted"), rule.Text("after", "wheel-nuts becomes torqued"));
        var (every, has, again) = (rule.Text("every", "step where engine becomes running"), rule.Text("has", "call, answer"), rule.Text("prove-again", "accumulators"));
        return interlock with
        {
            Before = before,
            BeforeAny = HappeningReader.All(before, rule.Findings),
            Every = every,
            EveryStep = HappeningReader.Steps(every, rule.Findings),
            Has = has,
            HasAll = HappeningReader.Has(has, rule.Findings),
            After = after,
            AfterAny = HappeningReader.All(after, rule.Findings),
            ProveAgain = again,
            ProvedAgain = again?.AtCommas() ?? [],
        };
    }

    private static void CheckForm(Interlock rule, Fields fields)
    {
        var forms = new[] { rule.Never, rule.Before, rule.Every, rule.After }.Count(form => form is not null);
        var whole = forms == 1 && (rule.Never is not null
            || (rule.Before is not null && rule.Requires is not null)
            || (rule.Every is not null && rule.Has is not null)
            || (rule.After is not null && (rule.Owes ?? rule.ProveAgain) is not null));
        if (whole || fields.Map.Entries.IsEmpty)
            return;
        fields.Findings.Add(
            DataFaults.InterlockShape,
            rule.Id.At,
            forms > 1 ? $"Interlock {rule.Id} is more than one rule." : $"Interlock {rule.Id} does not say a whole rule.",
            "Half a rule can never be broken, so it protects nobody.",
            "Write one of four: `never`; `before` with `requires` (and `when`); `every` with `has`; `after` with `owes` or `prove-again`.");
    }
}
