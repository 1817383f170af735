using System.Globalization;

namespace Witnessmark.Records.Sheets;

/// <summary>
/// A step's printed code: its number, the number inside a performed part, and a check digit that catches a wrong or
/// swapped digit when the sheet is typed. ISO/IEC 7064, MOD 11,10.
/// </summary>
public readonly record struct StepCode(int Number, int? Inner)
{
    private const int Modulus = 10;

    /// <summary><c>24</c> or <c>30.6</c></summary>
    public string Plain => Inner is { } inner ? $"{Number}.{inner}" : Number.ToString(CultureInfo.InvariantCulture);

    public int CheckDigit => CheckDigitOf(Inner is { } inner
        ? string.Create(CultureInfo.InvariantCulture, $"{Number:00}{inner:00}")
        : Number.ToString("00", CultureInfo.InvariantCulture));

    /// <summary><c>24/8</c>, <c>30.6/2</c></summary>
    public override string ToString() => $"{Plain}/{CheckDigit}";

    /// <summary>Hybrid system MOD 11,10: the digit that makes the check sum come out at 1.</summary>
    public static int CheckDigitOf(string digits)
    {
        var p = Modulus;
        foreach (var digit in digits)
        {
            var s = (p + (digit - '0')) % Modulus;
            p = (s == 0 ? Modulus : s) * 2 % (Modulus + 1);
        }
        return (Modulus + 1 - p) % Modulus;
    }
}
