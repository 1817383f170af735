using System.Collections.Immutable;
using Witnessmark.Language.Text;

namespace Witnessmark.Language.Model;

/// <summary>Signal words of both vocabularies, weakest first.</summary>
public enum SignalWord
{
    /// <summary>Military manuals only: what must be known and harms nobody.</summary>
    Note,
    Notice,
    Caution,
    Warning,
    Danger,
}

public enum HarmSeverity
{
    Property,
    Minor,
    Serious,
    Death,
}

public enum HarmLikelihood
{
    Could,
    Will,
}

public sealed record Hazard(Located<string> Id, DataNode Node) : IItem
{
    public Located<HarmSeverity>? Severity { get; init; }

    public Located<HarmLikelihood>? IfIgnored { get; init; }

    public Located<string>? Source { get; init; }

    public Located<string>? Energy { get; init; }

    public Located<string>? Zone { get; init; }

    public ImmutableArray<Located<string>> Controls { get; init; } = [];

    /// <summary>The work that meets it: <c>fit brake-stack</c>, <c>lift backing-ring</c>. A step that does this needs its message.</summary>
    public ImmutableArray<Located<MeetingWork>> MetBy { get; init; } = [];

    /// <summary>The word that severity and likelihood call for (ANSI Z535.6); null when either is missing.</summary>
    public SignalWord? RightWord => (Severity?.Value, IfIgnored?.Value) switch
    {
        (HarmSeverity.Death or HarmSeverity.Serious, HarmLikelihood.Will) => SignalWord.Danger,
        (HarmSeverity.Death or HarmSeverity.Serious, HarmLikelihood.Could) => SignalWord.Warning,
        (HarmSeverity.Minor, not null) => SignalWord.Caution,
        (HarmSeverity.Property, not null) => SignalWord.Notice,
        _ => null,
    };
}

/// <summary>A verb on a thing.</summary>
public sealed record MeetingWork(FactWord Verb, Located<string> Thing);
