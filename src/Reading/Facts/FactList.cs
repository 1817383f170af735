using System.Collections.Immutable;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;

namespace Witnessmark.Reading.Facts;

/// <summary>The facts of one place: a step, or a heading.</summary>
internal sealed class FactList(FactPlace place, FindingList findings)
{
    private readonly ImmutableArray<Fact>.Builder _facts = ImmutableArray.CreateBuilder<Fact>(4);

    public void Add(Bullet bullet)
    {
        if (FactReader.Read(bullet, place, findings) is not { } fact)
            return;
        if (!fact.Word.Row().Often && First(fact.Word) is { } first)
            findings.Add(FactFindings.Twice(fact, first));
        else
            _facts.Add(fact);
    }

    private Fact? First(FactWord word)
    {
        // by number: the builder's own enumerator is an object each time
        for (var i = 0; i < _facts.Count; i++)
            if (_facts[i].Word == word)
                return _facts[i];
        return null;
    }

    public bool IsEmpty => _facts.Count == 0;

    public ImmutableArray<Fact> All => _facts.ToImmutable();
}
