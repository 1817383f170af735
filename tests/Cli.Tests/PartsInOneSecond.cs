using System.Text;
using Witnessmark.Compiler;
using Witnessmark.Harness;
using Witnessmark.Language.Text;
using Witnessmark.Records.Hashing;

namespace Witnessmark.Cli.Tests;

/// <summary>Two parts of one procedure, issued in one second for one machine by one person.</summary>
public sealed class PartsInOneSecond
{
    private const string Procedure = "WB-30";

    private static readonly DateTimeOffset Second = new(2031, 6, 11, 6, 40, 0, TimeSpan.FromHours(2));

    private static readonly IReadOnlyList<RawFile> Workshop =
        [.. Repo.Files(Repo.Trial).Select(f => f.Path == "workshop.yaml" ? Text(f.Path, Signed(Encoding.UTF8.GetString(f.Bytes.Span))) : f)];

    [Fact]
    public void Two_clones_that_know_nothing_of_each_other_give_them_two_marks() =>
        Assert.NotEqual(Issued(Released(), "off").Mark, Issued(Released(), "on").Mark);

    [Fact]
    public void Where_two_marks_would_come_out_alike_the_register_has_the_second_move_on()
    {
        var off = Issued(Released(), "off");
        var on = Issued(Released(), "on");
        var register = off.Line!(Released());
        // nothing stands in the way of the second
        Assert.Equal(on.Mark, Issued(register, "on").Mark);
        // the first has the very mark that the second would have
        var moved = Issued(register.Replace(off.Mark, on.Mark, StringComparison.Ordinal), "on");
        Assert.NotEqual(on.Mark, moved.Mark);
        Assert.NotEqual(off.Mark, on.Mark);
    }

    private static MadeCopy Issued(string register, string part)
    {
        var bench = Pipeline.Check([.. Workshop, Text("register.yaml", register)]);
        return Pipeline.Issue(bench, new IssueOrder(Procedure, part, "14", "0417", "CL", "RK", Second, null));
    }

    private static string Released()
    {
        var library = Pipeline.Check(Workshop).Library;
        var procedure = library.Procedure(Procedure)!;
        return $"register: crew\nreleased:\n  - {{procedure: {Procedure}, version: {procedure.Version!.Value}, hash: \"{ProcedureHash.Of(library, procedure).Hex}\", date: \"2031-06-01\", by: RK, approvals: [RK]}}\n";
    }

    private static string Signed(string workshop)
    {
        const string unsigned = "RK: {role: independent mechanic}";
        Assert.Contains(unsigned, workshop, StringComparison.Ordinal);
        return workshop.Replace(unsigned, "RK: {role: independent mechanic, mark-signs: K}", StringComparison.Ordinal);
    }

    private static RawFile Text(string path, string text) => RawFile.Of(path, Encoding.UTF8.GetBytes(text));
}
