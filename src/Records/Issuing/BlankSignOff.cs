using System.Globalization;
using System.Text;
using Witnessmark.Language.Text;
using Witnessmark.Records.Sheets;

namespace Witnessmark.Records.Issuing;

/// <summary>
/// The sign-off of one copy with nothing filled in: every entry that the sheet asks for, in its order, what belongs there
/// beside it as a comment. Values are typed behind the colons; an empty one means that it is still open.
/// </summary>
public static class BlankSignOff
{
    public static string Write(SheetPlan plan, CopyIdentity copy)
    {
        var blank = new StringBuilder();
        Head(blank, plan, copy);
        blank.Append("entries:\n");
        foreach (var section in plan.Sections)
        {
            if (section.Section.Heading is { } heading)
                blank.Append(CultureInfo.InvariantCulture, $"\n  # {OneLine(heading.Value)}\n");
            foreach (var entry in SheetEntries.Of(section))
                BlankEntry.Write(blank, entry);
        }
        Foot(blank);
        return blank.ToString();
    }

    private static void Head(StringBuilder blank, SheetPlan plan, CopyIdentity copy)
    {
        var procedure = plan.Procedure;
        var part = plan.Part.Name is { } name ? $"part: {YamlScalar.Of(name.Value)}\n" : "";
        var words = copy.Words is { } translated ? $"words: {YamlScalar.Of(translated.ToString())}\n" : "";
        blank.Append(CultureInfo.InvariantCulture, $"""
            # Sign-off of {procedure.Id} {procedure.Version}, {OneLine(procedure.Title?.Value ?? "")}
            # Type what stands on the paper, numbers with their unit. What is empty there stays empty here.
            record: {YamlScalar.Of($"{Day(copy.IssuedAt)} unit {copy.Unit} {copy.Place} {procedure.Id}")}
            procedure: {YamlScalar.Of(procedure.Id.Value)}
            {part}version: {YamlScalar.Of(procedure.Version?.Value ?? "")}
            hash: {YamlScalar.Of(copy.Hash.Short12)}
            {words}copy: {YamlScalar.Of(copy.Mark)}
            issued: {YamlScalar.Of(copy.IssuedAt)}
            issued-by: {YamlScalar.Of(copy.IssuedBy)}
            machine:
              unit: {YamlScalar.Of(copy.Unit)}
              serial: {YamlScalar.Of(copy.Serial)}
              hours:                     # as the meter shows: 12405 h
            place: {YamlScalar.Of(copy.Place)}
            crew:                        # observed-by: who watches one in training

            """);
        foreach (var role in procedure.Crew.SelectMany(c => Enumerable.Repeat(c.Role.Value, c.Number.Value)))
            blank.Append(CultureInfo.InvariantCulture, $"  - role: {YamlScalar.Of(role)}\n    initials:\n    observed-by:\n");
        blank.Append("typed-by:\n");
    }

    private static void Foot(StringBuilder blank) => blank.Append("""

        stops:                         # none, and your initials; or each stop with time and what it was left like
        deviations:                    # none, and your initials; or what was done otherwise, why, and who allowed it
        release:
          by:
          at:

        """);

    private static string Day(string issuedAt) => issuedAt.Split('T')[0];

    private static string OneLine(string text) => text.ReplaceLineEndings(" ");
}
