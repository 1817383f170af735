using Witnessmark.Checking.Work;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Steps;

/// <summary>Steps name tools, and the procedure names no tool list.</summary>
public sealed class ToolListMissing : IProcedureRule
{
    public static RuleInfo Info { get; } = new("tool-list-missing", "Steps", Severity.Query);

    public static void Check(Scope scope, FindingList findings)
    {
        // it names one; a common part is given its tools
        if (!scope.Procedure.UsesTools.IsEmpty || scope.Procedure.IsCommonPart)
            return;
        var tools = scope.Procedure.AllFacts().Where(f => f.Word is FactWord.Tool or FactWord.Tools).Select(f => f.Value).OfType<NameList>().SelectMany(l => l.Names).ToList();
        // bare hands
        if (tools.Count == 0)
            return;
        findings.Add(
            Info,
            tools[0].At,
            $"{scope.Procedure.Id.Value} uses {Say.And(tools.Select(t => t.Value).Distinct(StringComparer.Ordinal))}, and names no tool list.",
            "Range of a wrench, rating of a sling, steps of a gauge stand in the tool list. Without it none of them is held against the work.",
            "Add `uses-tools:` with the name of the list that is on the truck.");
    }
}
