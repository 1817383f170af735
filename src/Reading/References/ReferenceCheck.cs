using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;

namespace Witnessmark.Reading.References;

/// <summary>
/// After everything is read and bound: every name in a sheet, a condition, a fact or a message stands for something that is
/// declared, and every value is one that the thing can have.
/// </summary>
public static class ReferenceCheck
{
    public static void Check(Library library, FindingList findings)
    {
        var shelf = new NameShelf(library);
        foreach (var machine in library.Machines)
            SheetCheck.Check(machine, shelf, findings);
        foreach (var procedure in library.Procedures)
            ProcedureCheck.Check(library.ScopeOf(procedure), shelf, findings);
        PerformCircle.Check(library, findings);
    }
}
