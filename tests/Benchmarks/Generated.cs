using System.Text;
using Witnessmark.Harness;
using Witnessmark.Language.Text;

namespace Witnessmark.Benchmarks;

/// <summary>A workshop of any size: the demo's own sheet and tools, and copies of its stack assembly that differ in id, names and order of text, some 12 KB each.</summary>
internal static class Generated
{
    private const int Size = 12 * 1024;

    public static IReadOnlyList<RawFile> Workshop(int procedures)
    {
        var demo = Repo.Files(Repo.OneBrake);
        var model = Encoding.UTF8.GetString(demo.Single(f => f.Path == "wheel-end/wb-40.md").Bytes.Span);
        var files = demo.Where(f => f.Path != "wheel-end/wb-40.md").ToList();
        for (var i = 0; i < procedures; i++)
            files.Add(RawFile.Of($"generated/gx-{i:0000}.md", Encoding.UTF8.GetBytes(Procedure(model, i))));
        return files;
    }

    private static string Procedure(string model, int number)
    {
        var text = new StringBuilder(model
            .Replace("procedure: WB-40", $"procedure: GX-{number:0000}", StringComparison.Ordinal)
            .Replace("Build the disc stack and close it", $"Build disc stack number {number} and close it", StringComparison.Ordinal));
        var step = 17;
        for (var section = 1; text.Length < Size; section++)
        {
            text.Append($"\n## Look over the work, round {section} of machine {number}\n\n- zone: brake-face\n\n");
            for (var i = 0; i < 8 && text.Length < Size; i++, step++)
                text.Append($"{step}. **Look at bolt {step} of round {section}** and the mark across its head, lamp held low from side {i}.\n    - by: mechanic\n    - tool: depth-gauge-100\n    - time: 1 to 2 min\n\n");
        }
        return text.ToString();
    }
}
