using System.Collections.Immutable;
using Witnessmark.Language.Text;

namespace Witnessmark.Compiler;

/// <summary>Which copy is wanted, for which machine, by whom.</summary>
/// <param name="Part">A part of a procedure that is done in parts, or null.</param>
/// <param name="IssuedAt">The command line's clock, with its zone.</param>
/// <param name="Paper">A4 or Letter, or null for the workshop's.</param>
/// <param name="Language">en or es, or null for the procedure's own.</param>
public sealed record IssueOrder(
    string Procedure, string? Part, string Unit, string Serial, string Place, string IssuedBy, DateTimeOffset IssuedAt, string? Paper, string? Language = null)
{
    /// <summary>Who is given it, when that is said.</summary>
    public string? To { get; init; }
}

/// <summary>The sheet and its blank sign-off, or why there is none.</summary>
public sealed record MadeCopy(string Mark, string Version, string ShortHash, ImmutableArray<OutputFile> Files, Refusal? Refusal)
{
    /// <summary>Of a translated copy: in which language and in which words, <c>Spanish, words C108 BE3D 3E54</c>. Empty for the procedure's own.</summary>
    public string Wording { get; init; } = "";

    /// <summary>The register with this copy in it.</summary>
    public Func<string, string> Line { get; init; } = text => text;

    public static MadeCopy Refused(string what, string todo) => new("", "", "", [], new Refusal(what, todo));
}
