using System.Collections.Immutable;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Compiler;

/// <summary>A workshop that was read and checked: what everything else is made from.</summary>
public sealed record Bench(Library Library, ImmutableArray<Finding> Findings)
{
    public bool HasFaults => Findings.Any(f => f.Severity == Severity.Fault);

    /// <summary>How much was read, in words: <c>2 procedures, 25 steps, 1 data sheet, 1 tool list</c>.</summary>
    public string Extent => string.Join(", ",
        Say.Count(Library.Procedures.Count, "procedure"),
        Say.Count(Library.Procedures.Sum(p => p.Steps.Count()), "step"),
        Say.Count(Library.Machines.Count, "data sheet"),
        Say.Count(Library.ToolLists.Count, "tool list"));
}

/// <summary>Why something was not done, in two sentences: what is the matter, what to do.</summary>
public sealed record Refusal(string What, string Todo);
