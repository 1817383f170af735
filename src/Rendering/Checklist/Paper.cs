namespace Witnessmark.Rendering.Checklist;

public enum Paper
{
    A4,
    Letter,
}
