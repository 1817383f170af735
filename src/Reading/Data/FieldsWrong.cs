using Witnessmark.Language.Findings;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;
using Witnessmark.Reading.Faults;
using Witnessmark.Reading.Shapes;

namespace Witnessmark.Reading.Data;

internal sealed partial class Fields
{
    private const string NotGuessed = "What cannot be read for certain is not guessed: it would stand on a sheet in somebody's hands.";

    /// <summary>Reports a value that is not what belongs at its key, once.</summary>
    public void WrongKind(DataEntry entry, string found, string belongs, string example, string? of = null)
    {
        if (entry.Value.IsUnread())
            return;
        var whose = of ?? What;
        var key = entry.Key.Value;
        var like = example.Length == 0 ? $"Write {belongs} behind `{key}:`." : $"Write it like this: `{key}: {example}`.";
        Findings.Add(entry.Value is DataText { Text: "" }
            ? new Finding(
                DataFaults.ValueMissing,
                entry.Key.At,
                $"`{key}` of {whose} has no value; {belongs} belongs there.",
                NotGuessed,
                $"{like} If it is not known, take the line out.")
            : new Finding(
                DataFaults.ValueWrongKind,
                entry.Value.At,
                $"`{key}` of {whose} is {found}; {belongs} belongs there.",
                NotGuessed,
                ColonInText(entry.Value) ?? like));
    }

    private static string Belongs(Form form) => form switch
    {
        NameForm or IdForm => "a name",
        WordForm word => Say.Or(word.Words),
        SizeForm { Kind: { } kind } => $"a quantity ({kind})",
        SizeForm => "a quantity",
        _ => "a text",
    };

    private static string Kind(DataNode node) => node switch
    {
        DataList => "a list",
        DataMap => "a list of `key: value`",
        DataText text => $"the text `{Say.Short(text.Text)}`",
        _ => "something else",
    };

    /// <summary><c>- stop: call the mechanic</c> is a key to the machine and a text to the one who wrote it.</summary>
    private static string? ColonInText(DataNode node) =>
        node is DataMap { Entries: [var only] } && only.Value is DataText && only.Key.At.Start.Line == only.Value.At.Start.Line
            ? "A colon and a blank inside a text make a key of what stands before them. If it is a text, put it in quotes."
            : null;
}
