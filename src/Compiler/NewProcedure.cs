using System.Collections.Immutable;
using Witnessmark.Language.Text;

namespace Witnessmark.Compiler;

/// <param name="Machine">A data sheet's name, or null for the only one.</param>
/// <param name="Author">Initials, or null for the first person of the workshop.</param>
public sealed record NewProcedure(string Id, string Title, string? Machine, string? Author);

public sealed record DraftedFiles(ImmutableArray<OutputFile> Files, Refusal? Refusal)
{
    public static DraftedFiles Refused(string what, string todo) => new([], new Refusal(what, todo));
}
