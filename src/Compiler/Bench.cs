using System.Collections.Immutable;
using System.Globalization;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;

namespace Witnessmark.Compiler;

/// <summary>A workshop that was read and checked: what everything else is made from.</summary>
public sealed record Bench(Library Library, ImmutableArray<Finding> Findings)
{
    public bool HasFaults => Findings.Any(f => f.Severity == Severity.Fault);

    /// <summary>How much was read, in words: <c>2 procedures, 25 steps, 1 data sheet, 1 tool list</c>.</summary>
    public string Extent => string.Join(", ",
        Many(Library.Procedures.Count, "procedure", "procedures"),
        Many(Library.Procedures.Sum(p => p.Steps.Count()), "step", "steps"),
        Many(Library.Machines.Count, "data sheet", "data sheets"),
        Many(Library.ToolLists.Count, "tool list", "tool lists"));

    private static string Many(int count, string one, string many) =>
        string.Create(CultureInfo.InvariantCulture, $"{count} {(count == 1 ? one : many)}");
}

/// <summary>Why something was not done, in two sentences: what is the matter, what to do.</summary>
public sealed record Refusal(string What, string Todo);
