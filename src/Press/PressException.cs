namespace Witnessmark.Press;

/// <summary>The press cannot print: two sentences, what is the matter and what to do.</summary>
public sealed class PressException(string what, string todo) : Exception($"{what} {todo}")
{
    public string What { get; } = what;

    public string Todo { get; } = todo;
}
