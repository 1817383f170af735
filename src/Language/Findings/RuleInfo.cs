namespace Witnessmark.Language.Findings;

/// <summary>
/// What a rule is called and how much it matters. A name is permanent: never changed, never used again for something else.
/// </summary>
/// <param name="Name">Kebab-case, names the fault, not the remedy: <c>stack-two-alike</c>.</param>
/// <param name="Topic">The folder it lives in: Torque, Stack, Steps, Messages, Release …</param>
public sealed record RuleInfo(string Name, string Topic, Severity Severity);
