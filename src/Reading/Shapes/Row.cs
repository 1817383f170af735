using System.Collections.Immutable;
using Witnessmark.Language.Quantities;

namespace Witnessmark.Reading.Shapes;

/// <summary>One key: what stands behind it, an example as it is written, and what it says to people.</summary>
internal sealed record Row(string Key, Holds Holds, string Example, string Meaning)
{
    public static readonly TextForm AnyText = new();
    public static readonly NameForm AName = new();

    private const int MostCounted = 999;

    /// <summary>Whether the thing is nothing without it.</summary>
    public bool Needed { get; private init; }

    /// <summary>This row as one that must be there.</summary>
    public Row Must => this with { Needed = true };

    /// <summary>Sizes that may be nothing at all. Elsewhere a rule would find nothing to reckon with, and be silent.</summary>
    public Row OrZero => Holds is One { Form: SizeForm form } ? this with { Holds = new One(form with { Least = LeastSize.Zero }) } : this;

    public static Row Text(string key, string example, string meaning) => Written(key, AnyText, example, meaning);

    public static Row Name(string key, string example, string meaning) => Written(key, AName, example, meaning);

    public static Row Id(string key, string example, string meaning) => Written(key, new IdForm(), example, meaning);

    public static Row Word(string key, ImmutableArray<string> words, string meaning) => Written(key, new WordForm(words), words[0], meaning);

    public static Row YesNo(string key, string meaning) => Word(key, ["yes", "no"], meaning);

    public static Row Count(string key, string example, string meaning, int least = 1, int most = MostCounted) =>
        Written(key, new CountForm(least, most), example, meaning);

    public static Row Factor(string key, string example, string meaning) => Written(key, new FactorForm(), example, meaning);

    public static Row Quantity(string key, string example, string meaning, string? kind = null) => Sized(key, Size.Quantity, example, meaning, kind);

    public static Row Toleranced(string key, string example, string meaning, string? kind = null) => Sized(key, Size.Toleranced, example, meaning, kind);

    public static Row Range(string key, string example, string meaning, string? kind = null) => Any(key, Size.Range, example, meaning, kind);

    public static Row Share(string key, string example, string meaning) => Any(key, Size.Share, example, meaning, "share");

    public static Row Shares(string key, string example, string meaning) => Any(key, Size.Shares, example, meaning, "share");

    public static Row Written(string key, Form form, string example, string meaning) => new(key, new One(form), example, meaning);

    public static Row List(string key, string example, string meaning, Form? form = null, int? most = null) =>
        new(key, new Many(form ?? AnyText, most), example, meaning);

    /// <summary>Lines that may have commas in them; one alone needs no brackets.</summary>
    public static Row Lines(string key, string example, string meaning, Form? form = null) =>
        new(key, new Many(form ?? AnyText, OneMayHaveCommas: true), example, meaning);

    public static Row Below(string key, Shape shape, string example, string meaning) => new(key, new Below(shape), example, meaning);

    public static Row Members(string key, Choice choice, string example, string meaning) => new(key, new Members(choice), example, meaning);

    /// <param name="example">One thing without its name.</param>
    public static Row Each(string key, Shape shape, string example, string meaning, string? shortFor = null) =>
        new(key, new Each(shape, shortFor), example, meaning);

    public static Row Basis { get; } = Text("basis", "maker data", "where the numbers come from");

    private static Row Sized(string key, Size size, string example, string meaning, string? kind) =>
        Written(key, new SizeForm(size, kind, LeastSize.AboveZero), example, meaning);

    private static Row Any(string key, Size size, string example, string meaning, string? kind) =>
        Written(key, new SizeForm(size, kind, LeastSize.Anything), example, meaning);
}
