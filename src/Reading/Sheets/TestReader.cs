using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Data;
using Witnessmark.Reading.Facts;
using Witnessmark.Reading.Shapes;

namespace Witnessmark.Reading.Sheets;

internal static class TestReader
{
    private static readonly Shape Shape = new(
        "test",
        "a test",
        Row.Text("medium", "hydraulic oil", "what presses"),
        Row.Quantity("pressure", "4.0 MPa", "the pressure that is held", "pressure"),
        Row.Quantity("at-most", "4.4 MPa", "the pressure that is never passed", "pressure"),
        Row.Quantity("settle", "5 min", "waiting before the clock runs", "time").OrZero,
        Row.Quantity("hold", "10 min", "how long it is held", "time"),
        Row.Quantity("second-look", "10 min", "how long after the test somebody looks again", "time"),
        Row.Range("gauge", "0 to 10 MPa", "range of the gauge"),
        Row.List("readings", "[pedal-pressure]", "what is read"),
        Row.Text("passes", "pedal-pressure = holds", "when it is passed"),
        Row.Text("what", "machine held on the service brake", "what exactly is tried"),
        ConditionFields.LostWhenRow,
        Row.Text("load", "gross 61 400 kg", "with what load"),
        Row.Quantity("speed", "10 mph", "at what speed", "speed"),
        Row.Basis);

    /// <summary>The <c>tests:</c> of a sheet or of a procedure's front matter.</summary>
    public static readonly Row Section = Row.Each("tests", Shape, "{medium: hydraulic oil, pressure: 4.0 MPa, hold: 10 min}", "what is tried under pressure or load");

    public static Items<TestItem> Tests(Fields fields) => new(fields.Each(Section.Key, One));

    private static TestItem One(Located<string> id, Fields test)
    {
        var (when, after) = test.LostWhen();
        var passes = test.Text("passes");
        return new TestItem(id, test.Map)
        {
            Medium = test.Text("medium"),
            Pressure = test.Quantity("pressure"),
            AtMost = test.Quantity("at-most"),
            Settle = test.Quantity("settle"),
            Hold = test.Quantity("hold"),
            SecondLook = test.Quantity("second-look"),
            GaugeRange = test.Range("gauge"),
            Readings = test.List("readings"),
            Passes = passes,
            // what people judge is said in words
            PassesWhen = passes is { } text && Spelling.Sign.IsMatch(text.Value) ? ConditionReader.Read(text, test.Findings) : null,
            Load = test.Text("load"),
            Speed = test.Quantity("speed"),
            What = test.Text("what"),
            LostWhen = when,
            LostAfter = after,
            Basis = test.Text("basis"),
        };
    }
}
