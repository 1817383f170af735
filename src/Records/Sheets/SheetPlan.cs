using System.Collections.Immutable;
using Witnessmark.Language.Model;

namespace Witnessmark.Records.Sheets;

/// <summary>
/// What a printed sheet asks for, step by step. Made once from the library; the paper prints it, the blank lists it, and
/// <c>receive</c> holds the sign-off against it, so the three can never ask for different things.
/// </summary>
public sealed record SheetPlan(Scope Scope, ProcedurePart Part, ImmutableArray<SheetSection> Sections)
{
    public Procedure Procedure => Scope.Procedure;

    /// <summary>Every step, performed ones behind the step that performs them.</summary>
    public IEnumerable<SheetStep> Steps => Sections.SelectMany(s => s.Steps).SelectMany(s => s.Performed.Prepend(s));
}

/// <param name="StillIn">Tags of devices in the machine when the section begins, by kind, in order of placing.</param>
public sealed record SheetSection(Section Section, ImmutableArray<StillIn> StillIn, ImmutableArray<SheetStep> Steps);

public sealed record StillIn(DeviceKind Kind, ImmutableArray<string> Tags);

/// <param name="Code">Printed code.</param>
/// <param name="Asks">What has to be written down.</param>
/// <param name="Performed">Steps of the common part that this step performs, with its parameters filled in.</param>
public sealed record SheetStep(
    StepCode Code,
    StepInPlace Place,
    Fills Fills,
    ImmutableArray<Ask> Asks,
    ImmutableArray<SheetStep> Performed)
{
    public Step Step => Place.Step;

    /// <summary>The step's <c>only-if</c>, unless the data sheet says already that it holds: whether it is to be done shows on the machine.</summary>
    public Condition? Guard { get; init; }

    /// <summary>The performing that brings the step here; null for a step of the sheet's own. A common part may be performed twice in one section.</summary>
    public Performing? Within { get; init; }

    /// <summary>Guards of the steps that perform it, from the outermost: where one does not hold, it is not done either.</summary>
    public ImmutableArray<Condition> Under { get; init; } = [];

    /// <summary>Whether it may be left out, by its own guard or by one that it is under.</summary>
    public bool MayBeLeftOut => Guard is not null || !Under.IsEmpty;

    /// <summary>Of the loop that it is done in; null: once.</summary>
    public LoopTurns? Turns { get; init; }

    /// <summary>Devices that are in the machine after the step, in order of placing.</summary>
    public ImmutableArray<StillIn> LeavesIn { get; init; } = [];
}

/// <summary>One time that a step performs another procedure: steps with the same one belong together.</summary>
public sealed class Performing;

/// <summary>Parameters of a performed common part: <c>{group}</c> stands for <c>backing-ring-bolts</c>.</summary>
public sealed record Fills(ImmutableDictionary<string, string> Values)
{
    public static readonly Fills None = new(ImmutableDictionary<string, string>.Empty);

    /// <summary>The text with its <c>{names}</c> replaced; unknown names stay as they are.</summary>
    public string In(string text)
    {
        foreach (var (name, value) in Values)
            text = text.Replace("{" + name + "}", value, StringComparison.Ordinal);
        return text;
    }
}
