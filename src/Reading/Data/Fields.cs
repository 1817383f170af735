using System.Collections.Immutable;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;
using Witnessmark.Reading.Shapes;

namespace Witnessmark.Reading.Data;

/// <summary>
/// The keys of one thing, read one by one as its shape says. A value of the wrong kind is reported in the words of the trade
/// and read as if it were not there; <see cref="Done"/> reads what nobody asked for, so that a slip in it is found, and
/// reports the keys that the shape does not know.
/// </summary>
/// <param name="map">The keys and values.</param>
/// <param name="shape">What may stand there.</param>
/// <param name="findings">Takes what is wrong.</param>
/// <param name="what">Whose keys they are, as a message calls it: <c>wheel-nuts</c>; null: as the shape says.</param>
internal sealed partial class Fields(DataMap map, Shape shape, FindingList findings, string? what = null)
{
    private readonly Dictionary<string, DataEntry> _entries = ByKey(map);
    private readonly HashSet<string> _asked = new(StringComparer.Ordinal);
    private readonly List<Fields> _below = [];

    public string What { get; } = what ?? shape.What;

    public Shape Shape => shape;

    public FindingList Findings => findings;

    public DataMap Map => map;

    /// <summary>Where its name stands, for what is missing in it; null: at its first key.</summary>
    public Location? NamedAt { get; init; }

    private bool BlanksMayStay { get; init; } = shape.BlanksMayStay;

    public bool Has(string key) => _entries.ContainsKey(key);

    /// <summary>The value as written, of whatever kind.</summary>
    public DataNode? Node(string key) => Entry(key)?.Value;

    /// <summary>One text: any, a name, or one of a few words, as the shape has it.</summary>
    public Located<string>? Text(string key) => Entry(key) is { } entry ? Textual(entry, Held<One>(key).Form, RowOf(key)) : null;

    public Located<bool>? YesNo(string key) => Text(key) is { } word ? word.As(word.Value == "yes") : null;

    /// <summary>Texts, in square brackets or one a line; a single one is a list of one.</summary>
    public ImmutableArray<Located<string>> List(string key)
    {
        if (Entry(key) is not { } entry)
            return [];
        var (many, row) = (Held<Many>(key), RowOf(key));
        if (entry.Value is DataList list)
            return [.. list.Items.Select(item => Textual(entry with { Value = item }, many.Form, row)).OfType<Located<string>>()];
        if (Written(entry, many.OneMayHaveCommas ? "a text" : "a list", row.Example) is not { } single)
            return [];
        if (many.OneMayHaveCommas || !single.Value.Contains(',', StringComparison.Ordinal))
            return Fitting(single, many.Form, key) is { } only ? [only] : [];
        WrongKind(entry, $"one text with a comma in it, `{Say.Short(single.Value)}`", "a list", $"[{single.Value}]");
        return [];
    }

    /// <summary>The keys below a key.</summary>
    public Fields? Below(string key, string? called = null) =>
        MapOf(key) is { } below ? Kept(new Fields(below, Held<Below>(key).Shape, Findings, called) { BlanksMayStay = BlanksMayStay }) : null;

    /// <summary>A list whose items have keys of their own but no names.</summary>
    public IEnumerable<Fields> Members(string key)
    {
        if (Entry(key) is not { } entry)
            yield break;
        var (holds, row) = (Held<Members>(key), RowOf(key));
        if (entry.Value is not DataList list)
        {
            WrongKind(entry, Kind(entry.Value), "a list, each item behind `- `,", $"[{row.Example}]");
            yield break;
        }
        foreach (var (number, item) in list.Items.Index().Where(i => !(BlanksMayStay && IsBlank(i.Item))))
            if (item is DataMap member)
                yield return Kept(new Fields(member, holds.Choice.Of(member), Findings, $"item {Say.Number(number + 1)} of `{key}`") { BlanksMayStay = BlanksMayStay });
            else
                WrongKind(entry with { Value = item }, Kind(item), "a list of `key: value`", $"[{row.Example}]");
    }

