namespace Witnessmark.Language.Model;

/// <summary>
/// What follows from a thing that never changes, worked out by the first who asks and kept by the thing itself, as long as it
/// lives. Two who ask at the same moment may both work it out; both are then given the same.
/// </summary>
public sealed class Once<TOf, T>(Func<TOf, T> workOut)
    where TOf : Keeper
{
    public T Of(TOf thing) => thing.Kept<T>(this) is { } known ? known.Value : thing.Keep(this, workOut(thing));
}
