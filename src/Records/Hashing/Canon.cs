using System.Collections.Immutable;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;

namespace Witnessmark.Records.Hashing;

/// <summary>
/// A value in its one canonical spelling: JSON with text, lists in order and maps with keys sorted by code point; no
/// numbers, no null, no blanks between. What is not said is left out, so that a new default can never change an old hash.
/// </summary>
internal abstract record Canon
{
    public static Canon Text(string text) => new CanonText(NormalForm.Of(text));

    public static Canon List(IEnumerable<Canon> items) => new CanonList([.. items]);

    public static Canon Words(IEnumerable<string> words) => List(words.Select(Text));

    public static Canon Map(params ReadOnlySpan<(string Key, Canon? Value)> entries)
    {
        var map = ImmutableSortedDictionary.CreateBuilder<string, Canon>(StringComparer.Ordinal);
        foreach (var (key, value) in entries)
            if (value is not null)
                map[NormalForm.Of(key)] = value;
        return new CanonMap(map.ToImmutable());
    }

    public static Canon Map(IEnumerable<(string Key, Canon? Value)> entries) => Map([.. entries]);

    /// <summary>Null for null: the entry is left out.</summary>
    public static Canon? Maybe(string? text) => text is null ? null : Text(text);

    public static Canon? Maybe(bool yes) => yes ? Text("yes") : null;

    public static Canon? Maybe(int? number) => number is { } n ? Text(n.ToString(CultureInfo.InvariantCulture)) : null;

    public string Json
    {
        get
        {
            var json = new StringBuilder();
            Write(json);
            return json.ToString();
        }
    }

    /// <summary>SHA-256 of the JSON in UTF-8, 64 digits in lower case.</summary>
    public string Sha => Sha256(Json);

    public static string Sha256(string text) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)));

    protected abstract void Write(StringBuilder json);

    private static void Quote(StringBuilder json, string text)
    {
        json.Append('"');
        foreach (var c in text)
            _ = c switch
            {
                '"' => json.Append("\\\""),
                '\\' => json.Append("\\\\"),
                < ' ' => json.Append(CultureInfo.InvariantCulture, $"\\u{(int)c:x4}"),
                _ => json.Append(c),
            };
        json.Append('"');
    }

    private sealed record CanonText(string Value) : Canon
    {
        protected override void Write(StringBuilder json) => Quote(json, Value);
    }

    private sealed record CanonList(ImmutableArray<Canon> Items) : Canon
    {
        protected override void Write(StringBuilder json)
        {
            json.Append('[');
            for (var i = 0; i < Items.Length; i++)
            {
                if (i > 0)
                    json.Append(',');
                Items[i].Write(json);
            }
            json.Append(']');
        }
    }

    private sealed record CanonMap(ImmutableSortedDictionary<string, Canon> Entries) : Canon
    {
        protected override void Write(StringBuilder json)
        {
            json.Append('{');
            var first = true;
            foreach (var (key, value) in Entries)
            {
                if (!first)
                    json.Append(',');
                first = false;
                Quote(json, key);
                json.Append(':');
                value.Write(json);
            }
            json.Append('}');
        }
    }
}
