using System.Globalization;
using Witnessmark.Language.Model;

namespace Witnessmark.Records.Hashing;

/// <summary>The stable name of each step: part (when it has a name), section and step.</summary>
internal static class StepLines
{
    private const string NoHeading = "top";

    public static IEnumerable<(string Name, Step Step)> Of(Procedure procedure)
    {
        var seen = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var place in procedure.Walk())
        {
            var part = place.Part.Name is { } name ? StepName.Slug(name.Value) + "/" : "";
            var section = place.Section.Heading is { } heading ? StepName.Slug(heading.Value) : NoHeading;
            var line = $"{part}{section}/{place.Step.Slug}";
            var times = seen[line] = seen.GetValueOrDefault(line) + 1;
            // two steps of one name are a fault elsewhere; here each still has its line
            yield return (times == 1 ? line : string.Create(CultureInfo.InvariantCulture, $"{line}~{times}"), place.Step);
        }
    }
}
