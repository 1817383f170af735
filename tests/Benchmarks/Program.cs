using System.Diagnostics;
using Markdig;
using Witnessmark.Benchmarks;
using Witnessmark.Compiler;
using YamlDotNet.Core;

// `check` over generated procedures, beside the bare cost of the two parsers on the same text. One process, one thread,
// alternating rounds, the median of the ratios: a figure that holds when the machine's speed drifts.
var count = args is [var n, ..] ? int.Parse(n) : 1000;
var workshop = Generated.Workshop(count);
var texts = workshop.Where(f => f.Path.EndsWith(".md", StringComparison.Ordinal)).Select(f => System.Text.Encoding.UTF8.GetString(f.Bytes.Span)).ToList();
Console.WriteLine($"{texts.Count} procedures, {texts.Average(t => t.Length) / 1024:0.0} KB each, {workshop.Sum(f => f.Length) / 1024.0 / 1024.0:0.0} MB in all");

var bench = Pipeline.Check(workshop);
Console.WriteLine($"check: {bench.Extent}; {bench.Findings.Length} findings");
foreach (var finding in bench.Findings.Take(5))
    Console.WriteLine($"  {finding.At.Source.Path}:{finding.At.Start.Line} {finding.Rule.Name}: {finding.Found}");

var ratios = new List<double>();
for (var round = 0; round < 7; round++)
{
    var parsers = Time(() => Parsers(texts));
    var check = Time(() => Pipeline.Check(workshop));
    if (round > 0) // the first warms up
        ratios.Add(check / parsers);
    Console.WriteLine($"round {round}: parsers alone {parsers:0} ms, check {check:0} ms, ratio {check / parsers:0.00}");
}
ratios.Sort();
Console.WriteLine($"ratio check / (Markdig parse + YamlDotNet events): median {ratios[ratios.Count / 2]:0.00}, least {ratios[0]:0.00}, most {ratios[^1]:0.00}");
return;

static double Time(Action action)
{
    GC.Collect();
    GC.WaitForPendingFinalizers();
    var watch = Stopwatch.StartNew();
    action();
    return watch.Elapsed.TotalMilliseconds;
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
