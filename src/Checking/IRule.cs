using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;

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

/// <summary>A rule in the list. No reflection: the compiler makes each one from its type.</summary>
public sealed class Rule
{
    private readonly Action<Scope, FindingList>? _procedure;
    private readonly Action<Machine, Library, FindingList>? _sheet;

    private readonly Action<TranslatedFile, FindingList>? _translation;

    private Rule(RuleInfo info, Action<Scope, FindingList>? procedure, Action<Machine, Library, FindingList>? sheet, Action<TranslatedFile, FindingList>? translation = null)
    {
        _translation = translation;
        Info = info;
        _procedure = procedure;
        _sheet = sheet;
    }

    public RuleInfo Info { get; }

    public static Rule Of<T>()
        where T : IProcedureRule => new(T.Info, T.Check, null);

    public static Rule OfSheet<T>()
        where T : ISheetRule => new(T.Info, null, T.Check);

    public static Rule OfMeasuring<T>()
        where T : IMeasuringRule => new(
            T.Info,
            (scope, findings) => T.Check(new Measuring(scope.Machine, scope.Procedure), findings),
            (machine, _, findings) => T.Check(new Measuring(machine, null), findings));

    public static Rule OfTranslation<T>()
        where T : ITranslationRule => new(T.Info, null, null, T.Check);

    public void Check(Scope scope, FindingList findings) => _procedure?.Invoke(scope, findings);

    public void Check(TranslatedFile file, FindingList findings) => _translation?.Invoke(file, findings);

    public void Check(Machine machine, Library library, FindingList findings) => _sheet?.Invoke(machine, library, findings);
}
