using System.Collections.Immutable;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Data;
using Witnessmark.Reading.Sheets;

namespace Witnessmark.Reading;

/// <summary>All files of a workshop to one library. A file is what its first key says, wherever it lies.</summary>
public static class WorkshopReader
{
    /// <summary>Sign-offs and the register: living facts, not part of the library.</summary>
    private const string RecordsFolder = "records/";

    /// <param name="files">In any order; paths relative to the workshop.</param>
    /// <param name="findings">Takes what is wrong with them.</param>
    /// <returns>What could be read; what could not is a finding. Without a workshop file the house limits are common practice.</returns>
    public static Library Read(IReadOnlyList<RawFile> files, FindingList findings)
    {
        var shelf = new Shelf(findings);
        foreach (var file in files.Where(f => !f.Path.StartsWith(RecordsFolder, StringComparison.Ordinal)).OrderBy(f => f.Path, StringComparer.Ordinal))
            if (Decode.Text(file, findings) is { } source)
                shelf.Take(source);
        return shelf.Library();
    }

    /// <summary>What has been read so far, by kind.</summary>
    private sealed class Shelf(FindingList findings)
    {
        private static readonly ImmutableArray<string> Kinds = [WorkshopSheet.Key, MachineSheet.Key, ToolSheet.Key];

        /// <summary>A sign-off has a <c>machine:</c> too, and may lie in the workshop: whichever comes first tells.</summary>
        private static readonly ImmutableArray<string> Telling = [.. Kinds, Reading.Records.SignOffReader.Key];

        private readonly List<Workshop> _workshops = [];
        private readonly List<Machine> _machines = [];
        private readonly List<ToolList> _toolLists = [];
        private readonly List<Procedure> _procedures = [];

        public void Take(SourceText source)
        {
            if (source.Path.EndsWith(".md", StringComparison.OrdinalIgnoreCase))
                Keep(_procedures, Steps.ProcedureReader.Read(source, findings));
            else if (YamlTree.Read(source, new TextSpan(0, source.Content.Length), findings) is { Entries.Length: > 0 } map)
                TakeData(source, map);
        }

        public Library Library()
        {
            if (_workshops.Count == 0)
                findings.Add(FileFindings.NoWorkshop());
            foreach (var second in _workshops.Skip(1))
                findings.Add(FileFindings.SecondWorkshop(second, _workshops[0]));
            return new Library(
                _workshops.FirstOrDefault() ?? FileFindings.EmptyWorkshop(),
                Unique(_machines),
                Unique(_toolLists),
                Unique(_procedures));
        }

        private void TakeData(SourceText source, DataMap map)
        {
            switch (map.Entries.Select(e => e.Key.Value).FirstOrDefault(Telling.Contains))
            {
                case WorkshopSheet.Key:
                    _workshops.Add(WorkshopSheet.Read(source, map, findings));
                    break;
                case MachineSheet.Key:
                    Keep(_machines, MachineSheet.Read(source, map, findings));
                    break;
                case ToolSheet.Key:
                    Keep(_toolLists, ToolSheet.Read(source, map, findings));
                    break;
                case null:
                    findings.Add(FileFindings.Unknown(map.Entries[0].Key, Kinds));
                    break;
            }
        }

        private static void Keep<T>(List<T> shelf, T? item)
            where T : class
        {
            if (item is not null)
                shelf.Add(item);
        }

        /// <summary>Names that differ only in capitals are the same page, and the same word over the radio.</summary>
        private Items<T> Unique<T>(List<T> items)
            where T : class, IItem
        {
            foreach (var same in items.GroupBy(i => StepName.Slug(i.Id.Value), StringComparer.Ordinal).Where(g => g.Count() > 1))
                foreach (var again in same.Skip(1))
                    findings.Add(FileFindings.IdTwice(again.Id, same.First().Id));
            return new Items<T>(items);
        }
    }
}
