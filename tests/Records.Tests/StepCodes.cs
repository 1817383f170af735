using Witnessmark.Records.Sheets;

namespace Witnessmark.Records.Tests;

public sealed class StepCodes
{
    [Theory]
    // ISO/IEC 7064:2003, 10.1.2, example; seen as a test case in public implementations of the standard
    [InlineData("0794", 5)]
    // 794623 and 002006673085: test values of the open-source library stdnum (util/iso7064.spec)
    [InlineData("79462", 3)]
    [InlineData("00200667308", 5)]
    public void The_check_digit_agrees_with_published_examples(string digits, int check) =>
        Assert.Equal(check, StepCode.CheckDigitOf(digits));

    [Fact]
    public void Any_one_wrong_digit_changes_the_check_digit()
    {
        for (var number = 1; number <= 99; number++)
            for (var other = 1; other <= 99; other++)
                if (Differ(number, other) == 1)
                    Assert.NotEqual(new StepCode(number, null).CheckDigit, new StepCode(other, null).CheckDigit);
    }

    [Fact]
    public void A_performed_step_prints_both_numbers() => Assert.StartsWith("16.6/", new StepCode(16, 6).ToString(), StringComparison.Ordinal);

    private static int Differ(int a, int b) => $"{a:00}".Zip($"{b:00}").Count(p => p.First != p.Second);
}
