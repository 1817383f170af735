using System.Collections.Immutable;
using System.Text;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Tidying;

namespace Witnessmark.Compiler;

/// <summary>A workshop with everything put right that is certain, and what is left to people.</summary>
/// <param name="Files">What is to be written: each whole.</param>
/// <param name="Done">Findings that were put right, in the order in which it was done; each at the place that it had then.</param>
/// <param name="Left">The workshop as it is afterwards, checked again.</param>
public sealed record WorkshopPutRight(ImmutableArray<OutputFile> Files, ImmutableArray<Finding> Done, Bench Left);

/// <summary>
/// Carries out the corrections of findings, all together, until there is none left. One thing put right can bring another to light:
/// a number that can now be read may be out of its window. What touches what another correction has changed waits for the next round.
/// </summary>
internal static class PuttingRight
{
    /// <summary>A correction that brings itself about again would go on for ever.</summary>
    private const int MostRounds = 12;

    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false);

    public static WorkshopPutRight Of(IReadOnlyList<RawFile> files, string? only)
    {
        var left = Pipeline.Check(files);
        var done = ImmutableArray.CreateBuilder<Finding>();
        var now = files;
        for (var round = 0; round < MostRounds; round++)
        {
            var taken = Apart(left.Findings.Where(f => f.Correction is { } c && (only is null || c.Edits[0].At.Source.Path == only)));
            var written = now.Select(f => Corrected(f, [.. taken.Where(t => t.Correction!.Edits[0].At.Source.Path == f.Path)])).ToList();
            var changed = written.SelectMany(w => w.Done).ToList();
            if (changed.Count == 0)
                break;
            done.AddRange(changed);
            now = [.. written.Select(w => w.File)];
            left = Pipeline.Check(now);
        }
        return new WorkshopPutRight(
            [.. now.Where((f, i) => !ReferenceEquals(f, files[i])).Select(f => new OutputFile(f.Path, f.Bytes))], done.ToImmutable(), left);
    }

    /// <summary>Of corrections that touch each other the first in reading order.</summary>
    private static List<Finding> Apart(IEnumerable<Finding> findings)
    {
        var taken = new List<Finding>();
        var places = new List<Replacement>();
        foreach (var finding in findings)
        {
            var edits = finding.Correction!.Edits;
            if (edits.Any(e => places.Any(p => Touch(p.At, e.At))))
                continue;
            taken.Add(finding);
            places.AddRange(edits);
        }
        return taken;
    }

    private static bool Touch(Location a, Location b) => a.Source.Path == b.Source.Path && a.Span.Start <= b.Span.End && b.Span.Start <= a.Span.End;

    private static (RawFile File, ImmutableArray<Finding> Done) Corrected(RawFile file, ImmutableArray<Finding> findings)
    {
        // what is on record is evidence; what was read otherwise than it was written has no places to go by
        if (findings.IsEmpty || Tidier.IsOnRecord(file) || Written(file) is not { } text || text.Words != findings[0].At.Source.Content)
            return (file, []);
        var corrected = new StringBuilder(text.Words);
        foreach (var edit in findings.SelectMany(f => f.Correction!.Edits).OrderByDescending(e => e.At.Span.Start))
            corrected.Remove(edit.At.Span.Start, edit.At.Span.Length).Insert(edit.At.Span.Start, edit.By);
        return (RawFile.Of(file.Path, [.. text.Mark, .. Utf8.GetBytes(corrected.ToString())]), findings);
    }

    /// <summary>The text as it is read, and the unseen mark before it, which stays.</summary>
    private static (byte[] Mark, string Words)? Written(RawFile file)
    {
        var bytes = file.Bytes.Span;
        var mark = bytes.StartsWith(Encoding.UTF8.Preamble) ? Encoding.UTF8.Preamble.ToArray() : [];
        var words = Utf8.GetString(bytes[mark.Length..]);
        return bytes.IsEmpty ? null : (mark, words.IsNormalized(NormalizationForm.FormC) ? words : words.Normalize(NormalizationForm.FormC));
    }
}
