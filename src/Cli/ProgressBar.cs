using Witnessmark.Rendering.Messages;

namespace Witnessmark.Cli;

/// <summary>How far a long command has come, on one line of a terminal that is gone when it is done. Nothing where nobody watches.</summary>
internal sealed class ProgressBar : IDisposable
{
    private const int Cells = 24;
    private const string StartOfLine = "\r";
    private const string RestOfLine = "\u001b[K"; // ECMA-48 erase in line

    private readonly Lock _turn = new();
    private readonly TextWriter? _screen;
    private readonly Ink _ink;
    private readonly string _what;
    private readonly int _all;

    public ProgressBar(Surroundings around, string what, int all)
    {
        (_screen, _ink, _what, _all) = (around.Watched ? around.Error : null, around.Ink, what, all);
        Show(0);
    }

    /// <param name="done">Of all; may come from several threads, and late.</param>
    public void Show(int done)
    {
        lock (_turn)
            _screen?.Write($"{StartOfLine}{_what} {_ink.Label}{new string('#', Cells * done / _all)}{_ink.Off}{_ink.Quiet}{new string('.', Cells - (Cells * done / _all))}{_ink.Off} {done} of {_all}{RestOfLine}");
    }

    public void Dispose()
    {
        lock (_turn)
            _screen?.Write(StartOfLine + RestOfLine);
    }
}
