using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Data;

namespace Witnessmark.Reading.Sheets;

internal static class TestReader
{
    /// <summary>The <c>tests:</c> of a sheet or of a procedure's front matter.</summary>
    public static Items<TestItem> Tests(Fields fields) => new(fields.Each("tests", "{medium: hydraulic oil, pressure: 4.0 MPa, hold: 10 min}", One));

    private static TestItem One(Located<string> id, Fields test)
    {
        var (when, after) = test.LostWhen();
        var item = new TestItem(id, test.Map)
        {
            Medium = test.Text("medium", "hydraulic oil"),
            Pressure = test.Quantity("pressure", "4.0 MPa", "pressure"),
            AtMost = test.Quantity("at-most", "4.4 MPa", "pressure"),
            Settle = test.Quantity("settle", "5 min", "time"),
            Hold = test.Quantity("hold", "10 min", "time"),
            SecondLook = test.Quantity("second-look", "10 min", "time"),
            GaugeRange = test.Range("gauge", "0 to 10 MPa"),
            Readings = test.List("readings", "[pedal-pressure]"),
            Passes = test.Text("passes", "pedal-pressure = holds"),
            What = test.Text("what", "machine held on the service brake"),
            LostWhen = when,
            LostAfter = after,
            Basis = test.Text("basis", "maker data"),
        };
        test.Text("load", "gross 61 400 kg");
        test.Quantity("speed", "10 mph", "speed");
        return item;
    }
}
