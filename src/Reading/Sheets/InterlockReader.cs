using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Data;
using Witnessmark.Reading.Facts;
using Witnessmark.Reading.Faults;
using Witnessmark.Reading.Shapes;

namespace Witnessmark.Reading.Sheets;

/// <summary>Rules of the machine, and its openings.</summary>
internal static class InterlockReader
{
    private static readonly OneWhole Rule = new(["never"], ["before", "requires"], ["every", "has"], ["after", "owes"], ["after", "prove-again"]);

    private static readonly Shape InterlockShape = new(
        "interlock",
        "an interlock",
        Row.Written("never", ConditionFields.Form, "engine = running, any device that blocks engine-start = placed", "what is never true at once"),
        Row.Written("before", HappeningReader.Form, "backing-ring becomes fitted", "a change that must wait: before it, `requires` holds"),
        Row.Written("when", ConditionFields.Form, "plates = reuse", "the rule holds only when this is so"),
        Row.Written("requires", ConditionFields.Form, "brake-stack = verified", "what must be true before the change"),
        Row.Written("every", HappeningReader.StepsForm, "step where engine becomes running", "which steps are meant"),
        Row.Written("has", HappeningReader.HadForm, "call, answer", "what each of these steps has"),
        Row.Written("after", HappeningReader.Form, "wheel-nuts becomes torqued", "a change after which something is owed or must be proved again"),
        Row.Text("owes", "wheel-nut re-torque after 2 h, 10 h", "what is then owed"),
        Row.Text("prove-again", "accumulators", "the state whose proof is then lost"),
        Row.Text("because", "a hung load can drop or swing", "the reason"),
        Row.Basis)
    {
        Needs = [Rule],
    };

    private static readonly Shape OpeningShape = new(
        "opening",
        "an opening",
        Row.Written("open-when", ConditionFields.Form, "hub = removed", "when dirt can get in"),
        Row.Name("covered-by", "bore-cover", "the device that closes it"),
        Row.Basis);

    public static readonly Row Section = Row.Each("interlocks", InterlockShape, "{never: \"hub = removed, engine = running\", because: a part can be thrown}", "rules of the machine, each in one of four forms");

    public static readonly Row OpeningSection = Row.Each("openings", OpeningShape, "{open-when: hub = removed, covered-by: bore-cover}", "where dirt can get in");

    public static Items<Interlock> Interlocks(Fields sheet) => new(sheet.Each(Section.Key, One));

    public static Items<Opening> Openings(Fields sheet) => new(sheet.Each(OpeningSection.Key, (id, opening) =>
        new Opening(id, opening.Map, opening.Condition("open-when"), opening.Text("covered-by"))));

    private static Interlock One(Located<string> id, Fields rule)
    {
        CheckForm(id, rule);
        return Waiting(new Interlock(id, rule.Map)
        {
            Never = rule.Text("never"),
            NeverWhen = rule.Condition("never")?.Value,
            When = rule.Text("when"),
            OnlyWhen = rule.Condition("when")?.Value,
            Requires = rule.Text("requires"),
            Needed = rule.Condition("requires")?.Value,
            Owes = rule.Text("owes"),
            Because = rule.Text("because"),
            Basis = rule.Text("basis"),
        }, rule);
    }

    private static Interlock Waiting(Interlock interlock, Fields rule)
    {
        var (before, after) = (rule.Text("before"), rule.Text("after"));
        var (every, has, again) = (rule.Text("every"), rule.Text("has"), rule.Text("prove-again"));
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

    private static void CheckForm(Located<string> id, Fields fields)
    {
        if (Rule.Met(fields.Has))
            return;
        fields.Findings.Add(
            DataFaults.InterlockShape,
            id.At,
            Rule.Meant(fields.Has) > 1 ? $"Interlock {id} is more than one rule." : $"Interlock {id} does not say a whole rule.",
            "Half a rule can never be broken, so it protects nobody.",
            "Write one of four: `never`; `before` with `requires` (and `when`); `every` with `has`; `after` with `owes` or `prove-again`.");
    }
}
