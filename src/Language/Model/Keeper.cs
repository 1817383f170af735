namespace Witnessmark.Language.Model;

/// <summary>A thing that keeps what was once worked out about it. A copy made with <c>with</c> is another thing and keeps nothing yet.</summary>
public abstract record Keeper
{
    private KeptValue? _kept;

    protected Keeper()
    {
    }

    protected Keeper(Keeper original) => _ = original;

    /// <summary>What is kept is no part of what a thing is.</summary>
    public virtual bool Equals(Keeper? other) => other is not null && EqualityContract == other.EqualityContract;

    public override int GetHashCode() => EqualityContract.GetHashCode();

    /// <summary>What was kept under the name, or null.</summary>
    internal KeptValue<T>? Kept<T>(object name)
    {
        for (var kept = Volatile.Read(ref _kept); kept is not null; kept = kept.Next)
            if (kept.Name == name)
                return (KeptValue<T>)kept;
        return null;
    }

    /// <summary>Keeps a value, unless another thread was faster; then its value counts.</summary>
    internal T Keep<T>(object name, T value)
    {
        while (true)
        {
            var first = Volatile.Read(ref _kept);
            if (Kept<T>(name) is { } faster)
                return faster.Value;
            if (Interlocked.CompareExchange(ref _kept, new KeptValue<T>(name, value, first), first) == first)
                return value;
        }
    }
}

internal abstract class KeptValue(object name, KeptValue? next)
{
    public object Name { get; } = name;

    public KeptValue? Next { get; } = next;
}

internal sealed class KeptValue<T>(object name, T value, KeptValue? next) : KeptValue(name, next)
{
    public T Value { get; } = value;
}
