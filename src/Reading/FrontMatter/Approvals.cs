using System.Collections.Immutable;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Data;

namespace Witnessmark.Reading.FrontMatter;

/// <summary>Who approved it, in which role, when.</summary>
internal static class Approvals
{
    private const string Key = "approvals";
    private const string Example = "[{role: independent mechanic, by: RK, date: \"2031-05-02\"}]";

    public static ImmutableArray<Approval> Read(Fields fields)
    {
        if (fields.Node(Key) is not { } node)
            return [];
        if (node is not DataList list)
            return Refuse(fields, fields.Map.Find(Key)!);
        var approvals = ImmutableArray.CreateBuilder<Approval>();
        foreach (var item in list.Items)
            if (item is DataMap map)
                approvals.Add(One(new Fields(map, "an approval", fields.Findings)));
            else
                return Refuse(fields, fields.Map.Find(Key)! with { Value = item });
        return approvals.ToImmutable();
    }

    private static Approval One(Fields fields)
    {
        var approval = new Approval(fields.Text("role", "independent mechanic"), fields.Text("by", "RK"), fields.Text("date", "\"2031-05-02\""), fields.Map.At);
        fields.Done("role", "by", "date");
        return approval;
    }

    private static ImmutableArray<Approval> Refuse(Fields fields, DataEntry entry)
    {
        fields.WrongKind(entry, "something else", "a list of approvals", Example);
        return [];
    }
}
