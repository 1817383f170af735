using Witnessmark.Language.Wording;

namespace Witnessmark.Reading.References;

/// <summary>What a name can stand for.</summary>
[Flags]
internal enum NameKind
{
    None = 0,
    Part = 1 << 0,
    Fasteners = 1 << 1,
    Stack = 1 << 2,
    Device = 1 << 3,
    Container = 1 << 4,
    Space = 1 << 5,
    Reading = 1 << 6,
    Value = 1 << 7,
    Test = 1 << 8,
    Load = 1 << 9,
    State = 1 << 10,
    Decision = 1 << 11,
    Opening = 1 << 12,
    Bundle = 1 << 13,
    Zone = 1 << 14,
    Tool = 1 << 15,
    Role = 1 << 16,
    Call = 1 << 17,
    Hazard = 1 << 18,
    PlaceKind = 1 << 19,
    Place = 1 << 20,
    Tally = 1 << 21,
    Procedure = 1 << 22,
    Machine = 1 << 23,
    ToolList = 1 << 24,
    Shims = 1 << 25,

    /// <summary>What a condition can ask about.</summary>
    HasState = Part | Fasteners | Stack | Device | Container | Space | Reading | Value | Test | State | Decision | Opening | Shims,

    /// <summary>What can be taken off and put on.</summary>
    Handled = Part | Fasteners | Stack | Shims,

    /// <summary>What goes in for the work and comes out again.</summary>
    Placed = Device | Container,

    Counted = Part | Fasteners | Stack | Device | Container | Tool | Tally,
}

internal static class NameKinds
{
    /// <summary>The kinds in words, the way a message lists them: <c>a part or a stack</c>.</summary>
    public static string InWords(this NameKind kinds) => Say.Or(Enum.GetValues<NameKind>().Where(k => int.IsPow2((int)k) && kinds.HasFlag(k)).Select(One));

    private static string One(NameKind kind) => kind switch
    {
        NameKind.Part => "a part",
        NameKind.Fasteners => "a group of fasteners",
        NameKind.Stack => "a stack",
        NameKind.Device => "a device",
        NameKind.Container => "a container",
        NameKind.Space => "an oil space",
        NameKind.Reading => "a reading",
        NameKind.Value => "a value to be worked out",
        NameKind.Test => "a test",
        NameKind.Load => "a load",
        NameKind.State => "a state",
        NameKind.Decision => "a decision",
        NameKind.Opening => "an opening",
        NameKind.Bundle => "a named condition",
        NameKind.Zone => "a danger zone",
        NameKind.Tool => "a tool",
        NameKind.Role => "a role",
        NameKind.Call => "a call",
        NameKind.Hazard => "a hazard",
        NameKind.PlaceKind => "a kind of place",
        NameKind.Place => "a place",
        NameKind.Tally => "something that is counted",
        NameKind.Procedure => "a procedure",
        NameKind.Machine => "a machine",
        NameKind.Shims => "a pack of shims",
        _ => "a tool list",
    };
}
