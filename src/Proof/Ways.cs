using System.Collections.Immutable;

namespace Witnessmark.Proof;

/// <summary>
/// Values that hang on how the work turned out, each as a small diagram: a question, and for each answer the rest. Equal diagrams are
/// one number, so that two are the same when their numbers are. Questions stand in the order in which the work asks them.
/// </summary>
/// <param name="most">How many diagrams may be made: past that <see cref="TooManyWaysException"/>, never a pass.</param>
internal sealed class Ways(int most = Ways.Most)
{
    public const int Most = 500_000;

    /// <summary>Ends of conditions: the first three ends are always these.</summary>
    public const int No = 0;
    public const int Yes = 1;
    public const int Unsure = 2;

    private const int End = int.MaxValue;

    private readonly List<Node> _nodes = [new(End, No, []), new(End, Yes, []), new(End, Unsure, [])];
    private readonly Dictionary<Node, int> _known = new() { [new(End, No, [])] = No, [new(End, Yes, [])] = Yes, [new(End, Unsure, [])] = Unsure };
    private readonly Dictionary<(Joint, int, int), int> _joined = [];
    private readonly Dictionary<(int, int, int), int> _chosen = [];

    public int Count => _nodes.Count;

    /// <summary>The same however the work turns out.</summary>
    public int Always(int value) => Made(new Node(End, value, []));

    /// <summary>One end for each answer.</summary>
    public int Asked(int question, IEnumerable<int> ends) => Made(new Node(question, 0, [.. ends.Select(Always)]));

    /// <summary>Its value when it is the same on all ways.</summary>
    public int? Single(int way) => _nodes[way] is { Question: End } node ? node.Value : null;

    public int And(int a, int b) => a == No || b == No ? No : a == Yes ? b : b == Yes || a == b ? a : Joined(Joint.And, a, b);

    public int Or(int a, int b) => a == Yes || b == Yes ? Yes : a == No ? b : b == No || a == b ? a : Joined(Joint.Or, a, b);

    /// <summary>The ways that end so.</summary>
    public int Where(int way, int end) => Mapped(way, v => v == end ? Yes : No);

    public int Not(int way) => Mapped(way, v => v == Unsure ? Unsure : Yes - v);

    public int And(int a, int b, int c) => And(And(a, b), c);

    /// <param name="guard">Of which no end is <see cref="Unsure"/>.</param>
    public int Choose(int guard, int then, int otherwise)
    {
        if (guard == Yes || then == otherwise)
            return then;
        if (guard == No)
            return otherwise;
        if (_chosen.TryGetValue((guard, then, otherwise), out var known))
            return known;
        var first = Math.Min(_nodes[guard].Question, Math.Min(_nodes[then].Question, _nodes[otherwise].Question));
        var branches = new int[Answers(first, guard, then, otherwise)];
        for (var i = 0; i < branches.Length; i++)
            branches[i] = Choose(Branch(guard, first, i), Branch(then, first, i), Branch(otherwise, first, i));
        return _chosen[(guard, then, otherwise)] = Made(new Node(first, 0, branches));
    }

    /// <summary>Each end turned into another.</summary>
    public int Mapped(int way, Func<int, int> into) => Mapped(way, into, []);

    /// <summary>Whether some way ends so.</summary>
    public bool CanBe(int way, int value) => Ends(way).Contains(value);

    /// <summary>All ends that it has.</summary>
    public HashSet<int> Ends(int way)
    {
        var (ends, seen, open) = (new HashSet<int>(), new HashSet<int>(), new Stack<int>([way]));
        while (open.TryPop(out var next))
            if (seen.Add(next))
                if (_nodes[next].Question == End)
                    ends.Add(_nodes[next].Value);
                else
                    foreach (var branch in _nodes[next].Branches)
                        open.Push(branch);
        return ends;
    }

    /// <summary>The questions that it hangs on.</summary>
    public HashSet<int> Questions(int way)
    {
        var (questions, seen, open) = (new HashSet<int>(), new HashSet<int>(), new Stack<int>([way]));
        while (open.TryPop(out var next))
            if (seen.Add(next) && _nodes[next] is { Question: not End } node)
            {
                questions.Add(node.Question);
                foreach (var branch in node.Branches)
                    open.Push(branch);
            }
        return questions;
    }

