using System.Collections.Immutable;
using Witnessmark.Language.Model;
using Witnessmark.Reading.Data;
using Witnessmark.Reading.Shapes;

namespace Witnessmark.Reading.FrontMatter;

/// <summary>Who approved it, in which role, when.</summary>
internal static class Approvals
{
    private static readonly Shape Shape = new(
        "approval",
        "an approval",
        Row.Text("role", "independent mechanic", "in which role").Must,
        Row.Text("by", "RK", "initials").Must,
        Row.Text("date", "\"2031-05-02\"", "the day").Must);

    public static readonly Row Section = Row.Members("approvals", Shape, "{role: independent mechanic, by: RK, date: \"2031-05-02\"}", "who approved it, in which role, when");

    public static ImmutableArray<Approval> Read(Fields fields) =>
        [.. fields.Members(Section.Key).Select(line => new Approval(line.Text("role"), line.Text("by"), line.Text("date"), line.Map.At))];
}
