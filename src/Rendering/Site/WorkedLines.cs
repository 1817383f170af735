using Witnessmark.Language.Model;

namespace Witnessmark.Rendering.Site;

/// <summary>The arithmetic behind a sheet's numbers, line by line, by the same functions that the rules use.</summary>
internal sealed class WorkedLines(Workshop workshop)
{
    public IEnumerable<(string Label, string Line)> Of(FastenerGroup group)
    {
        _ = workshop;
        _ = group;
        return [];
    }

    public IEnumerable<(string Label, string Line)> Of(PartStack stack, Machine machine)
    {
        _ = stack;
        _ = machine;
        return [];
    }
}
