namespace Witnessmark.Press;

/// <summary>A PDF, whole.</summary>
public sealed record PrintedSheet(ReadOnlyMemory<byte> Pdf, int Pages);
