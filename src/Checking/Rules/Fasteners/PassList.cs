using System.Collections.Immutable;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;

namespace Witnessmark.Checking.Rules.Fasteners;

/// <summary>The passes of a group, or of the workshop for every group without its own.</summary>
/// <param name="Whose"><c>the workshop</c>, <c>hub-retainer-bolts</c></param>
internal sealed record PassList(string Whose, ImmutableArray<Located<TorquePass>> Passes)
{
    /// <summary>Those that bolts of this machine are tightened by; the workshop's come with every machine and are told once.</summary>
    public static IEnumerable<PassList> Of(Machine machine, Library library)
    {
        if (!library.Workshop.Passes.IsEmpty)
            yield return new PassList("the workshop", library.Workshop.Passes);
        foreach (var group in machine.Fasteners)
            if (!group.Passes.IsEmpty)
                yield return new PassList(group.Id.Value, group.Passes);
    }
}
