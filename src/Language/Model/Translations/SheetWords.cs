using System.Collections.Immutable;
using Witnessmark.Language.Text;

namespace Witnessmark.Language.Model;

/// <summary>
/// Every word of the data that the sheet of a procedure prints: what its translations together have to give. Prose, titles
/// and messages are not among them; they are compared step by step.
/// </summary>
public static class SheetWords
{
    private static readonly Once<Scope, ImmutableArray<SheetWord>> InScope = new(Find);

    public static ImmutableArray<SheetWord> Of(Scope scope) => InScope.Of(scope);

    private static ImmutableArray<SheetWord> Find(Scope scope)
    {
        var words = new WordCollection();
        Head(scope, words);
        Within(scope, scope, _ => null, [scope.Procedure.Id.Value], words);
        return words.All;
    }

    private static void Head(Scope scope, WordCollection words)
    {
        words.Text(scope.Machine?.Title);
        words.Text(scope.Library.Workshop.Notice);
        words.Text(scope.Library.Workshop.Help);
        foreach (var (role, _) in scope.Procedure.Crew)
            words.Name(role);
        foreach (var part in scope.Procedure.Parts.Select(p => p.Name).OfType<Located<string>>())
            words.Name(part);
    }

    /// <param name="root">Of the procedure that the sheet is for.</param>
    /// <param name="own">Of the procedure whose facts are read: the same, or a performed part.</param>
    /// <param name="given">What a parameter stands for.</param>
    private static void Within(Scope root, Scope own, Func<string, string?> given, ImmutableHashSet<string> within, WordCollection words)
    {
        var facts = new FactSheetWords(root, own, given, words);
        foreach (var part in own.Procedure.Parts)
        {
            facts.Of([.. part.Facts.Where(f => !IsContract(f) || own.Procedure == root.Procedure)]);
            foreach (var section in part.Sections)
            {
                facts.Of(section.Facts);
                foreach (var step in section.Steps)
                    facts.Of(step.Facts);
            }
        }
        foreach (var perform in own.Procedure.Steps.SelectMany(s => s.All(FactWord.Perform)).Select(f => f.Value).OfType<PerformValue>())
            if (root.Library.Procedure(perform.Procedure.Value) is { } callee && !within.Contains(callee.Id.Value))
                Within(root, new Scope(root.Library, callee, root.Machine), Given(perform, facts), within.Add(callee.Id.Value), words);
    }

    /// <summary>What must be so before and after is printed of the procedure that the sheet is for, not of what it performs.</summary>
    private static bool IsContract(Fact fact) => fact.Word is FactWord.StartsWith or FactWord.EndsWith;

    private static Func<string, string?> Given(PerformValue perform, FactSheetWords caller)
    {
        var values = perform.Arguments.DistinctBy(a => a.Name.Value).ToImmutableDictionary(a => a.Name.Value, a => caller.Filled(a.Value.Value));
        return name => values.GetValueOrDefault(name);
    }
}

/// <summary>Words found so far, each once.</summary>
internal sealed class WordCollection
{
    private readonly List<SheetWord> _words = [];
    private readonly HashSet<(string, bool)> _seen = [];

    public ImmutableArray<SheetWord> All => [.. _words];

    public void Text(Located<string>? text)
    {
        if (text is { Value.Length: > 0 } t)
            Add(new SheetWord(t.Value, null, true, t.At));
    }

    public void Text(string text, Location at) => Text(new Located<string>(text, at));

    public void Name(Located<string> name) => Name(name.Value, name.At);

    public void Name(string name, Location at) => Add(new SheetWord(name, null, false, at));

    public void Value(Located<string> value, string? of) => Add(new SheetWord(value.Value, of, false, value.At));

    private void Add(SheetWord word)
    {
        // what a parameter stands for is known where the part is performed
        if (!word.IsStamped && word.Written is not ['{', ..] && word.Of is not ['{', ..] && _seen.Add((word.Key, word.IsText)))
            _words.Add(word);
    }
}
