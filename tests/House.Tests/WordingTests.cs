using System.Text.RegularExpressions;

namespace Witnessmark.House.Tests;

/// <summary>The small parts of a sentence have one home, so that two findings never say one thing in two ways.</summary>
public sealed partial class WordingTests
{
    [Fact]
    public void A_declared_name_is_put_into_words_in_one_place() =>
        Assert.Equal(["src/Language/Wording/DeclaredName.cs"], House.Files("src", ".cs").Where(f => House.Read(f).Contains("Replace('-', ' ')", StringComparison.Ordinal)));

    [Fact]
    public void A_list_is_put_into_words_in_one_place() =>
        Assert.Equal(["src/Language/Wording/Say.cs"], House.Files("src", ".cs").Where(f => LastOfList().IsMatch(House.Read(f))));

    [GeneratedRegex(@"\} (?:and|or|\{last\}) \{\w+\[\^1\]\}")]
    private static partial Regex LastOfList();
}
