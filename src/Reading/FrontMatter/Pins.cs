using System.Collections.Immutable;
using Witnessmark.Language.Model;
using Witnessmark.Reading.Data;
using Witnessmark.Reading.Facts;

namespace Witnessmark.Reading.FrontMatter;

/// <summary>What a procedure performs, in which version; what a common part is given.</summary>
internal static class Pins
{
    private const string LeftOut = ", may be left out";

    /// <summary>Kinds of thing that a common part can be given.</summary>
    public static readonly ImmutableArray<string> Kinds = ["fasteners", "torque wrench", "adapter", "part", "device"];

    public static ImmutableArray<Pin> Uses(Fields fields)
    {
        if (fields.Below("uses", "`uses`", "{WB-60: 1.2.0}") is not { } below)
            return [];
        var pins = ImmutableArray.CreateBuilder<Pin>();
        foreach (var entry in below.Map.Entries)
            if (FrontMatterReader.Version(below, entry.Key.Value) is { } version)
                pins.Add(new Pin(entry.Key, version));
        return pins.ToImmutable();
    }

    public static ImmutableArray<Parameter> Takes(Fields fields)
    {
        if (fields.Below("takes", "`takes`", "{group: fasteners}") is not { } below)
            return [];
        var parameters = ImmutableArray.CreateBuilder<Parameter>();
        foreach (var name in below.Map.Entries.Select(e => e.Key))
        {
            if (below.Text(name.Value, "fasteners") is not { } text)
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
