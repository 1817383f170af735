using System.Text;
using System.Text.RegularExpressions;
using Witnessmark.Harness;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Records;
using Witnessmark.Records.Receiving;

namespace Witnessmark.Records.Tests;

/// <summary>
/// The sign-offs in the demo workshop hold against the demo as it stands. A word changed in the demo changes its hash:
/// WITNESSMARK_APPROVE=1 writes hash and mark of today into them, as if the sheets had been printed today.
/// </summary>
public sealed partial class DemoRecords
{
    public static TheoryData<string, ReceptionState> All => new()
    {
        { "2031-06-11-unit-14-CL.yaml", ReceptionState.Complete },
        { "2031-06-13-unit-14-CR.yaml", ReceptionState.Open },
        { "2033-07-19-unit-14-CL.yaml", ReceptionState.Complete },
    };

    [Theory]
    [MemberData(nameof(All))]
    public void A_record_of_the_demo_holds_against_it(string name, ReceptionState state)
    {
        var path = Repo.Path("tests", "Workshops", "one-brake", "records", name);
        var typed = File.ReadAllText(path);
        var today = Stamped(typed);
        if (Environment.GetEnvironmentVariable("WITNESSMARK_APPROVE") == "1")
            File.WriteAllText(path, today);
        else
            Assert.True(today == typed, $"{name} was typed from another version of the demo. Run with WITNESSMARK_APPROVE=1.");
        var findings = new FindingList();
        var signOff = SignOffReader.Read(RawFile.Of(name, Encoding.UTF8.GetBytes(today)), findings);
        var result = Reception.Hold(signOff!, Demo.Registered, []);
        Assert.Equal(state, result.State);
        Assert.Empty(findings.InReadingOrder());
    }

    [Fact]
    public void Every_record_of_the_demo_is_held() =>
        Assert.Equal(All.Select(r => $"records/{r.Data.Item1}"), Repo.Records(Repo.OneBrake).Select(r => r.Path));

    private static string Stamped(string typed)
    {
        var hash = HashLine().Replace(typed, $"hash: {Demo.Hash.Short12}");
        var head = SignOffReader.Read(RawFile.Of("record.yaml", Encoding.UTF8.GetBytes(hash)), new FindingList())!;
        return CopyLine().Replace(hash, $"copy: {YamlScalar.Of(DemoRegister.Mark(DemoRegister.CopyOf(head)))}");
    }

    [GeneratedRegex("^hash: .*$", RegexOptions.Multiline)]
    private static partial Regex HashLine();

    [GeneratedRegex("^copy: .*$", RegexOptions.Multiline)]
    private static partial Regex CopyLine();
}
