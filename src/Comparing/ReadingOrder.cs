namespace Witnessmark.Comparing;

/// <summary>What touches safety first, and of that what lets more through before what lets less through.</summary>
internal static class ReadingOrder
{
    public static IEnumerable<Change> Of(IEnumerable<Change> changes) => changes.Where(c => c.Class > ChangeClass.Layout).OrderByDescending(c => c.Class).ThenBy(c => c.Sense switch
    {
        Sense.Looser => 0,
        Sense.Other => 1,
        _ => 2,
    });
}
