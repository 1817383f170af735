using System.Text;
using Witnessmark.Press;
using Witnessmark.Rendering.Messages;

namespace Witnessmark.Cli;

/// <summary>All of the outside that a command may touch besides the disk: two writers, a clock, the folder it stands in, the browser to print with.</summary>
/// <param name="Coloured">Whether both writers are a terminal that wants colour (and NO_COLOR is not set).</param>
public sealed record Surroundings(TextWriter Out, TextWriter Error, Func<DateTimeOffset> Now, string Folder, bool Coloured)
{
    public static Surroundings OfThisProcess()
    {
        Console.OutputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
        var coloured = WantsColour(Console.IsOutputRedirected || Console.IsErrorRedirected, Environment.GetEnvironmentVariable("NO_COLOR"), Environment.GetEnvironmentVariable("TERM"));
        return new Surroundings(Console.Out, Console.Error, () => DateTimeOffset.Now, Environment.CurrentDirectory, coloured)
        {
            Watched = !Console.IsErrorRedirected && Environment.GetEnvironmentVariable("TERM") != "dumb",
        };
    }

    /// <summary>Whether somebody sits before the second writer: a line that is written over makes sense there only.</summary>
    public bool Watched { get; init; }

    public BrowserFinder Browsers { get; init; } = BrowserFinder.OfThisMachine;

    public Ink Ink => Coloured ? Ink.Terminal : Ink.None;

    /// <summary>Only on a terminal that can, and never where NO_COLOR is set to anything.</summary>
    public static bool WantsColour(bool redirected, string? noColour, string? terminal) => !redirected && string.IsNullOrEmpty(noColour) && terminal != "dumb";

    public string FullPath(string path) => Path.GetFullPath(path, Folder);
}
