using Witnessmark.Language.Model;
using Witnessmark.Records.Hashing;

namespace Witnessmark.Rendering.Site;

/// <summary>Whether the text on a page is the one to work from, in words and in one.</summary>
/// <param name="Word">in force, changed, replaced, withdrawn, not released, no register</param>
/// <param name="Holds">Whether it is in force.</param>
internal sealed record Standing(string Word, string Says, bool Holds)
{
    /// <param name="hash">Of the text on the page, twelve digits or more.</param>
    public static Standing Of(Procedure procedure, Register register, string hash)
    {
        var (id, version) = (procedure.Id.Value, procedure.Version?.Value ?? "");
        var inForce = register.InForce(id);
        var compare = inForce is null || procedure.IsCommonPart ? "" : $" A sheet in hand is in force when its foot says {inForce.Version} and {ShortHash.Of(inForce.Hash.Value)}.";
        if (register.Released.IsEmpty)
            return new Standing("no register", "This workshop keeps no register: nobody can tell from here whether a sheet in hand is in force.", false);
        if (register.Find(id, version) is { } released && new ProcedureHash("", released.Hash.Value).IsBegunBy(hash))
            return inForce?.Version.Value == version ? new Standing("in force", $"In force since {TimeInForce.Of(register, id)[^1].From}.{compare}", true) : NoLonger(register, released, inForce is null ? " No version is in force." : compare);
        if (inForce is not null)
            return new Standing("changed", $"Changed since {inForce.Version} was released on {inForce.Date}: this text is not released and no sheet of it is for work.{compare}", false);
        return new Standing("not released", $"Not released: no version of {id} is in force, and no sheet of it is for work.", false);
    }

    private static Standing NoLonger(Register register, ReleasedVersion released, string now) =>
        register.Withdrawal(released) is { } withdrawn
            ? new Standing("withdrawn", $"Withdrawn on {withdrawn.Date} by {withdrawn.By}{(withdrawn.Why is { } why ? $": {why}." : ".")}{now}", false)
            : new Standing("replaced", $"Replaced: this text was released on {released.Date}, and another is in force.{now}", false);
}
