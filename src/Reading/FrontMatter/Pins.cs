using System.Collections.Immutable;
using Witnessmark.Language.Model;
using Witnessmark.Reading.Data;
using Witnessmark.Reading.Facts;
using Witnessmark.Reading.Shapes;

namespace Witnessmark.Reading.FrontMatter;

/// <summary>What a procedure performs, in which version; what a common part is given.</summary>
internal static class Pins
{
    private const string LeftOut = ", may be left out";

    /// <summary>Kinds of thing that a common part can be given.</summary>
    public static readonly ImmutableArray<string> Kinds = ["fasteners", "torque wrench", "adapter", "part", "device"];

    private static readonly Shape UsesShape = new("uses", "`uses`")
    {
        Other = Row.Written("WB-60", FrontMatterReader.VersionForm, "1.2.0", "the version that is performed"),
    };

    private static readonly Shape TakesShape = new("takes", "`takes`")
    {
        Other = Row.Written("group", new SpelledForm("parameter", () => $"^(?:{string.Join('|', Kinds)})(?:{LeftOut})?$"), "fasteners", "the kind of thing that it is given; `, may be left out` where it need not be"),
        OtherKeys = Row.AName,
    };

    public static readonly Row UsesSection = Row.Below("uses", UsesShape, "{WB-60: 1.2.0}", "what it performs, in which version");

    public static readonly Row TakesSection = Row.Below("takes", TakesShape, "{group: fasteners}", "what a common part is given");

    public static ImmutableArray<Pin> Uses(Fields fields) => fields.Below(UsesSection.Key) is { } below
        ? [.. below.Map.Entries.Select(entry => FrontMatterReader.Version(below, entry.Key.Value) is { } version ? new Pin(entry.Key, version) : null).OfType<Pin>()]
        : [];

    public static ImmutableArray<Parameter> Takes(Fields fields)
    {
        if (fields.Below(TakesSection.Key) is not { } below)
            return [];
        var parameters = ImmutableArray.CreateBuilder<Parameter>();
        foreach (var name in below.Map.Entries.Select(e => e.Key))
        {
            if (below.Text(name.Value) is not { } text)
                continue;
            var mayBeLeftOut = text.Value.EndsWith(LeftOut, StringComparison.Ordinal);
            var kind = mayBeLeftOut ? text.Piece(0, text.Value.Length - LeftOut.Length) : text;
            if (!Names.Usable(name, fields.Findings))
                continue;
            if (Kinds.Contains(kind.Value))
                parameters.Add(new Parameter(name, kind, mayBeLeftOut));
            else
                fields.Findings.Add(Names.NotInList(kind, $"`{name.Value}` of `takes`", Kinds));
        }
        return parameters.ToImmutable();
    }
}
