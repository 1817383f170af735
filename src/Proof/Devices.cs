using System.Collections.Immutable;
using Witnessmark.Language.Model;

namespace Witnessmark.Proof;

/// <summary>Temporary devices go in once and come out once; what they turn, they turn back.</summary>
internal sealed class Devices(Work work, Situation situation, Ways ways, Worths worths, Breaches breaches)
{
    private const string Placed = "placed";
    private const string Stored = "stored";

    public void Move(Amount amount, DeviceKind kind, string value, Doing doing)
    {
        var other = value == Placed ? Stored : Placed;
        foreach (var tag in Meant(amount, value, doing))
        {
            var wrong = ways.Mapped(situation.Of(tag), v => worths.Is(v, [value]));
            var guard = ways.And(doing.Guard, situation.Alive);
            breaches.Cell(value == Placed ? BreachKind.PlacedTwice : BreachKind.NotPlaced, tag, ways.And(guard, ways.Where(wrong, Ways.Yes)), doing.At);
            // where nobody says, it is as it has to be
            situation.Write(tag, ways.And(doing.Guard, ways.Where(wrong, Ways.Unsure)), ways.Always(worths.Number(other)), null);
            Turn(kind, amount, value, doing);
            work.Change(kind.Id.Value, tag, worths.Number(value), doing);
        }
    }

    /// <summary>The tags that are named; a number of one kind are those that are not there yet, in the order declared.</summary>
    private ImmutableArray<string> Meant(Amount amount, string value, Doing doing)
    {
        var tags = doing.Names.Tags(amount.Thing.Value);
        if (amount.Count is not { } count)
            return tags;
        var free = tags.Where(t => !ways.CanBe(ways.And(doing.Guard, ways.Where(ways.Mapped(situation.Of(t), v => worths.Is(v, [value])), Ways.Yes)), Ways.Yes));
        return [.. free.Concat(tags).Distinct().Take(count.Value)];
    }

    /// <summary><c>turns: cooling-line open to blanked</c>: in makes the one of the other, out takes it back.</summary>
    private void Turn(DeviceKind kind, Amount amount, string value, Doing doing)
    {
        if (kind.Turns is not { } turn)
            return;
        var made = value == Placed ? turn.To : turn.From;
        foreach (var cell in doing.Names.Cells(turn.State.Value, amount.AtPlace?.Value))
            work.Change(turn.State.Value, cell, worths.Number(made.Value), doing);
    }
}
