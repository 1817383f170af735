using System.Text;
using Witnessmark.Harness;
using Witnessmark.Language.Text;

namespace Witnessmark.Press.Tests;

/// <summary>
/// Procedures of every length on the demo's data sheet: from one step to 120, with no message or six, short words and long
/// ones, every kind of thing that a sheet prints. The same each time.
/// </summary>
internal static class Generated
{
    public const int Longest = 120;
    private const int StepsInSection = 9;

    private static readonly string[] Short = ["oil", "rag", "pin", "cap", "lip", "hub", "rim", "cone", "stud", "face", "bore", "ring", "seal", "shim", "plug", "line"];

    private static readonly string[] Long =
        ["counterclockwise", "hydraulically", "planetary-carrier", "recirculation-clamp", "articulation-hitch", "accumulator-manifold", "thermocouple-extension-lead", "interchangeability"];

    private static readonly string[] Verbs = ["Wipe", "Look at", "Turn", "Mark", "Set down", "Lift off", "Wash", "Dry", "Feel along", "Cover", "Align", "Sort"];

    private static readonly string[] Signals = ["WARNING", "CAUTION", "NOTICE", "DANGER"];

    private static readonly string[] Hazards = ["pinched-fingers", "hung-load", "dry-disc"];

    private static readonly string[] Work =
    [
        "    - measure: cavity-depth\n    - tool: depth-gauge-100\n    - stop-if: cavity-depth = out-of-true\n",
        "    - measure: disc-thickness\n    - tool: micrometer-25\n    - stop-if: disc-thickness = thin or thick\n",
        "    - measure: plate-thickness\n    - tool: micrometer-25\n",
        "    - measure: end-thickness\n    - tool: micrometer-25\n    - checked-by: helper (independent)\n",
        "    - work-out: running-clearance\n    - checked-by: helper (independent)\n",
        "    - count: friction-disc = 9, steel-plate = 8, end-plate = 2\n",
        "    - fit: brake-stack\n    - call: plate-seated\n    - checked-by: helper (concurrent)\n",
        "    - hold: parts in ___, left over ___, both faced sides outward\n    - checked-by: helper (independent)\n",
        "    - lift: backing-ring\n    - by: mechanic, helper\n    - call: hands-clear\n",
        "    - recover: BC1\n    - by: helper\n",
        "    - perform: WB-60 group = backing-ring-bolts, wrench = TW-340\n",
        "    - snug: backing-ring-bolts 10 of 12\n    - wait: 10 min\n",
    ];

    public static IReadOnlyList<RawFile> Workshop(int procedures) =>
    [
        .. Repo.Files(Repo.OneBrake),
        .. Enumerable.Range(0, procedures).Select(i => RawFile.Of($"generated/gp-{i:000}.md", Encoding.UTF8.GetBytes(Procedure(i, procedures)))),
    ];

    /// <summary>Short ones close together, long ones further apart: long ones take the time.</summary>
    public static int Steps(int number, int of) => 1 + (int)((Longest - 1) * Math.Pow((double)number / (of - 1), 4));

    private static string Procedure(int number, int of)
    {
        var chance = new Random(20310611 + number);
        var text = new StringBuilder();
        text.Append(
            $"---\nprocedure: GP-{number:000}\ntitle: {Sentence(chance, chance.Next(2, 9))}\nversion: 1.{number}.0\nstatus: draft\nlanguage: {(number % 5 == 4 ? "es" : "en")}\nmachine: okr-34\n"
            + "crew: {mechanic: 1, helper: 1}\nuses:\n  WB-60: 1.2.0\nuses-tools: crane-truck\nauthors: [MO]\n---\n\n# " + $"Job {number}\n\n- starts-with: made-safe\n- ends-with: backing-ring = fitted\n- by: mechanic\n");
        var steps = Steps(number, of);
        var messages = number % 7;
        var section = 0;
        for (var step = 1; step <= steps; section++)
        {
            var until = Math.Min(steps, step + chance.Next(1, StepsInSection));
            if (messages > 0 && chance.Next(3) == 0)
                Message(text, chance, ref messages);
            text.Append($"\n## {Sentence(chance, chance.Next(2, 6))} {section + 1}\n\n- zone: brake-face\n\n");
            if (chance.Next(3) == 0)
                Table(text, chance, indent: "");
            for (; step <= until; step++)
            {
                if (messages > 0 && chance.Next(4) == 0)
                    Message(text, chance, ref messages);
                Step(text, chance, step);
            }
        }
        return text.ToString();
    }

    private static void Step(StringBuilder text, Random chance, int number)
    {
        text.Append($"{number}. **{Verbs[chance.Next(Verbs.Length)]} {Words(chance, chance.Next(1, 5))}**{(chance.Next(2) == 0 ? "." : $" {Words(chance, chance.Next(1, 14))}.")}\n");
        if (chance.Next(9) == 0)
            Table(text.Append('\n'), chance, indent: "    ");
        if (chance.Next(5) < 2)
            text.Append(Work[chance.Next(Work.Length)]);
        if (chance.Next(6) == 0)
            text.Append($"    - {Sentence(chance, chance.Next(3, 20))}.\n");
        text.Append($"    - time: {chance.Next(1, 5)} min\n\n");
    }

    // three lines or four, as the trade writes them (common practice, no source)
    private static void Message(StringBuilder text, Random chance, ref int messages)
    {
        messages--;
        text.Append($"> **{Signals[chance.Next(Signals.Length)]}: {Words(chance, chance.Next(2, 5))} {messages} can hurt** {Words(chance, chance.Next(1, 4))}.\n");
        for (var i = chance.Next(1, 3); i > 0; i--)
            text.Append($"> - {Sentence(chance, chance.Next(2, 7))}.\n");
        text.Append($"> - hazard: {Hazards[chance.Next(Hazards.Length)]}\n\n");
    }

    private static void Table(StringBuilder text, Random chance, string indent)
    {
        text.Append($"{indent}| {Words(chance, 2)} | {Words(chance, 1)} |\n{indent}|---|---|\n");
        for (var i = chance.Next(1, 5); i > 0; i--)
            text.Append($"{indent}| {Words(chance, chance.Next(1, 4))} | {Words(chance, 1)} |\n");
        text.Append('\n');
    }

    private static string Sentence(Random chance, int words) => Words(chance, words) is var said ? char.ToUpperInvariant(said[0]) + said[1..] : "";

    private static string Words(Random chance, int count) =>
        string.Join(' ', Enumerable.Range(0, count).Select(_ => chance.Next(4) == 0 ? Long[chance.Next(Long.Length)] : Short[chance.Next(Short.Length)]));
}
