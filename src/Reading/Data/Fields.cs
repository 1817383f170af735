using System.Collections.Immutable;
using System.Globalization;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;

namespace Witnessmark.Reading.Data;

/// <summary>
/// The keys of one thing, read one by one. A value of the wrong kind is reported in the words of the trade and read as if it
/// were not there; <see cref="Done"/> reports the keys that nobody asked for.
/// </summary>
internal sealed partial class Fields
{
    private const int MostCounted = 999;

    private readonly DataMap _map;
    private readonly Dictionary<string, DataEntry> _entries = new(StringComparer.Ordinal);
    private readonly HashSet<string> _asked = new(StringComparer.Ordinal);

    /// <param name="map">The keys and values.</param>
    /// <param name="what">Whose they are, as a message calls it: <c>wheel-nuts</c>, <c>the data sheet</c>.</param>
    /// <param name="findings">Takes what is wrong.</param>
    public Fields(DataMap map, string what, FindingList findings)
    {
        _map = map;
        foreach (var entry in map.Entries)
            _entries.TryAdd(entry.Key.Value, entry);
        What = what;
        Findings = findings;
    }

    public string What { get; }

    public FindingList Findings { get; }

    public DataMap Map => _map;

    /// <summary>Where its name stands, for what is missing in it; null: at its first key.</summary>
    public Location? NamedAt { get; init; }

    /// <summary>Whether a key without a value counts as not written, as on a form that is filled in bit by bit.</summary>
    public bool BlanksMayStay { get; init; }

    public bool Has(string key) => _entries.ContainsKey(key);

    /// <summary>The value as written, of whatever kind.</summary>
    public DataNode? Node(string key) => Entry(key)?.Value;

    public Located<string>? Text(string key, string example = "") => Entry(key) is { } entry ? TextOf(entry, "a text", example) : null;

    /// <summary>A name that conditions and steps can quote: no comma, bracket or equals sign in it.</summary>
    public Located<string>? Name(string key, string example = "") =>
        Entry(key) is { } entry && TextOf(entry, "a name", example) is { } name && Names.Usable(name, Findings) ? name : null;

    /// <summary>The name of a whole file. It is also the name of a page and of a sheet: letters, digits and hyphens.</summary>
    public Located<string>? Id(string key, string example) => Name(key, example) is { } name && Names.UsableForFile(name, Findings) ? name : null;

