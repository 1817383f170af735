using System.Collections.Immutable;
using Witnessmark.Reading.FrontMatter;
using Witnessmark.Reading.Records;
using Witnessmark.Reading.Sheets;
using Witnessmark.Reading.Translations;

namespace Witnessmark.Reading.Shapes;

/// <summary>The shape of one kind of file as JSON Schema, draft 2020-12.</summary>
/// <param name="Name">As it is asked for: <c>machine</c>.</param>
/// <param name="Holds">What such a file is.</param>
/// <param name="Text">The schema.</param>
public sealed record FileSchema(string Name, string Holds, string Text)
{
    public string FileName => $"{Name}.schema.json";
}

/// <summary>Schemas of all files, written from the shapes that the reader binds by.</summary>
public static class FileSchemas
{
    public static ImmutableArray<FileSchema> All { get; } =
    [
        Of("front-matter", "the front matter of a procedure or a job, between its two lines of dashes", FrontMatterReader.Shape),
        Of("workshop", "workshop.yaml: house limits, people, calls", WorkshopSheet.Shape),
        Of("machine", "a machine's data sheet", MachineSheet.Shape),
        Of("tools", "a tool list", ToolSheet.Shape),
        Of("register", "the register of released versions and issued copies", RegisterSheet.Shape),
        Of("sign-off", "a sign-off, filled in or still blank", SignOffReader.Shape),
        Of("translation", "a translation: a data file, or the front matter of a translated procedure", TranslationReader.Shape),
    ];

    private static FileSchema Of(string name, string holds, Choice choice) => new(name, holds, SchemaWriter.Write(holds, choice));
}
