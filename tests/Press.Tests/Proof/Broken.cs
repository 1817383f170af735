namespace Witnessmark.Press.Tests.Proof;

/// <summary>What must be so on every page.</summary>
internal enum PageRule
{
    /// <summary>The pages say what the sheet says, in its order.</summary>
    Text,

    /// <summary>Every step code stands on exactly one page.</summary>
    Code,

    /// <summary>A step's row, with its grid, ladder or bolt circle, is on one page.</summary>
    Row,

    /// <summary>As many boxes as the rows on the page ask for, none cut.</summary>
    Boxes,

    /// <summary>A message stands on its step's page, directly above the step.</summary>
    Message,

    /// <summary>A message in force is said again at the top of a page that goes on.</summary>
    Repeated,

    /// <summary>Nothing stands on anything else.</summary>
    Overlap,

    /// <summary>Nothing runs out of the print area.</summary>
    Inside,

    /// <summary>Identity, set mark or SPECIMEN, page x of y, standing notice at head and foot.</summary>
    Margins,

    /// <summary>The page's own square code, large enough to read.</summary>
    SquareCode,
}

internal sealed record Broken(int Page, PageRule Rule, string What)
{
    public override string ToString() => $"page {Page}, {Rule}: {What}";
}
