namespace Witnessmark.Press;

/// <summary>
/// Finds a browser of the Chromium family: the one kind that prints page margins, tags and bookmarks. In this order: the one
/// that is named, the search path, the usual places of the system.
/// </summary>
/// <param name="Setting">Reads an environment variable.</param>
/// <param name="Exists">Whether a file is there.</param>
/// <param name="System">Which system's places to look in.</param>
public sealed record BrowserFinder(Func<string, string?> Setting, Func<string, bool> Exists, OperatingSystem System)
{
    /// <summary>Names the browser to print with.</summary>
    public const string Variable = "WITNESSMARK_CHROMIUM";

    private static readonly string[] OnPath = ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable", "microsoft-edge", "microsoft-edge-stable"];

    private static readonly string[] OnWindowsPath = ["chrome.exe", "msedge.exe", "chromium.exe"];

    private static readonly string[] ProgramFolders = ["ProgramFiles", "ProgramFiles(x86)", "LocalAppData"];

    private static readonly string[] InProgramFolders =
        [@"Google\Chrome\Application\chrome.exe", @"Chromium\Application\chrome.exe", @"Microsoft\Edge\Application\msedge.exe"];

    private static readonly string[] SystemFolders = ["/usr/bin", "/usr/local/bin", "/snap/bin"];

    private static readonly string[] Applications =
    [
        "/Applications/Chromium.app/Contents/MacOS/Chromium",
        "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
        "/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge",
    ];

    public static BrowserFinder OfThisMachine => new(Environment.GetEnvironmentVariable, File.Exists, Environment.OSVersion);

    private bool OnWindows => System.Platform == PlatformID.Win32NT;

    /// <exception cref="PressException">There is none, or the named one is not there.</exception>
    public string Find()
    {
        if (Setting(Variable) is { Length: > 0 } named)
            return Exists(named)
                ? named
                : throw new PressException($"{Variable} names {named}, and there is no such file.", $"Set it to a Chromium, Chrome or Edge, or unset it. {Meanwhile}");
        return OnSearchPath().Concat(UsualPlaces()).FirstOrDefault(Exists)
            ?? throw new PressException(
                "There is no Chromium, Chrome or Edge to print with.",
                $"Get one (Debian and Ubuntu: apt install chromium; Fedora: dnf install chromium; macOS: brew install --cask chromium; Windows has Edge), or name one in {Variable}. {Meanwhile}");
    }

    private static string Meanwhile => "The sheets that witnessmark build makes print from a browser too.";

    private IEnumerable<string> OnSearchPath() =>
        from folder in (Setting("PATH") ?? "").Split(OnWindows ? ';' : ':', StringSplitOptions.RemoveEmptyEntries)
        from name in OnWindows ? OnWindowsPath : OnPath
        select Path.Combine(folder, name);

    private IEnumerable<string> UsualPlaces() => OnWindows
        ? from folder in ProgramFolders.Select(Setting).OfType<string>()
          from inside in InProgramFolders
          select $@"{folder}\{inside}"
        : SystemFolders.SelectMany(f => OnPath.Select(n => $"{f}/{n}")).Concat(Applications);
}