    /// <summary>Things declared below a key, each under its name with keys of its own.</summary>
    /// <param name="key">The section.</param>
    /// <param name="make">Makes one of name and keys.</param>
    public IEnumerable<T> Each<T>(string key, Func<Located<string>, Fields, T> make)
    {
        foreach (var entry in MapOf(key)?.Entries ?? [])
        {
            var (holds, row) = (Held<Each>(key), RowOf(key));
            if (!Names.Usable(entry.Key, Findings))
                continue;
            if (OwnKeys(entry, holds.ShortFor) is { } own)
                yield return make(entry.Key, Kept(new Fields(own, holds.Shape, Findings, entry.Key.Value) { NamedAt = entry.Key.At }));
            else
                WrongKind(entry, Kind(entry.Value), "a list of its facts, each `key: value`,", row.Example, key);
        }
    }

    private static DataMap? OwnKeys(DataEntry entry, string? shortFor) => entry.Value switch
    {
        DataMap own => own,
        DataText { Text: "" } => null,
        _ when shortFor is not null => new DataMap([new DataEntry(entry.Key.As(shortFor), entry.Value)], entry.Value.At),
        _ => null,
    };

    private Fields Kept(Fields below)
    {
        _below.Add(below);
        return below;
    }

    private DataEntry? Entry(string key)
    {
        _asked.Add(key);
        return _entries.TryGetValue(key, out var entry) && !entry.Value.IsUnread() && !(BlanksMayStay && IsBlank(entry.Value)) ? entry : null;
    }

    private static bool IsBlank(DataNode value) => value is DataText { Text: "" };

    private Row RowOf(string key) => shape.Find(key) ?? throw new InvalidOperationException($"{shape.Name} has no key {key}");

    private THolds Held<THolds>(string key)
        where THolds : Holds => RowOf(key).Holds as THolds ?? throw Misread(key, typeof(THolds).Name);

    /// <summary>A binder and its table disagree: a fault of ours.</summary>
    private InvalidOperationException Misread(string key, string asked) => new($"{key} of {shape.Name} is asked for as {asked}");

    private DataMap? MapOf(string key)
    {
        if (Entry(key) is not { } entry)
            return null;
        if (entry.Value is DataMap below)
            return below;
        var row = RowOf(key);
        WrongKind(entry, Kind(entry.Value), "a list of `key: value`", row.Holds is Each ? $"{{name: {row.Example}}}" : row.Example);
        return null;
    }

    private Located<string>? Textual(DataEntry entry, Form form, Row row) =>
        form is CountForm or FactorForm or SizeForm && row.Holds is One ? throw Misread(row.Key, "a text")
        : Written(entry, Belongs(form), row.Example) is { } text ? Fitting(text, form, entry.Key.Value) : null;

    /// <summary>The text where it is written as it should be; what its own reader says of it comes later.</summary>
    private Located<string>? Fitting(Located<string> text, Form form, string key) => form switch
    {
        NameForm => Names.Usable(text, Findings) ? text : null,
        IdForm => Names.Usable(text, Findings) && Names.UsableForFile(text, Findings) ? text : null,
        WordForm { Words: var words } when !words.Contains(text.Value) => NotInList(text, key, words),
        _ => text,
    };

    private Located<string>? NotInList(Located<string> text, string key, ImmutableArray<string> words)
    {
        Findings.Add(Names.NotInList(text, $"`{key}` of {What}", words));
        return null;
    }

    private Located<string>? Written(DataEntry entry, string belongs, string example)
    {
        if (entry.Value is DataText { Text.Length: > 0 } text && !text.IsUnread())
            return text.Located();
        WrongKind(entry, Kind(entry.Value), belongs, example);
        return null;
    }

    private static Dictionary<string, DataEntry> ByKey(DataMap map)
    {
        var entries = new Dictionary<string, DataEntry>(map.Entries.Length, StringComparer.Ordinal);
        foreach (var entry in map.Entries)
            entries.TryAdd(entry.Key.Value, entry);
        return entries;
    }
}
