using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Reflection;
using System.Text;
using Witnessmark.Checking;
using Witnessmark.Language.Findings;
using Witnessmark.Reading.Faults;
using Witnessmark.Reading.Shapes;
using Witnessmark.Records.Receiving;

namespace Witnessmark.Compiler;

/// <summary>Every rule that a finding can name, with its page: faults of a text, rules, reasons to hold up a sign-off.</summary>
public static class Catalog
{
    private static readonly ImmutableArray<Assembly> Homes = [typeof(RuleSet).Assembly, typeof(DataFaults).Assembly, typeof(ReasonSet).Assembly];

    public static readonly ImmutableArray<RuleInfo> Rules =
    [
        .. DataFaults.All, .. StepFaults.All, .. TranslationFaults.All,
        .. RuleSet.All.Select(r => r.Info),
        .. ReasonSet.All.Select(r => r.Info),
    ];

    /// <summary>The shape of each kind of file as JSON Schema.</summary>
    public static ImmutableArray<FileSchema> Schemas => FileSchemas.All;

    private static readonly FrozenDictionary<string, RuleInfo> ByName = Rules.ToFrozenDictionary(r => r.Name, StringComparer.Ordinal);

    /// <summary>The page in Markdown, or null when no rule has that name.</summary>
    /// <exception cref="InvalidOperationException">A rule without a page: a fault of ours.</exception>
    public static string? Page(string name)
    {
        if (!ByName.ContainsKey(name))
            return null;
        foreach (var home in Homes)
        {
            using var stream = home.GetManifestResourceStream($"rules/{name}.md") ?? home.GetManifestResourceStream(BesideItsCode(name));
            if (stream is null)
                continue;
            var bytes = new byte[stream.Length];
            stream.ReadExactly(bytes);
            return Encoding.UTF8.GetString(bytes).ReplaceLineEndings("\n");
        }
        throw new InvalidOperationException($"the rule {name} has no page");
    }

    /// <summary>The page's first sentence: what the rule checks.</summary>
    public static string Summary(string name) =>
        Page(name)?.Split('\n').Skip(1).FirstOrDefault(l => l.Trim().Length > 0)?.Trim() ?? "";

    /// <summary>The page's text below its first sentence.</summary>
    public static string Body(string name)
    {
        var page = Page(name) ?? "";
        var summary = Summary(name);
        return summary.Length == 0 ? "" : page[(page.IndexOf(summary, StringComparison.Ordinal) + summary.Length)..].TrimStart('\n');
    }

    /// <summary>A rule's page has the name of the file it lies beside.</summary>
    private static string BesideItsCode(string name) => $"rules/{string.Concat(name.Split('-').Select(w => char.ToUpperInvariant(w[0]) + w[1..]))}.md";
}
