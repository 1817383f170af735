namespace Witnessmark.Language.Findings;

/// <summary>
/// How much a finding matters. WARNING and NOTICE are words of safety messages, so findings have words of their own.
/// </summary>
public enum Severity
{
    /// <summary>Worth knowing; nothing is held up.</summary>
    Remark,

    /// <summary>May be right, but somebody must look.</summary>
    Query,

    /// <summary>Wrong or unproved: the procedure cannot be printed for work.</summary>
    Fault,
}

public static class SeverityWord
{
    /// <summary><c>fault</c>, <c>query</c> or <c>remark</c>: for people and machines alike.</summary>
    public static string Word(this Severity severity) => severity switch
    {
        Severity.Fault => "fault",
        Severity.Query => "query",
        _ => "remark",
    };
}
