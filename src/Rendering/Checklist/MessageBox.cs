using Scriban.Runtime;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;
using Witnessmark.Records.Sheets;

namespace Witnessmark.Rendering.Checklist;

/// <summary>A safety message over the full width, directly above what it is about.</summary>
internal static class MessageBox
{
    public static ScriptObject Of(SafetyMessage message, Fills fills, SheetContext context)
    {
        var signal = message.Signal ?? SignalWord.Warning;
        return new ScriptObject
        {
            ["kind"] = signal.ToString().ToLowerInvariant(),
            ["triangle"] = signal != SignalWord.Notice,
            ["word"] = context.Words.Signal(signal),
            ["nature"] = Say.Capital(fills.In(message.Nature.Value)),
            ["rest"] = SheetContext.Text(message.Rest, fills),
            ["avoid"] = new ScriptArray(message.Avoid.Select(a => SheetContext.Text(a, fills))),
        };
    }
}
