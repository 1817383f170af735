namespace Witnessmark.Press.Tests;

public sealed class BrowserFinderTests
{
    private static readonly OperatingSystem Linux = new(PlatformID.Unix, new Version(6, 1));
    private static readonly OperatingSystem Windows = new(PlatformID.Win32NT, new Version(10, 0));

    [Theory]
    [InlineData("/usr/bin/chromium")]
    [InlineData("/usr/bin/google-chrome")]
    [InlineData("/snap/bin/chromium")]
    [InlineData("/Applications/Google Chrome.app/Contents/MacOS/Google Chrome")]
    [InlineData("/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge")]
    public void It_is_found_where_systems_put_it(string there) =>
        Assert.Equal(there, On(Linux, [there]).Find());

    [Theory]
    [InlineData(@"C:\Program Files\Google\Chrome\Application\chrome.exe")]
    [InlineData(@"C:\Program Files (x86)\Microsoft\Edge\Application\msedge.exe")]
    public void It_is_found_where_windows_puts_it(string there) =>
        Assert.Equal(there, On(Windows, [there], ("ProgramFiles", @"C:\Program Files"), ("ProgramFiles(x86)", @"C:\Program Files (x86)")).Find());

    [Fact]
    public void The_search_path_comes_before_the_usual_places() =>
        Assert.Equal("/opt/b/chromium", On(Linux, ["/opt/b/chromium", "/usr/bin/chromium"], ("PATH", "/opt/a:/opt/b")).Find());

    [Fact]
    public void The_one_that_is_named_comes_first() =>
        Assert.Equal("/opt/mine", On(Linux, ["/opt/mine", "/usr/bin/chromium"], ("WITNESSMARK_CHROMIUM", "/opt/mine")).Find());

    [Fact]
    public void A_name_that_leads_nowhere_is_refused_though_another_browser_is_there() =>
        Assert.Equal(
            "WITNESSMARK_CHROMIUM names /opt/mine, and there is no such file.",
            Assert.Throws<PressException>(() => On(Linux, ["/usr/bin/chromium"], ("WITNESSMARK_CHROMIUM", "/opt/mine")).Find()).What);

    [Fact]
    public void Where_there_is_none_it_says_how_to_get_one_and_what_works_without()
    {
        var refused = Assert.Throws<PressException>(() => On(Linux, []).Find());

        Assert.Contains("apt install chromium", refused.Todo, StringComparison.Ordinal);
        Assert.Contains("witnessmark build", refused.Todo, StringComparison.Ordinal);
    }

    private static BrowserFinder On(OperatingSystem system, string[] files, params (string Name, string Value)[] settings) =>
        new(name => settings.FirstOrDefault(s => s.Name == name).Value, files.Contains, system);
}
