using System.Globalization;

namespace Witnessmark.Engineering.Tests;

/// <summary>The largest deviation from a published table, for the test's output.</summary>
internal sealed class Deviation(string what)
{
    private double _largest;
    private string _at = "nowhere";
    private int _rows;

    public double Add(string row, double computed, double published)
    {
        var off = Math.Abs(computed - published) / Math.Abs(published);
        _rows++;
        if (off >= _largest)
            (_largest, _at) = (off, row);
        return off;
    }

    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"{what}: {_rows} rows, largest deviation {_largest * 100:0.000} % at {_at}");
}