    /// <summary>A whole number, from 1 up to what a person could count.</summary>
    public Located<int>? Count(string key, string example = "", int least = 1, int most = MostCounted)
    {
        if (Entry(key) is not { } entry || TextOf(entry, "a whole number", example) is not { } text)
            return null;
        var isNumber = text.Value.All(char.IsAsciiDigit);
        if (isNumber && int.TryParse(text.Value, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number >= least && number <= most)
            return text.As(number);
        var belongs = isNumber ? $"a whole number from {Say.Number(least)} to {Say.Number(most)}" : "a whole number";
        WrongKind(entry, $"`{Say.Short(text.Value)}`", belongs, example.Length > 0 ? example : "12");
        return null;
    }

    public Located<bool>? YesNo(string key) => OneOf(key, "yes", "no") is { } word ? word.As(word.Value == "yes") : null;

    /// <summary>One of a few words.</summary>
    public Located<string>? OneOf(string key, params ImmutableArray<string> words)
    {
        if (Entry(key) is not { } entry || TextOf(entry, Say.Or(words), words[0]) is not { } text)
            return null;
        if (words.Contains(text.Value))
            return text;
        Findings.Add(Names.NotInList(text, $"`{key}` of {What}", words));
        return null;
    }

    /// <summary>Several of a few words.</summary>
    public ImmutableArray<Located<string>> ListOf(string key, params ImmutableArray<string> words)
    {
        var list = List(key, $"[{words[0]}]");
        foreach (var word in list.Where(w => !words.Contains(w.Value)))
            Findings.Add(Names.NotInList(word, $"`{key}` of {What}", words));
        return [.. list.Where(w => words.Contains(w.Value))];
    }

    /// <summary>Words or texts, in square brackets or one a line; a single word is a list of one.</summary>
    public ImmutableArray<Located<string>> List(string key, string example = "[a, b]")
    {
        if (Entry(key) is not { } entry)
            return [];
        if (entry.Value is DataList list)
            return [.. list.Items.Select(item => TextOf(entry with { Value = item }, "a text", example)).OfType<Located<string>>()];
        if (TextOf(entry, "a list", example) is not { } single)
            return [];
        if (!single.Value.Contains(',', StringComparison.Ordinal))
            return [single];
        WrongKind(entry, $"one text with a comma in it, `{Say.Short(single.Value)}`", "a list", $"[{single.Value}]");
        return [];
    }

    /// <summary>The keys below a key.</summary>
    public Fields? Below(string key, string what, string example) => MapOf(key, example) is { } map ? new Fields(map, what, Findings) { BlanksMayStay = BlanksMayStay } : null;

    /// <summary>A list whose items have keys of their own but no names.</summary>
    public IEnumerable<Fields> Members(string key, string example)
    {
        if (Entry(key) is not { } entry)
            yield break;
        if (entry.Value is not DataList list)
        {
            WrongKind(entry, Kind(entry.Value), "a list, each item behind `- `,", $"[{example}]");
            yield break;
        }
        foreach (var (number, item) in list.Items.Index().Where(i => !(BlanksMayStay && IsBlank(i.Item))))
            if (item is DataMap map)
                yield return new Fields(map, $"item {Say.Number(number + 1)} of `{key}`", Findings) { BlanksMayStay = BlanksMayStay };
            else
                WrongKind(entry with { Value = item }, Kind(item), "a list of `key: value`", $"[{example}]");
    }

    /// <summary>Things declared below a key, each under its name with keys of its own. Each may name its <c>basis</c>.</summary>
    /// <param name="key">The section.</param>
    /// <param name="example">What one thing looks like.</param>
    /// <param name="make">Makes one of name and keys.</param>
    /// <param name="shortFor">The key that a value without keys stands for: <c>engine: [stopped, running]</c> is its <c>values</c>.</param>
    public IEnumerable<T> Each<T>(string key, string example, Func<Located<string>, Fields, T> make, string? shortFor = null)
    {
        foreach (var entry in MapOf(key, $"{{name: {example}}}")?.Entries ?? [])
        {
            if (!Names.Usable(entry.Key, Findings))
                continue;
            if (OwnKeys(entry, shortFor) is not { } own)
            {
                WrongKind(entry, Kind(entry.Value), "a list of its facts, each `key: value`,", example, key);
                continue;
            }
            var fields = new Fields(own, entry.Key.Value, Findings) { NamedAt = entry.Key.At };
            yield return make(entry.Key, fields);
            fields.Text("basis");
            fields.Done();
        }
    }

    private static DataMap? OwnKeys(DataEntry entry, string? shortFor) => entry.Value switch
    {
        DataMap map => map,
        DataText { Text: "" } => null,
        _ when shortFor is not null => new DataMap([new DataEntry(entry.Key.As(shortFor), entry.Value)], entry.Value.At),
        _ => null,
    };

    /// <summary>Reports keys that must be there and are not.</summary>
    public void Needs(params ImmutableArray<string> keys)
    {
        foreach (var key in keys.Where(key => !Has(key)))
            Findings.Add(Names.Missing(key, What, NamedAt ?? Names.Beginning(_map)));
    }

    /// <summary>Reports keys that nobody asked for, and those that must be there and are not.</summary>
    public void Done(params ImmutableArray<string> required)
    {
        Needs(required);
        foreach (var entry in _map.Entries.Where(e => !_asked.Contains(e.Key.Value)))
            Findings.Add(Names.Unknown(entry.Key, What, _asked.Where(a => !Has(a))));
    }

    private DataEntry? Entry(string key)
    {
        _asked.Add(key);
        return _entries.TryGetValue(key, out var entry) && !entry.Value.IsUnread() && !(BlanksMayStay && IsBlank(entry.Value)) ? entry : null;
    }

    private static bool IsBlank(DataNode value) => value is DataText { Text: "" };

    private DataMap? MapOf(string key, string example)
    {
        if (Entry(key) is not { } entry)
            return null;
        if (entry.Value is DataMap map)
            return map;
        WrongKind(entry, Kind(entry.Value), "a list of `key: value`", example);
        return null;
    }

    private Located<string>? TextOf(DataEntry entry, string belongs, string example)
    {
        if (entry.Value is DataText { Text.Length: > 0 } text && !text.IsUnread())
            return text.Located();
        WrongKind(entry, Kind(entry.Value), belongs, example);
        return null;
    }
}
