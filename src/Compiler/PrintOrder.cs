using System.Collections.Immutable;
using Witnessmark.Rendering.Checklist;

namespace Witnessmark.Compiler;

/// <summary>Which specimens are wanted.</summary>
/// <param name="Procedure">Or null for every sheet of the workshop.</param>
/// <param name="Part">A part of the procedure, or null for all.</param>
/// <param name="Paper">A4 or Letter, or null for the workshop's.</param>
public sealed record PrintOrder(string? Procedure, string? Part, string? Paper);

/// <param name="Path">Of the PDF: <c>wb-40-a4.pdf</c>.</param>
public sealed record SpecimenPrint(string Path, PressSheet Sheet);

/// <summary>What goes to the press, or why nothing does.</summary>
public sealed record SpecimensToPrint(ImmutableArray<SpecimenPrint> Sheets, Refusal? Refusal);
