using Witnessmark.Language.Model;
using Witnessmark.Language.Text;

namespace Witnessmark.Checking.Work;

/// <summary>A step that drains a space, and the container that takes it.</summary>
internal sealed record Draining(StepInPlace Place, Fact Drain, FluidSpace Space, Container Container)
{
    public static IEnumerable<Draining> In(Scope scope)
    {
        foreach (var (place, fact) in scope.Procedure.StepFacts())
            if (fact is { Word: FactWord.Drain, Value: NameList spaces })
                foreach (var name in spaces.Names)
                    if (scope.Space(name.Value) is { DrainsInto: { } into } space && scope.Tool(into.Value) is Container container)
                        yield return new Draining(place, fact, space, container);
    }
}

internal static class FluidNames
{
    /// <summary>Whether two names mean one fluid; capitals and blanks make no other.</summary>
    public static bool IsFluid(this Located<string> one, string other) => string.Equals(one.Value.Trim(), other.Trim(), StringComparison.OrdinalIgnoreCase);
}
