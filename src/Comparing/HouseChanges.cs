using Witnessmark.Language.Model;

namespace Witnessmark.Comparing;

/// <summary>The workshop file in two states: a limit of the house that lets more through concerns every procedure.</summary>
internal static class HouseChanges
{
    public static IEnumerable<Change> Between(Workshop old, Workshop made) => DataChanges.Between("workshop", old.Node, made.Node).Select(Weighed);

    /// <summary>Who is there is method; who may check, and who still learns, is what a second look rests on.</summary>
    private static Change Weighed(Change change) => change.What.Split(' ') switch
    {
        ["people", _] => change with { Class = ChangeClass.Method },
        ["people", _, "mark-signs"] => change with { Class = ChangeClass.Method },
        _ => change,
    };
}
