using System.CommandLine;
using Witnessmark.Cli.Disk;
using Witnessmark.Compiler;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Shapes;

namespace Witnessmark.Cli.Commands;

/// <summary><c>schema</c>: the shape of each file as JSON Schema, for an editor or for a program that writes such files.</summary>
internal static class SchemaCommand
{
    public static Command Make(Surroundings around)
    {
        var of = new Option<string?>("--of") { Description = "One kind of file; all when left out.", HelpName = string.Join('|', Catalog.Schemas.Select(s => s.Name)) };
        var output = new Option<string?>("--out") { Description = "Folder for the schemas, one file each. Without it the one that is named is shown; without a name, their list.", HelpName = "folder" };
        var command = new Command("schema", "Write the shape of each file as JSON Schema (2020-12), made from what the reader itself reads by.") { of, output };
        command.SetAction(parsed => Run(parsed.GetValue(of), parsed.GetValue(output), around));
        return command;
    }

    private static int Run(string? of, string? output, Surroundings around)
    {
        var wanted = of is null ? Catalog.Schemas : [Named(of)];
        if (output is not null)
            return Put(wanted, output, around);
        if (of is not null)
            around.Out.Write(wanted[0].Text);
        else
            foreach (var schema in wanted)
                around.Out.WriteLine($"{schema.Name,-14} {schema.Holds}");
        return ExitCode.Clean;
    }

    private static FileSchema Named(string name) => Catalog.Schemas.FirstOrDefault(s => s.Name == name) ?? throw new RefusedException(
        $"There is no schema {name}.",
        NearMiss.Of(name, Catalog.Schemas.Select(s => s.Name)) is { } near ? $"Did you mean {near}? witnessmark schema lists them all." : "witnessmark schema lists them all.");

    private static int Put(IReadOnlyList<FileSchema> schemas, string output, Surroundings around)
    {
        OutputFolder.Replace(around.FullPath(output), output, schemas.Select(s => OutputFile.Of(s.FileName, s.Text)));
        foreach (var schema in schemas)
            around.Out.WriteLine($"Wrote {Path.Combine(output, schema.FileName).Replace('\\', '/')}.");
        return ExitCode.Clean;
    }
}