    /// <summary>The fewest answers after which it ends so.</summary>
    public ImmutableSortedDictionary<int, int>? Shortest(int way, int value)
    {
        var open = new Queue<(int Way, ImmutableSortedDictionary<int, int> Answers)>([(way, ImmutableSortedDictionary<int, int>.Empty)]);
        var seen = new HashSet<int>();
        while (open.TryDequeue(out var next))
        {
            var node = _nodes[next.Way];
            if (node.Question == End && node.Value == value)
                return next.Answers;
            for (var i = 0; i < node.Branches.Length; i++)
                if (seen.Add(node.Branches[i]))
                    open.Enqueue((node.Branches[i], next.Answers.Add(node.Question, i)));
        }
        return null;
    }

    /// <summary>Its value when the questions are answered so; a question that is not among them has its first answer.</summary>
    public int At(int way, IReadOnlyDictionary<int, int> answers)
    {
        while (_nodes[way].Question != End)
            way = _nodes[way].Branches[answers.GetValueOrDefault(_nodes[way].Question)];
        return _nodes[way].Value;
    }

    private int Joined(Joint joint, int a, int b)
    {
        // both are the same either way round
        if (a > b)
            (a, b) = (b, a);
        if (_joined.TryGetValue((joint, a, b), out var known))
            return known;
        int made;
        if (_nodes[a].Question == End && _nodes[b].Question == End)
            made = Always(Both(joint, _nodes[a].Value, _nodes[b].Value));
        else
        {
            var first = Math.Min(_nodes[a].Question, _nodes[b].Question);
            var branches = new int[Answers(first, a, b)];
            for (var i = 0; i < branches.Length; i++)
                branches[i] = joint == Joint.And ? And(Branch(a, first, i), Branch(b, first, i)) : Or(Branch(a, first, i), Branch(b, first, i));
            made = Made(new Node(first, 0, branches));
        }
        return _joined[(joint, a, b)] = made;
    }

    /// <summary>What is not known stays not known, unless the other settles it.</summary>
    private static int Both(Joint joint, int a, int b) => joint == Joint.And
        ? a == No || b == No ? No : a == Unsure || b == Unsure ? Unsure : Yes
        : a == Yes || b == Yes ? Yes : a == Unsure || b == Unsure ? Unsure : No;

    private int Mapped(int way, Func<int, int> into, Dictionary<int, int> done)
    {
        if (done.TryGetValue(way, out var known))
            return known;
        var node = _nodes[way];
        return done[way] = node.Question == End ? Always(into(node.Value)) : Made(new Node(node.Question, 0, [.. node.Branches.Select(b => Mapped(b, into, done))]));
    }

    private int Branch(int way, int question, int answer) => _nodes[way].Question == question ? _nodes[way].Branches[answer] : way;

    private int Answers(int question, params ReadOnlySpan<int> ways)
    {
        foreach (var way in ways)
            if (_nodes[way].Question == question)
                return _nodes[way].Branches.Length;
        return 0;
    }

    private int Made(Node node)
    {
        if (node.Branches is [var only, ..] && Array.TrueForAll(node.Branches, b => b == only))
            return only;
        if (_known.TryGetValue(node, out var known))
            return known;
        if (_nodes.Count >= most)
            throw new TooManyWaysException();
        _nodes.Add(node);
        return _known[node] = _nodes.Count - 1;
    }

    private enum Joint
    {
        And,
        Or,
    }

    private sealed record Node(int Question, int Value, int[] Branches)
    {
        public bool Equals(Node? other) => other is not null && Question == other.Question && Value == other.Value && Branches.AsSpan().SequenceEqual(other.Branches);

        public override int GetHashCode()
        {
            var hash = new HashCode();
            hash.Add(Question);
            hash.Add(Value);
            foreach (var branch in Branches)
                hash.Add(branch);
            return hash.ToHashCode();
        }
    }
}
