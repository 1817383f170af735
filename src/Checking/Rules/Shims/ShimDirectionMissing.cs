using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;

namespace Witnessmark.Checking.Rules.Shims;

/// <summary>Nothing says whether a thicker pack makes the play larger or smaller.</summary>
public sealed class ShimDirectionMissing : ISheetRule
{
    public static RuleInfo Info { get; } = new("shim-direction-missing", "Shims", Severity.Fault);

    public static void Check(Machine machine, Library library, FindingList findings)
    {
        foreach (var shims in machine.Shims)
            // it is said, or said in a word that is a fault of its own
            if (shims.Node is DataMap written && written.Find("thicker-is") is null)
                findings.Add(
                    Info,
                    shims.Id.At,
                    $"The {shims.Id.Spoken()} do not say whether a thicker pack is looser or tighter.",
                    "Both are built. Guessed wrong, a bearing that is too loose gets looser by as much again, and one that is too tight seizes.",
                    "Look at what the shims hold apart and write `thicker-is: looser` or `thicker-is: tighter`.");
    }
}
