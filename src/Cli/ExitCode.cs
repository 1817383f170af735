namespace Witnessmark.Cli;

internal static class ExitCode
{
    public const int Clean = 0;
    public const int Findings = 1;
    public const int WrongUse = 2;
    public const int InternalFault = 3;
}

/// <summary>A command that cannot be carried out as given: two sentences, what is the matter and what to do.</summary>
internal sealed class RefusedException(string what, string todo) : Exception($"{what} {todo}")
{
    public string What { get; } = what;

    public string Todo { get; } = todo;
}
