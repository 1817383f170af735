using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Data;
using Witnessmark.Reading.Sheets;
using Witnessmark.Reading.Translations;

namespace Witnessmark.Reading;

/// <summary>All files of a workshop to one library. A file is what its first key says, wherever it lies.</summary>
public static partial class WorkshopReader
{
    /// <summary>Sign-offs: living facts, not part of the library.</summary>
    private const string RecordsFolder = "records/";

    private static readonly ImmutableArray<string> Kinds = [WorkshopSheet.Key, MachineSheet.Key, ToolSheet.Key, TranslationReader.Key, RegisterSheet.Key];

    /// <summary>A sign-off has a <c>machine:</c> too, and may lie in the workshop: whichever comes first tells.</summary>
    private static readonly ImmutableArray<string> Telling = [.. Kinds, Reading.Records.SignOffReader.Key];

    /// <param name="files">In any order; paths relative to the workshop.</param>
    /// <param name="findings">Takes what is wrong with them.</param>
    /// <returns>What could be read; what could not is a finding. Without a workshop file the house limits are common practice.</returns>
    public static Library Read(IReadOnlyList<RawFile> files, FindingList findings)
    {
        var inOrder = files.Where(f => !f.Path.StartsWith(RecordsFolder, StringComparison.Ordinal)).OrderBy(f => f.Path, StringComparer.Ordinal);
        return Join(findings.Each(inOrder, Item), findings);
    }

    /// <summary>What a file is, or null when it is nothing that belongs to the library.</summary>
    private static object? Item(RawFile file, FindingList findings)
    {
        if (Decode.Text(file, findings) is not { } source)
            return null;
        if (source.Path.EndsWith(".md", StringComparison.OrdinalIgnoreCase))
            return Steps.ProcedureReader.File(source, findings);
        return YamlTree.Read(source, new TextSpan(0, source.Content.Length), findings) switch
        {
            null => Declares().IsMatch(source.Content) ? new Unread(source.Path) : null,
            { Entries.Length: > 0 } map => Sheet(source, map, findings),
            _ => null,
        };
    }

    /// <summary>A file that others stand on and whose text is broken; what it says of itself still shows what it is.</summary>
    private sealed record Unread(string Path);

    [GeneratedRegex($"^({WorkshopSheet.Key}|{MachineSheet.Key}|{ToolSheet.Key}):", RegexOptions.Multiline)]
    private static partial Regex Declares();

    private static object? Sheet(SourceText source, DataMap map, FindingList findings)
    {
        switch (map.Entries.Select(e => e.Key.Value).FirstOrDefault(Telling.Contains))
        {
            case WorkshopSheet.Key:
                return WorkshopSheet.Read(source, map, findings);
            case MachineSheet.Key:
                return MachineSheet.Read(source, map, findings);
            case ToolSheet.Key:
                return ToolSheet.Read(source, map, findings);
            case TranslationReader.Key:
                return TranslationReader.Read(source, map, findings);
            case RegisterSheet.Key:
                return RegisterSheet.Read(map, findings);
            case null:
                findings.Add(FileFindings.Unknown(map.Entries[0].Key, Kinds));
                return null;
            default:
                return null;
        }
    }

    private static Library Join(ImmutableArray<object?> items, FindingList findings)
    {
        // the file at the top before one in a folder of it, whatever their names
        var workshops = items.OfType<Workshop>().OrderBy(w => w.Source.Path.Count(c => c == '/')).ToList();
        var lacksAFile = items.OfType<Unread>().Any();
        if (workshops.Count == 0 && !lacksAFile)
            findings.Add(FileFindings.NoWorkshop());
        foreach (var second in workshops.Skip(1))
            findings.Add(FileFindings.SecondWorkshop(second, workshops[0]));
        return new Library(
            workshops.FirstOrDefault() ?? FileFindings.EmptyWorkshop(),
            Unique<Machine>(items, findings),
            Unique<ToolList>(items, findings),
            Unique<Procedure>(items, findings))
        {
            LacksAFile = lacksAFile,
            Translations = Translations(items, findings),
            Register = items.OfType<Register>().ToList() is { Count: > 0 } registers ? RegisterSheet.Join(registers) : Register.Empty,
        };
    }

    private static Items<Translation> Translations(ImmutableArray<object?> items, FindingList findings)
    {
        var all = items.OfType<Translation>().ToList();
        foreach (var same in all.GroupBy(t => t.Id.Value, StringComparer.Ordinal))
            foreach (var again in same.Skip(1))
                findings.Add(TranslationFindings.Twice(again, same.First()));
        return new Items<Translation>(all);
    }

    /// <summary>Names that differ only in capitals are the same page, and the same word over the radio.</summary>
    private static Items<T> Unique<T>(ImmutableArray<object?> items, FindingList findings)
        where T : class, IItem
    {
        var all = items.OfType<T>().ToList();
        foreach (var same in all.GroupBy(i => StepName.Slug(i.Id.Value), StringComparer.Ordinal).Where(g => g.Count() > 1))
            foreach (var again in same.Skip(1))
                findings.Add(FileFindings.IdTwice(again.Id, same.First().Id));
        return new Items<T>(all);
    }
}
