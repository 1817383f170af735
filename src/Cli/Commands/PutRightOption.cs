using System.CommandLine;
using System.Globalization;
using Witnessmark.Cli.Disk;
using Witnessmark.Compiler;
using Witnessmark.Language.Findings;
using Witnessmark.Rendering.Messages;

namespace Witnessmark.Cli.Commands;

/// <summary><c>check --put-right</c>: writes what is certain into the files before they are checked.</summary>
internal static class PutRightOption
{
    public static Option<bool> Make() => new("--put-right")
    {
        Description = "First put right what can be meant in one way only, write it into the files, and tell it. What needs a head is left to one.",
    };

    /// <summary>Puts right, writes, and tells what was done; what is left is the check's to tell.</summary>
    /// <param name="name">Put before the sum where there are several workshops.</param>
    public static void Run(WorkshopFolder folder, string name, TextWriter telling)
    {
        var result = Pipeline.PutRight(folder.Files(), folder.Only);
        folder.Rewrite(result.Files);
        foreach (var finding in result.Done)
            telling.WriteLine(Visible.Text(Line(folder, finding)));
        var left = result.Left.Findings.Count(f => f.Concerns(folder.Only));
        telling.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{name}{result.Done.Length} put right, {left} left."));
        if (left > 0)
            telling.WriteLine();
    }

    private static string Line(WorkshopFolder folder, Finding finding) =>
        string.Create(CultureInfo.InvariantCulture, $"{folder.ShownPath(finding.At.Source.Path)}:{finding.At.Start.Line}: {finding.Correction!.Does} ({finding.Rule.Name})");
}
