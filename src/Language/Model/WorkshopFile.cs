using Witnessmark.Language.Text;

namespace Witnessmark.Language.Model;

/// <summary>One file of a workshop, read: a procedure, a data sheet, a tool list, the workshop file.</summary>
/// <param name="Node">All its data as it was written; of a procedure, its front matter.</param>
public abstract record WorkshopFile(SourceText Source, DataNode Node) : Keeper;
