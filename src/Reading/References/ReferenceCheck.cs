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
        // a slip of the pen in a data sheet is one finding, not one for every name that it declares
        if (library.LacksAFile)
            return;
        var shelf = new NameShelf(library, findings.Each(library.Procedures, (procedure, _) => NameShelf.Decisions(procedure)));
        findings.Each(library.Machines, (machine, own) => SheetCheck.Check(machine, shelf, own));
        findings.Each(library.Procedures, (procedure, own) => ProcedureCheck.Check(library.ScopeOf(procedure), shelf, own));
        WorkshopCheck.Check(library, findings);
        PerformCircle.Check(library, findings);
    }
}
