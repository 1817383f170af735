using System.Collections.Immutable;
using Witnessmark.Comparing;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Proof;

namespace Witnessmark.Checking;

/// <summary>A rule over one procedure, with the names it can see.</summary>
public interface IProcedureRule
{
    static abstract RuleInfo Info { get; }

    static abstract void Check(Scope scope, FindingList findings);
}

/// <summary>A rule over one machine's data sheet.</summary>
public interface ISheetRule
{
    static abstract RuleInfo Info { get; }

    static abstract void Check(Machine machine, Library library, FindingList findings);
}

/// <summary>A rule over readings and worked-out values, wherever they are declared.</summary>
public interface IMeasuringRule
{
    static abstract RuleInfo Info { get; }

    static abstract void Check(Measuring declared, FindingList findings);
}

/// <summary>A rule over one translation, beside what it translates.</summary>
public interface ITranslationRule
{
    static abstract RuleInfo Info { get; }

    static abstract void Check(TranslatedFile file, FindingList findings);
}

/// <summary>A rule over the register of releases and copies, beside all that it speaks of.</summary>
public interface IRegisterRule
{
    static abstract RuleInfo Info { get; }

    static abstract void Check(Library library, FindingList findings);
}

/// <summary>A procedure beside what it was.</summary>
public sealed record ChangedProcedure(Scope Old, Scope Made, ProcedureComparison Compared)
{
    public Procedure Procedure => Made.Procedure;
}

/// <summary>A rule over what has changed since an earlier state.</summary>
public interface IChangeRule
{
    static abstract RuleInfo Info { get; }

    static abstract void Check(ChangedProcedure changed, FindingList findings);
}

/// <summary>A rule over what has changed that no one procedure owns.</summary>
public interface IHouseChangeRule
{
    static abstract RuleInfo Info { get; }

    static abstract void Check(ChangedHouse changed, FindingList findings);
}

/// <summary>Two states of a workshop, and what they differ in.</summary>
public sealed record ChangedHouse(Library Old, Library Made, WorkshopComparison Compared);

/// <summary>A rule over what following every way through a part has shown.</summary>
public interface IWayRule
{
    static abstract RuleInfo Info { get; }

    static abstract void Check(ProvedWork proved, FindingList findings);
}

/// <summary>A part of a procedure with its breaches, without those that a performed procedure has by itself.</summary>
public sealed record ProvedWork(Scope Scope, PartProof Part, ImmutableArray<Breach> Breaches);

/// <summary>A rule in the list. No reflection: the compiler makes each one from its type.</summary>
public sealed class Rule
{
    private readonly Action<Scope, FindingList>? _procedure;
    private readonly Action<Machine, Library, FindingList>? _sheet;

    private readonly Action<TranslatedFile, FindingList>? _translation;
    private readonly Action<Library, FindingList>? _register;
    private readonly Action<ChangedProcedure, FindingList>? _change;
    private readonly Action<ChangedHouse, FindingList>? _house;
    private readonly Action<ProvedWork, FindingList>? _way;

    private Rule(
        RuleInfo info, Action<Scope, FindingList>? procedure = null, Action<Machine, Library, FindingList>? sheet = null,
        Action<TranslatedFile, FindingList>? translation = null, Action<Library, FindingList>? register = null,
        Action<ChangedProcedure, FindingList>? change = null, Action<ChangedHouse, FindingList>? house = null, Action<ProvedWork, FindingList>? way = null) =>
        (Info, _procedure, _sheet, _translation, _register, _change, _house, _way) = (info, procedure, sheet, translation, register, change, house, way);

    public RuleInfo Info { get; }

    public static Rule Of<T>()
        where T : IProcedureRule => new(T.Info, procedure: T.Check);

    public static Rule OfSheet<T>()
        where T : ISheetRule => new(T.Info, sheet: T.Check);

    public static Rule OfMeasuring<T>()
        where T : IMeasuringRule => new(
            T.Info,
            (scope, findings) => T.Check(new Measuring(scope.Machine, scope.Procedure), findings),
            (machine, _, findings) => T.Check(new Measuring(machine, null), findings));

    public static Rule OfTranslation<T>()
        where T : ITranslationRule => new(T.Info, translation: T.Check);

    public static Rule OfRegister<T>()
        where T : IRegisterRule => new(T.Info, register: T.Check);

    public void Check(Scope scope, FindingList findings) => _procedure?.Invoke(scope, findings);

    public void Check(TranslatedFile file, FindingList findings) => _translation?.Invoke(file, findings);

    public void Check(Machine machine, Library library, FindingList findings) => _sheet?.Invoke(machine, library, findings);

    public static Rule OfChange<T>()
        where T : IChangeRule => new(T.Info, change: T.Check);

    public static Rule OfHouseChange<T>()
        where T : IHouseChangeRule => new(T.Info, house: T.Check);

    public static Rule OfWays<T>()
        where T : IWayRule => new(T.Info, way: T.Check);

    public void Check(ProvedWork proved, FindingList findings) => _way?.Invoke(proved, findings);

    public void Check(ChangedHouse changed, FindingList findings) => _house?.Invoke(changed, findings);

    public void Check(ChangedProcedure changed, FindingList findings) => _change?.Invoke(changed, findings);

    public void Check(Library library, FindingList findings) => _register?.Invoke(library, findings);
}
