using Witnessmark.Engineering.Printing;

namespace Witnessmark.Engineering.Tests.Printing;

public class SansBoldTests
{
    /// <summary>An em of 14 pt is 4.9389 mm; A is 722, v 556, e 556 thousandths wide.</summary>
    [Fact]
    public void Words_are_as_wide_as_their_letters() => Assert.Equal((722 + 556 + 556) / 1000.0 * 4.9389, SansBold.Width("Ave", SheetMeasures.Body), 0.001);

    [Fact]
    public void A_letter_that_the_table_does_not_have_is_taken_as_wide_as_the_type_is_high() =>
        Assert.Equal(4.9389, SansBold.Width("轴", SheetMeasures.Body), 0.001);

    [Theory]
    [InlineData("Oil every disc", 200, 1)]
    [InlineData("Oil every disc", 25, 2)]
    [InlineData("Oil every disc", 1, 3)]
    [InlineData("", 10, 1)]
    public void Lines_break_at_spaces(string text, double column, int lines) => Assert.Equal(lines, SansBold.Lines(text, SheetMeasures.Body, column));

    [Fact]
    public void A_message_below_others_has_a_quarter_of_what_they_leave()
    {
        Assert.Equal(7, MessageRoom.MostLines(MessageRoom.Letter.Page));
        Assert.Equal(8, MessageRoom.MostLines(MessageRoom.A4.Page));
        Assert.Equal(5, MessageRoom.MostLines(MessageRoom.Letter.Page - (2 * MessageRoom.Height(3))));
        Assert.Equal(0, MessageRoom.MostLines(30));
    }

    /// <summary>43.8 mm each: a quarter of the 219.4 mm of a Letter page is 54.9, of the 175.6 below one 43.9, of the 131.9 below two 33.0.</summary>
    [Fact]
    public void Of_three_messages_of_six_lines_a_page_repeats_two()
    {
        string[] six = ["Pinch", "a", "b", "c", "d", "e"];
        var two = new MessagesInForce(MessageRoom.Letter).And(six).And(six);
        var three = two.And(six);
        Assert.True(two.LastIsRepeated);
        Assert.False(three.LastIsRepeated);
        Assert.Equal(3 * MessageRoom.Height(6), three.Take, 0.01);
        Assert.Equal(2 * MessageRoom.Height(6), three.Repeated, 0.01);
    }
}
