using Witnessmark.Engineering;
using Witnessmark.Engineering.Lifting;
using Witnessmark.Engineering.Tightening;
using Witnessmark.Language.Quantities;
using Witnessmark.Rendering.Figures;

namespace Witnessmark.Rendering.Tests.Figures;

/// <summary>The drawing of a case.</summary>
internal static class Drawn
{
    public static string Of(FigureCase said) => said["figure"] switch
    {
        "bolt circle" => Bolts(said),
        "sling" => Sling(said),
        "stack" => Stack(said),
        "shims" => Shims(said),
        "adapter" => Adapted(said),
        "wear" => Wear(said),
        "decision" => DecisionFlow.Draw(said.Name, Asked(said), said.Words),
        "crew" => CrewBars.Draw(said.Name, Crew(said), said.Words),
        "states" => StateStrip.Draw(said.Name, States(said), said.Words),
        "job" => JobFlow.Draw(said.Name, Job(said), said.Words),
        var figure => throw new ArgumentException($"{said.Name}: no figure {figure}"),
    };

    private static string Bolts(FigureCase said)
    {
        var (pitch, flats) = (said.Maybe("pitch-circle"), said.Maybe("across-flats"));
        var ring = new BoltedRing(said.Count("count"), pitch is null ? null : FigureCase.Q(pitch), flats is null ? null : FigureCase.Q(flats), said.Count("passes"), [.. said.Each("inside")]);
        return BoltCircle.Draw(said.Name, ring, said.Words);
    }

    private static string Sling(FigureCase said)
    {
        var (mass, legs) = (FigureCase.Q(said["mass"]), said.Count("legs"));
        var leg = LegLoad.Of(mass, legs, said.Says("angle") ? FigureCase.Q(said["angle"]) : null) ?? throw new ArgumentException($"{said.Name}: no such sling");
        var rated = said.Says("rated") ? FigureCase.Q(said["rated"]) : (Quantity?)null;
        return SlingLegs.Draw(said.Name, new HungLoad(said["load"], mass, said.Maybe("weighed") != "no", said["gear"], legs, rated, leg), said.Words);
    }

    /// <summary><c>part: E1 | end plate | 6.20 mm | outer | PISTON up</c></summary>
    private static string Stack(FigureCase said)
    {
        var parts = said.Each("part").Select(p => p.Split(" | ")).Select(p => new StackedPart(
            p[0], p[1], p[2] == "?" ? null : FigureCase.Q(p[2]).Number, p[3] == "outer", p is [.., var end] && p.Length > 4 ? end.Split(' ')[0] : null, p.Length > 4 && p[4].EndsWith("up", StringComparison.Ordinal)));
        var gap = said.Maybe("gap");
        return StackInCavity.Draw(said.Name, new ClosedStack(said["from"], said["to"], [.. parts], said.Maybe("clearance"), gap is null ? null : FigureCase.Q(gap).Number), said.Words);
    }

    /// <summary><c>shim: S1 1.00 mm</c></summary>
    private static string Shims(FigureCase said) => ShimStack.Draw(said.Name, Pack(said), said.Words);

    public static ShimPack Pack(FigureCase said)
    {
        var pieces = said.Each("shim").Select(s => s.Split(' ', 2)).Select(s => new ShimPiece(s[0], FigureCase.Q(s[1]))).ToList();
        var sum = pieces[0].Thickness with { Number = pieces.Sum(p => p.Thickness.In(pieces[0].Thickness.Unit).Number) };
        return new ShimPack([.. pieces], new Worked<Quantity>(sum, $"{string.Join(" + ", pieces.Select(p => p.Thickness.NumberText))} = {sum}"));
    }

    private static string Adapted(FigureCase said)
    {
        var (length, extension, angle, bolt) = (FigureCase.Q(said["length"]), FigureCase.Q(said["extension"]), FigureCase.Q(said["angle"]), FigureCase.Q(said["torque"]));
        var setting = Adapter.Setting(bolt, length, extension, angle) ?? throw new ArgumentException($"{said.Name}: no such tools");
        var scale = QuantityReader.Range(said["scale"]).Value;
        return AdapterOnWrench.Draw(said.Name, new AdaptedWrench(said["wrench"], said["adapter"], length, extension, (double)angle.Number, scale, FigureCase.Q(said["division"]), FigureCase.Q(said["dial"]), setting, FigureCase.Q(said["gets"])), said.Words);
    }

    /// <summary><c>reading: 1250 h 4.82 mm</c></summary>
    private static string Wear(FigureCase said)
    {
        var points = said.Each("reading").Select(r => r.Split(" h ")).Select(r => new WearPoint(FigureCase.Number(r[0]), FigureCase.Q(r[1])));
        return WearTrend.Draw(said.Name, new WearReadings(said["of"], [.. points], FigureCase.Q(said["limit"]), said.Maybe("worn") == "above the limit"), said.Words);
    }

    /// <summary><c>outcome: replace | steps 15, 16 | stops | disc thickness below 4.60 mm | disc faces damaged</c></summary>
    public static Decision Asked(FigureCase said) =>
        new(said["asked"], [.. said.Each("outcome").Select(o => o.Split(" | ")).Select(o => new Branch(o[0], [.. o.Skip(3)], o[1], o[2] == "stops"))]);

    /// <summary><c>step: 5 | Work out the running clearance | 4 min | mechanic | helper</c>: the last one checks.</summary>
    public static CrewTimes Crew(FigureCase said)
    {
        var roles = said["roles"].Split(", ");
        var steps = said.Each("step").Select(s => s.Split(" | ")).Select(s => new CrewStep(
            s[0], s[1], s[2] == "?" ? null : FigureCase.Q(s[2]).Number, [.. s[3].Split(", ").Select(r => Array.IndexOf(roles, r))], s.Length > 4 ? Array.IndexOf(roles, s[4]) : null));
        return new CrewTimes([.. roles], [.. steps]);
    }

    /// <summary><c>in: guide studs G1 G2 | 1-15</c>, <c>state: brake stack out | 1-8, 12-13</c></summary>
    public static MachineStates States(FigureCase said)
    {
        var steps = said["steps"].Split(' ');
        return new MachineStates([.. steps], [.. said.Each("in").Select(r => Row(r, true)), .. said.Each("state").Select(r => Row(r, false))]);

        StripRow Row(string row, bool device) => new(row.Split(" | ")[0], device, [.. row.Split(" | ")[1].Split(", ").Select(s => s.Split('-')).Select(s => new Stretch(Array.IndexOf(steps, s[0]), Array.IndexOf(steps, s[^1])))]);
    }

    /// <summary><c>flow: Make it safe | 2 | Lock the machine | WB-05, lock | 9 min | left | wheel chocks, start lock</c></summary>
    public static Flow Job(FigureCase said)
    {
        var devices = said["devices"].Split(", ");
        var steps = said.Each("flow").Select(f => f.Split('|', StringSplitOptions.TrimEntries)).Select(f => (Section: f[0], Step: new FlowStep(
            f[1], f[2], f[3], f[4] == "?" ? null : FigureCase.Q(f[4]).Number, f[5] == "left", [.. devices.Select(d => f[6].Split(", ").Contains(d))])));
        return new Flow([.. devices], [.. steps.GroupBy(s => s.Section, StringComparer.Ordinal).Select(g => new FlowSection(g.Key, [.. g.Select(s => s.Step)]))]);
    }
}
