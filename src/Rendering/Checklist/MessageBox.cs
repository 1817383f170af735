using Scriban.Runtime;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;
using Witnessmark.Records.Sheets;
using Witnessmark.Rendering.Html;

namespace Witnessmark.Rendering.Checklist;

/// <summary>A safety message over the full width, directly above what it is about.</summary>
internal static class MessageBox
{
    public static ScriptObject Of(SafetyMessage message, Fills fills, SheetContext context)
    {
        var signal = message.Signal ?? SignalWord.Warning;
        var scheme = context.Scope.Library.Workshop.SignalScheme;
        return new ScriptObject
        {
            ["kind"] = SignalLook.Kind(signal, scheme),
            ["triangle"] = scheme.IsForPeople(signal),
            ["word"] = context.Words.Signal(signal),
            ["nature"] = Say.Capital(fills.In(message.Nature.Value)),
            ["rest"] = SheetContext.Text(message.Rest, fills),
            ["avoid"] = new ScriptArray(message.Avoid.Select(a => SheetContext.Text(a, fills))),
        };
    }
}
