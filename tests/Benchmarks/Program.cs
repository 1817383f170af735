using System.Diagnostics;
using Markdig;
using Witnessmark.Benchmarks;
using Witnessmark.Compiler;
using YamlDotNet.Core;

if (args is ["print"])
{
    await PressTime.Run();
    return;
}

if (args is ["compare"])
{
    CompareCost.Run();
    return;
}

// `check` over generated procedures, beside the bare cost of the two parsers on the same text, in alternating rounds. Two ratios:
// of wall time, where check may use all cores and the parsers have one, as a person waits for it; and of processor time, where
// all cores count, which is what the work itself costs. The median of the ratios holds when the machine's speed drifts.
const int WarmUp = 8;
const int Rounds = 9;
var count = args is [var n, ..] ? int.Parse(n) : 1000;
var workshop = Generated.Workshop(count);
var texts = workshop.Where(f => f.Path.EndsWith(".md", StringComparison.Ordinal)).Select(f => System.Text.Encoding.UTF8.GetString(f.Bytes.Span)).ToList();
Console.WriteLine($"{texts.Count} procedures, {texts.Average(t => t.Length) / 1024:0.0} KB each, {workshop.Sum(f => f.Length) / 1024.0 / 1024.0:0.0} MB in all");

var bench = Pipeline.Check(workshop);
Console.WriteLine($"check: {bench.Extent}; {bench.Findings.Length} findings");
foreach (var finding in bench.Findings.Take(5))
    Console.WriteLine($"  {finding.At.Source.Path}:{finding.At.Start.Line} {finding.Rule.Name}: {finding.Found}");

var wall = new List<double>();
var cpu = new List<double>();
for (var round = 0; round < WarmUp + Rounds; round++)
{
    var parsers = Time(() => Parsers(texts));
    var check = Time(() => Pipeline.Check(workshop));
    Console.WriteLine($"round {round}: parsers {parsers}, check {check}");
    // until the hot path has been compiled for good
    if (round < WarmUp)
        continue;
    wall.Add(check.Wall / parsers.Wall);
    cpu.Add(check.Cpu / parsers.Cpu);
}
Console.WriteLine($"wall time, check on {Environment.ProcessorCount} cores / Markdig parse and YamlDotNet events on one: {Spread(wall)}");
Console.WriteLine($"processor time, check, all cores added up / Markdig parse and YamlDotNet events: {Spread(cpu)}");
return;

static string Spread(List<double> ratios)
{
    ratios.Sort();
    return $"median {ratios[ratios.Count / 2]:0.00}, least {ratios[0]:0.00}, most {ratios[^1]:0.00}";
}

static Cost Time(Action action)
{
    GC.Collect();
    GC.WaitForPendingFinalizers();
    var process = Process.GetCurrentProcess();
    var before = process.TotalProcessorTime;
    var watch = Stopwatch.StartNew();
    action();
    var elapsed = watch.Elapsed;
    process.Refresh();
    return new Cost(elapsed.TotalMilliseconds, (process.TotalProcessorTime - before).TotalMilliseconds);
}

static void Parsers(List<string> texts)
{
    var pipeline = new MarkdownPipelineBuilder().UsePreciseSourceLocation().UsePipeTables().Build();
    foreach (var text in texts)
    {
        var end = text.IndexOf("\n---", 4, StringComparison.Ordinal);
        var parser = new Parser(new StringReader(text[4..end]));
        while (parser.MoveNext())
            ;
        Markdown.Parse(text[(end + 5)..], pipeline);
    }
}

internal readonly record struct Cost(double Wall, double Cpu)
{
    public override string ToString() => $"{Wall:0} ms ({Cpu:0} ms of processor)";
}
