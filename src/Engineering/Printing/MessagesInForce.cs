namespace Witnessmark.Engineering.Printing;

/// <summary>Safety messages that hold for one step, the first one on top, on one paper. Millimetres.</summary>
public sealed record MessagesInForce(MessageRoom Paper)
{
    /// <summary>All of them.</summary>
    public double Take { get; private init; }

    /// <summary>Those that are said again where the steps go on to another page.</summary>
    public double Repeated { get; private init; }

    public bool LastIsRepeated { get; private init; } = true;

    /// <summary>Lines that the last one could have and be repeated.</summary>
    public int LastMayHave { get; private init; }

    /// <summary>One more, below the others.</summary>
    public MessagesInForce And(IEnumerable<string> paragraphs)
    {
        var lines = Paper.Lines(paragraphs);
        var (height, most) = (MessageRoom.Height(lines), MessageRoom.MostLines(Paper.Page - Take));
        return this with { Take = Take + height, Repeated = Repeated + (lines <= most ? height : 0), LastIsRepeated = lines <= most, LastMayHave = most };
    }
}
