using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Witnessmark.Harness;
using Witnessmark.Language.Model;
using Witnessmark.Rendering.Site;
using Witnessmark.Rendering.Tests.Checklist;

namespace Witnessmark.Rendering.Tests.Figures;

/// <summary>Pages of the demo workshop, also with a file of it changed.</summary>
internal static class SiteDrawings
{
    public static string Page(string path, params (string Path, string From, string To)[] changes) => Page(path, Demo.Read(changes));

    private static string Page(string path, Library library)
    {
        var data = new SiteData(library, ImmutableDictionary<string, string>.Empty, ImmutableDictionary<string, ImmutableArray<SheetLink>>.Empty, [], [], "0.0.0");
        return System.Text.Encoding.UTF8.GetString(SitePages.Render(data).Single(f => f.Path == path).Bytes.Span);
    }

    /// <summary>Every line of a file that begins so, taken out.</summary>
    public static IEnumerable<(string Path, string From, string To)> Lines(string path, string begins) =>
        Repo.Read(["tests", "Workshops", "one-brake", .. path.Split('/')]).Split('\n').Where(l => l.StartsWith(begins, StringComparison.Ordinal)).Distinct().Select(l => (path, l + "\n", ""));

    /// <summary>The drawings of a page, by the name that each carries.</summary>
    public static Dictionary<string, Sketch> Of(string page) =>
        Regex.Matches(page, "<svg [^>]*aria-labelledby=\"([^ ]+)-t .*?</svg>", RegexOptions.Singleline).ToDictionary(m => m.Groups[1].Value, m => new Sketch(m.Value));
}
