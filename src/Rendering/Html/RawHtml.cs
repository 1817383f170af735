namespace Witnessmark.Rendering.Html;

/// <summary>
/// Markup of our own making, written as it stands. Everything else that a template writes is escaped. Only this assembly
/// can make one, so text from a procedure cannot become markup by passing through a model.
/// </summary>
public sealed record RawHtml
{
    internal RawHtml(string markup) => Markup = markup;

    public string Markup { get; }

    public override string ToString() => Markup;
}
