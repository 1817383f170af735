using System.Collections.Immutable;
using Witnessmark.Language.Quantities;
using Witnessmark.Language.Text;

namespace Witnessmark.Language.Model;

/// <summary>The root file: house limits, people, words and the standing notice.</summary>
public sealed record Workshop(SourceText Source, DataNode Node) : WorkshopFile(Source, Node)
{
    public Located<string>? Title { get; init; }
    public Located<string>? Language { get; init; }

    /// <summary>The unit system that is native here; the other one is printed beside it.</summary>
    public UnitSystem NativeUnits { get; init; } = UnitSystem.Metric;

    /// <summary><c>ANSI Z535</c> or <c>military</c>.</summary>
    public Located<string>? SignalWords { get; init; }

    public SignalScheme SignalScheme => SignalWords?.Value == "military" ? SignalScheme.Military : SignalScheme.AnsiZ535;
    public Located<string>? Notice { get; init; }

    /// <summary>Whom to call, printed at the foot of every sheet.</summary>
    public Located<string>? Help { get; init; }

    /// <summary>A4 or Letter; A4 when not written.</summary>
    public Located<string>? Paper { get; init; }
    public HouseLimits Limits { get; init; } = HouseLimits.Default;
    public ImmutableArray<Located<TorquePass>> Passes { get; init; } = [];
    public Located<string>? WitnessMark { get; init; }
    public Items<Role> Roles { get; init; } = Items<Role>.None;
    public Items<Person> People { get; init; } = Items<Person>.None;
    public Items<CallLine> Calls { get; init; } = Items<CallLine>.None;

    /// <summary>Roles that must have approved a released procedure.</summary>
    public ImmutableArray<Located<string>> ReleasedNeeds { get; init; } = [];

    /// <summary>Roles that must have approved a change that can hurt people, each by a person of his own. Two when not written: a mechanic and an independent one.</summary>
    public ImmutableArray<Located<string>> HazardNeeds { get; init; } = [];

    /// <summary>Documents of makers that numbers rest on, with the revision that holds.</summary>
    public ImmutableArray<MakerDocument> MakerData { get; init; } = [];
}

/// <summary>Limits of the house. A limit that the workshop file leaves out has the value here, common practice without a source unless said.</summary>
public sealed record HouseLimits
{
    public static readonly HouseLimits Default = new();

    /// <summary>Of the wrench's greatest value, from its least trusted to its greatest (ISO 6789:2003 asks for 20 to 100 %; the 2017 edition starts at the lowest mark).</summary>
    public (decimal Low, decimal High) WrenchShare { get; init; } = (0.20m, 1.00m);

    /// <summary>Of the torque at proof load.</summary>
    public (decimal Low, decimal High) TorqueWindow { get; init; } = (0.65m, 0.85m);

    /// <summary>Greatest preload after scatter, of proof.</summary>
    public decimal TightenedProof { get; init; } = 0.95m;

    public decimal FrictionScatter { get; init; } = 0.25m;

    public decimal WrenchScatter { get; init; } = 0.04m;

    /// <summary>Two spellings of one value may be this far apart.</summary>
    public decimal DualUnits { get; init; } = 0.02m;

    public Quantity LiftByHand { get; init; } = Quantity.Of(23m, "kg");

    public decimal CraneUse { get; init; } = 0.75m;

    public Quantity SlingAngle { get; init; } = Quantity.Of(45m, "deg");

    public decimal ContainerFill { get; init; } = 0.80m;

    /// <summary>By what a mass that nobody weighed counts more.</summary>
    public decimal EstimatedMass { get; init; } = 1.25m;

    /// <summary>Yield of a blanking plate over its stress.</summary>
    public decimal BlankSafety { get; init; } = 1.5m;

    /// <summary>What kinds of ground bear. Ground is judged on the spot; without a number nothing is held against it.</summary>
    public ImmutableArray<GroundBearing> Ground { get; init; } = [];

    public int StepWords { get; init; } = 25;

    public int StepsInSection { get; init; } = 9;

    public Quantity Shift { get; init; } = Quantity.Of(10m, "h");
}

/// <param name="Kind"><c>compacted gravel</c></param>
public sealed record GroundBearing(Located<string> Kind, Located<Quantity> Bears);

/// <param name="Document">As a basis names it: <c>OKR-34 data sheet 7</c>.</param>
/// <param name="Revision">The one that holds: <c>C</c>.</param>
/// <param name="Superseded">Earlier ones.</param>
public sealed record MakerDocument(Located<string> Document, Located<string> Revision, ImmutableArray<Located<string>> Superseded);

public sealed record Role(Located<string> Id, DataNode Node, string? Needs) : IItem;

/// <summary>Initials and what they stand for.</summary>
public sealed record Person(Located<string> Id, DataNode Node) : IItem
{
    public Located<string>? Role { get; init; }
    public ImmutableArray<Located<string>> Also { get; init; } = [];
    public ImmutableArray<Located<string>> InTraining { get; init; } = [];

    /// <summary>First signs of the set marks that this person gives to copies; nobody else has them. Null: issues no copies.</summary>
    public Located<string>? MarkSigns { get; init; }
}

/// <summary>A call and its answer, named once.</summary>
public sealed record CallLine(Located<string> Id, DataNode Node, string Call, string Answer) : IItem;
