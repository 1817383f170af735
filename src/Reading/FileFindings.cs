using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;
using Witnessmark.Reading.Faults;

namespace Witnessmark.Reading;

/// <summary>Findings about the files of a workshop as files.</summary>
internal static class FileFindings
{
    private const string WorkshopFile = "workshop.yaml";

    public static Finding Unknown(Located<string> firstKey, IReadOnlyCollection<string> kinds) => new(
        DataFaults.FileUnknown,
        firstKey.At,
        $"This file begins with `{Say.Short(firstKey.Value)}`: nobody can tell what it is.",
        "A sheet that is not known as one is not read, and its limits hold for nothing.",
        NearMiss.Of(firstKey.Value, kinds) is { } near
            ? $"Did you mean `{near}`?"
            : $"Begin a data file with {Say.Or(kinds.Select(k => $"`{k}:`"))} and its name; procedures and jobs are Markdown files. " +
                "What belongs to none of these goes out of the workshop folder.");

    public static Finding NoSignOff(Located<string> firstKey) => new(
        DataFaults.FileUnknown,
        firstKey.At,
        $"This is no sign-off: it begins with `{Say.Short(firstKey.Value)}`.",
        "Only what was typed from a printed sheet can be held against it.",
        "Give the .yaml that was issued together with the sheet, filled in; it begins with `record:`.");

    public static Finding NoWorkshop() => new(
        DataFaults.WorkshopMissing,
        new SourceText(WorkshopFile, "").At(0, 0),
        "There is no workshop file: no file begins with `workshop:`.",
        "It holds the house limits, the people and the notice on every sheet; without it nobody knows who may sign.",
        "Write `workshop.yaml` at the top of the folder, beginning with `workshop: ` and the name of the crew. Or was another folder meant?");

    public static Finding SecondWorkshop(Workshop second, Workshop first) =>
        new(
            DataFaults.WorkshopTwice,
            Beginning(second),
            FolderOf(second) is { } folder
                ? $"This file begins a workshop in the folder {folder}, inside the one that {first.Source.Path} begins."
                : $"This is a second workshop file; {first.Source.Path} is one already.",
            "Two sets of house limits, and nobody could tell which of them holds for a file.",
            FolderOf(second) is { } inner
                ? $"Workshops stand side by side, not one in the other: move {inner} out beside this one, or take its workshop file away."
                : "Keep one, or make them two workshops in two folders side by side.")
        {
            Further = [new FurtherPlace(Beginning(first), "the first one")],
        };

    public static Finding IdTwice(Located<string> again, Located<string> first) =>
        new(
            DataFaults.IdTwice,
            again.At,
            again.Value == first.Value
                ? $"`{Say.Short(again.Value)}` is the name of two files; {first.At.Source.Path} has it already."
                : $"`{Say.Short(again.Value)}` and `{Say.Short(first.Value)}` differ only in capitals or hyphens; {first.At.Source.Path} has the other.",
            "Who asks for it by its name could get either, and a signature under one would count for the other.",
            "Give one of them another name. If it is a new version of the same, take the old file out: older versions live in the history.")
        {
            Further = [new FurtherPlace(first.At, "has the name already")],
        };

    public static Workshop EmptyWorkshop()
    {
        var source = new SourceText(WorkshopFile, "");
        return new Workshop(source, new DataMap([], source.At(0, 0)));
    }

    private static string? FolderOf(Workshop workshop) => workshop.Source.Path.LastIndexOf('/') is var slash and >= 0 ? workshop.Source.Path[..slash] : null;

    private static Location Beginning(Workshop workshop) => workshop.Title?.At ?? workshop.Node.At;
}
