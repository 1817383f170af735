using Witnessmark.Engineering.Formulas;
using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;

namespace Witnessmark.Records.Sheets;

internal static class WorkedAsks
{
    public static IEnumerable<Ask> Of(string written, StepNames names) =>
        names.Value(written) is { } value
            ? [new WorkedAsk(value.Id.Value, value, InWords(value), Accept(value, names))]
            : [];

    /// <summary>As written where it cannot be read: a rule says so.</summary>
    private static string InWords(WorkedValue value)
    {
        var written = value.Formula?.Value ?? "";
        return Formula.Parse(written).Value?.InWords() ?? written;
    }

    private static QuantityRange? Accept(WorkedValue value, StepNames names) =>
        value.Accept?.Value ?? (value.AcceptAsClearanceOf is { } stack ? names.Stack(stack.Value)?.Clearance?.Value : null);
}
