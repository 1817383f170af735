using System.Diagnostics;
using System.Text;
using Witnessmark.Compiler;
using Witnessmark.Language.Text;

namespace Witnessmark.Benchmarks;

/// <summary>
/// `compare` of two states of a thousand generated procedures as a share of `check` of the whole, in alternating rounds: ten procedures
/// changed, one fact of the data sheet changed, one step of the common part changed. Files are in memory; names of their bytes are worked out before.
/// </summary>
internal static class CompareCost
{
    private const int Rounds = 7;
    private const int WarmUp = 3;

    public static void Run()
    {
        var workshop = Generated.Workshop(1000);
        var old = Kept(workshop);
        Measure("ten procedures", workshop, old, "generated/gx-000", "friction-disc = 9, steel", "friction-disc = 8, steel");
        Measure("a torque of the data sheet", workshop, old, "machines/okr-34.yaml", "torque: 235 ± 12", "torque: 245 ± 12");
        Measure("a step of the common part", workshop, old, "common/wb-60.md", "pass by pass**", "pass after pass**");
    }

    private static void Measure(string what, IReadOnlyList<RawFile> workshop, List<StoredFile> old, string path, string from, string to)
    {
        var made = Kept([.. workshop.Select(f => f.Path.StartsWith(path, StringComparison.Ordinal) ? Changed(f, from, to) : f)]);
        var ratios = new List<double>();
        var differ = 0;
        for (var round = 0; round < WarmUp + Rounds; round++)
        {
            var check = Time(() => Pipeline.Check(workshop));
            var compare = Time(() => differ = Pipeline.Compare(old, made, only: null).Comparison.Procedures.Length);
            Console.WriteLine($"{what}, round {round}: check {check:0} ms, compare {compare:0} ms");
            if (round >= WarmUp)
                ratios.Add(compare / check);
        }
        ratios.Sort();
        Console.WriteLine($"{what} changed, {differ} procedures differ: compare / check of all, median {ratios[ratios.Count / 2]:0.000}, least {ratios[0]:0.000}, most {ratios[^1]:0.000}");
    }

    private static List<StoredFile> Kept(IReadOnlyList<RawFile> files) => [.. files.Select(StoredFile.Of)];

    private static RawFile Changed(RawFile file, string from, string to) =>
        RawFile.Of(file.Path, Encoding.UTF8.GetBytes(Encoding.UTF8.GetString(file.Bytes.Span).Replace(from, to, StringComparison.Ordinal)));

    private static double Time(Action action)
    {
        GC.Collect();
        GC.WaitForPendingFinalizers();
        var watch = Stopwatch.StartNew();
        action();
        return watch.Elapsed.TotalMilliseconds;
    }
}
