using System.Reflection;
using Witnessmark.Language.Model;

namespace Witnessmark.Rendering.Tests;

public class WordsTests
{
    public static TheoryData<string> Names => [.. Properties.Select(p => p.Name)];

    private static IEnumerable<PropertyInfo> Properties =>
        typeof(Words).GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(p => p.PropertyType == typeof(string) && p.Name != nameof(Words.Language));

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_word_is_there_in_both_languages(string name)
    {
        var (english, spanish) = (In(Words.English, name), In(Words.Spanish, name));
        Assert.NotEqual("", english);
        Assert.NotEqual("", spanish);
        // "no" is the same word with another meaning in neither list: every word of ours differs
        Assert.NotEqual(english, spanish);
    }

    [Fact]
    public void The_signal_words_are_those_of_the_trade() =>
        Assert.Equal(
            ["NOTA", "AVISO", "PRECAUCIÓN", "ADVERTENCIA", "PELIGRO"],
            Enum.GetValues<SignalWord>().Select(Words.Spanish.Signal));

    [Theory]
    [InlineData("es", "es")]
    [InlineData("es-CL", "es")]
    [InlineData("en", "en")]
    [InlineData("est", "en")]
    [InlineData(null, "en")]
    public void The_language_is_the_procedures(string? written, string expected) => Assert.Equal(expected, Words.Of(written).Language);

    [Theory]
    [InlineData("Maker's data", "site rules", "local law", "licensed practice")]
    public void The_standing_notice_names_all_four(params string[] parts) =>
        Assert.All(parts, p => Assert.Contains(p, Words.English.StandingNotice, StringComparison.Ordinal));

    private static string In(Words words, string name) => (string)typeof(Words).GetProperty(name)!.GetValue(words)!;
}
