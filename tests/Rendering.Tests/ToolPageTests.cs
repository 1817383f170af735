using System.Text;
using Witnessmark.Compiler;
using Witnessmark.Harness;
using Witnessmark.Language.Text;

namespace Witnessmark.Rendering.Tests;

/// <summary>What a tool may be used for, and until when.</summary>
public sealed class ToolPageTests
{
    private static readonly string Page = Built("""
        register: tools
        calibrated:
          - {tool: TW-340, number: W-0312, due: "2031-03-14", by: RK}
          - {tool: TW-340, number: W-0312, due: "2032-03-14", by: RK}
          - {tool: TW-340, number: W-0099, due: "2031-09-30", by: RK}
        """);

    [Fact]
    public void Of_each_wrench_the_latest_date_holds() => Assert.Contains("<td>W-0099: 2031-09-30; W-0312: 2032-03-14</td>", Page, StringComparison.Ordinal);

    [Fact]
    public void A_gauge_without_a_date_says_so() => Assert.Contains("no date on record", Page, StringComparison.Ordinal);

    [Fact]
    public void Ranges_stand_in_both_units() => Assert.Contains("70 to 340 N·m (52 to 250 lbf·ft)", Page, StringComparison.Ordinal);

    private static string Built(string register)
    {
        var files = Repo.Files(Repo.OneBrake).Where(f => f.Path != "register.yaml").Append(RawFile.Of("register.yaml", Encoding.UTF8.GetBytes(register))).ToList();
        return Encoding.UTF8.GetString(Pipeline.Build(Pipeline.Check(files), "0.0.0").Single(f => f.Path == "tools/crane-truck.html").Bytes.Span);
    }
}
