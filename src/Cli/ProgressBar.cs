using Witnessmark.Rendering.Messages;

namespace Witnessmark.Cli;

/// <summary>How far a long command has come, on one line of a terminal that is gone when it is done. Nothing where nobody watches.</summary>
internal sealed class ProgressBar : IDisposable
{
    private const int Cells = 24;
    private readonly Lock _turn = new();
    private readonly TextWriter? _screen;
    private readonly Ink _ink;
    private readonly string _what;
    private readonly int _all;
    private int _written;

    public ProgressBar(Surroundings around, string what, int all)
    {
        (_screen, _ink, _what, _all) = (around.Watched ? around.Error : null, around.Ink, what, all);
        Show(0);
    }

    /// <param name="done">Of all; may come from several threads, and late.</param>
    public void Show(int done)
    {
        lock (_turn)
        {
            var full = Cells * done / _all;
            var words = $" {done} of {_all}";
            _screen?.Write($"\r{_what} {_ink.Label}{new string('#', full)}{_ink.Off}{_ink.Quiet}{new string('.', Cells - full)}{_ink.Off}{words}");
            _written = _what.Length + 1 + Cells + words.Length;
        }
    }

    public void Dispose()
    {
        lock (_turn)
            _screen?.Write($"\r{new string(' ', _written)}\r");
    }
}
