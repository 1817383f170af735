using System.Collections.Immutable;
using Witnessmark.Checking.Work;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Fluids;

/// <summary>A space is filled, or a test made, with the pump or can of another fluid.</summary>
public sealed class PumpForOtherFluid : IProcedureRule
{
    public static RuleInfo Info { get; } = new("pump-for-other-fluid", "Fluids", Severity.Fault);

    public static void Check(Scope scope, FindingList findings)
    {
        foreach (var (place, fact) in scope.Procedure.StepFacts())
            foreach (var (name, fluid) in Wanted(scope, fact))
                foreach (var tool in Pumps(scope, place))
                {
                    // for this fluid, or for something that is no fluid of the machine
                    if (fluid.IsFluid(tool.For!.Value.Value) || !IsFluidOfMachine(scope, tool.For.Value.Value))
                        continue;
                    // the right one is there as well
                    if (Pumps(scope, place).Any(t => fluid.IsFluid(t.For!.Value.Value)))
                        continue;
                    findings.Add(
                        Info,
                        fact.At,
                        $"{Say.Step(place)} {(fact.Word == FactWord.Fill ? "fills" : "tests")} {name} with {tool.Id.Value}, which is for {tool.For.Value.Value}; {fluid.Value} belongs there.",
                        "What is left in the pump goes in first. Gear oil swells the seals of a brake, hydraulic oil does not carry gears.",
                        $"Name a pump that is for {fluid.Value}.",
                        new FurtherPlace(tool.For.Value.At, "what the pump is for"),
                        new FurtherPlace(fluid.At, "what belongs there"));
                }
    }

    private static IEnumerable<(string Name, Located<string> Fluid)> Wanted(Scope scope, Fact fact)
    {
        if (fact is not { Word: FactWord.Fill or FactWord.Test, Value: NameList names })
            yield break;
        foreach (var name in names.Names)
            if ((fact.Word == FactWord.Fill ? scope.Space(name.Value)?.Fluid : scope.Test(name.Value)?.Medium) is { } fluid)
                yield return (name.Value, fluid);
    }

    private static ImmutableArray<OtherTool> Pumps(Scope scope, StepInPlace place) =>
    [
        .. new[] { FactWord.Tools, FactWord.Tool }.Select(w => place.Effective(w)?.Value).OfType<NameList>()
            .SelectMany(l => l.Names).Select(n => scope.Tool(n.Value)).OfType<OtherTool>().Where(t => t.For is not null),
    ];

    private static bool IsFluidOfMachine(Scope scope, string fluid) => scope.Machine?.Spaces.Any(s => s.Fluid?.IsFluid(fluid) == true) == true;
}
