using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;

namespace Witnessmark.Checking.Rules.Torque;

/// <summary>A number that people's safety hangs on does not say where it comes from.</summary>
public sealed class NumberWithoutBasis : ISheetRule
{
    public static RuleInfo Info { get; } = new("number-without-basis", "Torque", Severity.Fault);

    public static void Check(Machine machine, Library library, FindingList findings)
    {
        foreach (var group in machine.Fasteners)
            // no torque, or it says where it comes from
            if (group is { Torque: { } torque, Basis: null })
                Report(group.Id, $"torque of {torque.Value}", torque.At, findings);
        foreach (var part in machine.Parts)
            // no wear limit, or it says where it comes from
            if (part is { WornAt: { } worn, Basis: null })
                Report(part.Id, $"wear limit of {worn.Value}", worn.At, findings);
        foreach (var stack in machine.Stacks)
        {
            // no clearance, or it says where it comes from
            if (stack is { Clearance: { } clearance, Basis: null })
                Report(stack.Id, $"clearance of {clearance.Value}", clearance.At, findings);
            // told once a stack
            else if (stack is { SealOverrun: { } overrun, Basis: null })
                Report(stack.Id, $"seal overrun of {overrun.Value}", overrun.At, findings);
        }
        Shims(machine, findings);
    }

    private static void Shims(Machine machine, FindingList findings)
    {
        foreach (var shims in machine.Shims)
            // no play, or it says where it comes from
            if (shims is { Play: { } play, Basis: null })
                Report(shims.Id, $"play of {play.Value}", play.At, findings);
    }

    private static void Report(Located<string> id, string number, Location at, FindingList findings) => findings.Add(
        Info,
        at,
        $"The {number} for {id.Value} does not say where it comes from.",
        "The next one who changes it, and whoever looks into an accident, must find the paper that it stands on. A number that nobody can trace is a guess.",
        "Write its source beside it: `basis: maker data`, the standard, the shop's own test with its number, or `common practice`.",
        new FurtherPlace(id.At, id.Value));
}
