using AngleSharp.Dom;

namespace Witnessmark.Press.Tests.Proof;

/// <summary>Where something of the sheet stands on paper.</summary>
internal readonly record struct Place(int Page, Area Area);

/// <summary>
/// The pages read one after another, against the sheet read from top to bottom. They must say the same, but for messages
/// that a page repeats at its top.
/// </summary>
internal sealed class ReadThrough
{
    private const int Shown = 30;
    private const int Near = 60;
    private const int Telling = 8;

    private readonly IReadOnlyList<PrintedPage> _pages;
    private readonly Dictionary<IElement, string> _messages;
    private readonly Dictionary<IElement, SortedDictionary<int, Area>> _found = [];
    private int _page;
    private int _at;

    public ReadThrough(IReadOnlyList<PrintedPage> pages, SheetText sheet)
    {
        _pages = pages;
        _messages = sheet.Messages.ToDictionary(m => m, SheetText.Said);
        foreach (var piece in sheet.Pieces)
            Read(piece);
        for (; _page < pages.Count; (_page, _at) = (_page + 1, 0))
            if (_at < pages[_page].Text.Length)
                Broken.Add(new Broken(pages[_page].Number, PageRule.Text, $"\"{Cut(pages[_page].Text[_at..])}\" stands there, and nobody wrote it"));
    }

    public List<Broken> Broken { get; } = [];

    /// <summary>Every page that something of the element stands on, with the area that it takes there.</summary>
    public IEnumerable<Place> Of(IElement element) =>
        _found.TryGetValue(element, out var places) ? places.Select(p => new Place(p.Key, p.Value)) : [];

    private void Found(IElement element, int page, Area area)
    {
        for (var around = element; around is not null; around = around.ParentElement)
        {
            if (!_found.TryGetValue(around, out var places))
                _found.Add(around, places = []);
            places[page] = places.TryGetValue(page, out var before) ? before.With(area) : area;
        }
    }

    private void Read(SheetPiece piece)
    {
        for (var k = 0; k < piece.Text.Length;)
        {
            if (!NextPage(piece))
            {
                Broken.Add(new Broken(_pages[^1].Number, PageRule.Text, $"\"{Cut(piece.Text[k..])}\" is on no page"));
                return;
            }
            var page = _pages[_page];
            if (page.Text[_at] != piece.Text[k] && !Skip(piece.Text[k..]))
                return;
            Found(piece.In, _page, page.Signs[_at].Place);
            (k, _at) = (k + 1, _at + 1);
        }
    }

    /// <summary>At the top of a page stand the messages in force, unless it is one of them that is read now.</summary>
    private bool NextPage(SheetPiece piece)
    {
        while (_page < _pages.Count && _at == _pages[_page].Text.Length)
        {
            (_page, _at) = (_page + 1, 0);
            foreach (var message in _page < _pages.Count ? InForce(piece.In) : [])
                if (_pages[_page].Text.AsSpan(_at).StartsWith(_messages[message]))
                    _at += _messages[message].Length;
        }
        return _page < _pages.Count;
    }

    /// <summary>The text is further down: what stands before it nobody wrote. Or it is nowhere.</summary>
    private bool Skip(string text)
    {
        var next = _pages[_page].Text.IndexOf(text, _at, StringComparison.Ordinal);
        // a sign or two are found anywhere
        if (text.Length < Telling && next - _at > Near)
            next = -1;
        Broken.Add(next < 0
            ? new Broken(_pages[_page].Number, PageRule.Text, $"\"{Cut(text)}\" is missing before \"{Cut(_pages[_page].Text[_at..])}\"")
            : new Broken(_pages[_page].Number, PageRule.Text, $"\"{Cut(_pages[_page].Text[_at..next])}\" stands there, and nobody wrote it"));
        if (next >= 0)
            _at = next;
        return next >= 0;
    }

    private IEnumerable<IElement> InForce(IElement element) =>
        _messages.Keys.Where(m => !m.Contains(element) && m.Closest(".reach")?.Contains(element) == true);

    private static string Cut(string text) => text.Length <= Shown ? text : text[..Shown] + "…";
}
