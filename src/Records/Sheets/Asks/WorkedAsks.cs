using Witnessmark.Language.Model;
using Witnessmark.Language.Quantities;

namespace Witnessmark.Records.Sheets;

internal static class WorkedAsks
{
    public static IEnumerable<Ask> Of(string written, StepNames names) =>
        names.Value(written) is { } value
            ? [new WorkedAsk(value.Id.Value, value, Accept(value, names))]
            : [];

    private static QuantityRange? Accept(WorkedValue value, StepNames names) =>
        value.Accept?.Value ?? (value.AcceptAsClearanceOf is { } stack ? names.Stack(stack.Value)?.Clearance?.Value : null);
}
