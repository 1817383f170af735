using System.Runtime.CompilerServices;

namespace Witnessmark.Language.Model;

/// <summary>
/// What follows from an immutable thing, worked out by the first who asks and kept as long as the thing itself. A copy made
/// with <c>with</c> is another thing and gets its own.
/// </summary>
public sealed class Once<TOf, T>(Func<TOf, T> workOut)
    where TOf : class
{
    private readonly ConditionalWeakTable<TOf, StrongBox<T>> _known = [];

    public T Of(TOf thing) => _known.TryGetValue(thing, out var known) ? known.Value! : _known.GetValue(thing, t => new StrongBox<T>(workOut(t))).Value!;
}
