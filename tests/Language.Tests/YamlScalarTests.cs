using Witnessmark.Language.Text;

namespace Witnessmark.Language.Tests;

public sealed class YamlScalarTests
{
    [Theory]
    [InlineData("WB-40", "WB-40")]
    [InlineData("independent mechanic", "independent mechanic")]
    [InlineData("0417", "\"0417\"")]
    [InlineData("NO", "\"NO\"")]
    [InlineData("- strip", "\"- strip\"")]
    [InlineData("a \"b\" \\ c: d", "\"a \\\"b\\\" \\\\ c: d\"")]
    [InlineData("two\nlines", "two lines")]
    [InlineData("", "\"\"")]
    public void A_text_is_quoted_where_a_reader_of_YAML_could_take_it_for_something_else(string text, string written) => Assert.Equal(written, YamlScalar.Of(text));
}
