using System.Collections.Concurrent;
using System.Text;
using Witnessmark.Harness;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Reading;

namespace Witnessmark.Comparing.Tests;

/// <summary>
/// One change that somebody may make, as a file. Its first line is decided by hand before the compiler is asked: <c># hazard looser hung-load</c>. It is
/// laid over the demo, or over the trial workshop where it says so; what stands before <c># then</c> is in both states.
/// </summary>
internal sealed record Case(string Name, string Class, string Sense, IReadOnlySet<string> Hazards, Library Old, IReadOnlyList<RawFile> Files)
{
    private const string Both = "# both have";
    private const string Then = "# then";
    private const string Trial = "# over the trial workshop";

    private static readonly ConcurrentDictionary<string, Case> Known = new(StringComparer.Ordinal);

    private static readonly string Folder = Repo.Path("tests", "Comparing.Tests", "Cases");
    private static readonly Lazy<IReadOnlyList<RawFile>> DemoFiles = new(() => Repo.Files(Repo.OneBrake));
    private static readonly Lazy<IReadOnlyList<RawFile>> TrialFiles = new(() => Repo.Files(Repo.Trial));

    public static IEnumerable<string> Names => Directory.EnumerateFiles(Folder, "*.diff").Select(f => Path.GetFileNameWithoutExtension(f)!).Order(StringComparer.Ordinal);

    public Library New { get; } = Read(Files);

    /// <summary>Newer beside older.</summary>
    public WorkshopComparison Compared => _compared ??= Comparer.Between(Old, New);

    private WorkshopComparison? _compared;

    public bool IsOverTheDemo { get; init; }

    /// <summary>Its author says in it what a step was called before.</summary>
    public bool JoinsByWas => New.Procedures.SelectMany(p => p.Steps).Any(s => s.Find(FactWord.Was) is not null);

    /// <summary>Read and compared once for all that is asked of it.</summary>
    public static Case Of(string name) => Known.GetOrAdd(name, From);

    private static Case From(string name)
    {
        var lines = File.ReadAllLines(Path.Join(Folder, $"{name}.diff"));
        var said = lines[0].Split(' ', StringSplitOptions.RemoveEmptyEntries);
        Assert.True(said is ["#", "hazard" or "method" or "wording" or "layout" or "none", "looser" or "tighter" or "other", ..], $"{name}: its first line says class and sense, # hazard looser");
        var files = lines.Contains(Trial) ? TrialFiles.Value : DemoFiles.Value;
        var then = Array.IndexOf(lines, Then);
        var old = lines.Contains(Both) ? Laid(files, lines[..then], name) : files;
        return new Case(name, said[1], said[2], said.Skip(3).ToHashSet(StringComparer.Ordinal), Read(old), Laid(old, lines[(then + 1)..], name)) { IsOverTheDemo = files == DemoFiles.Value };
    }

    public static Library Read(IReadOnlyList<RawFile> files) => WorkshopReader.Read(files, new FindingList());

    /// <summary>Lines behind <c>--- PATH</c>: each run of <c>-</c> lines is replaced by the <c>+</c> lines behind it.</summary>
    private static List<RawFile> Laid(IReadOnlyList<RawFile> files, string[] lines, string name)
    {
        var texts = files.ToDictionary(f => f.Path, f => Encoding.UTF8.GetString(f.Bytes.Span), StringComparer.Ordinal);
        var path = "";
        var (gone, come) = (new StringBuilder(), new StringBuilder());
        foreach (var line in lines.Where(l => !l.StartsWith("# ", StringComparison.Ordinal)).Append("--- "))
        {
            if (line.StartsWith("--- ", StringComparison.Ordinal) || (line.StartsWith('-') && come.Length > 0) || line.Length == 0)
            {
                if (gone.Length > 0)
                    texts[path] = Once(texts[path], gone.ToString(), come.ToString(), name);
                gone.Clear();
                come.Clear();
            }
            if (line.StartsWith("--- ", StringComparison.Ordinal))
                path = line[4..];
            else if (line.StartsWith('-'))
                gone.Append(line[1..]).Append('\n');
            else if (line.StartsWith('+'))
                come.Append(line[1..]).Append('\n');
        }
        return [.. texts.Select(t => RawFile.Of(t.Key, Encoding.UTF8.GetBytes(t.Value)))];
    }

    private static string Once(string text, string from, string to, string name)
    {
        var at = text.IndexOf(from, StringComparison.Ordinal);
        Assert.True(at >= 0, $"{name}: nowhere stands\n{from}");
        return text[..at] + to + text[(at + from.Length)..];
    }
}
