using PuppeteerSharp;

namespace ScrewSheet.Browser.Tests;

/// <summary>The browser found on the machine, started once for all tests.</summary>
public sealed class Browsers : IAsyncLifetime
{
    private static readonly string[] Names = ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable", "chrome"];

    /// <summary>The browser.</summary>
    public IBrowser Browser { get; private set; } = null!;

    /// <summary>Where it is.</summary>
    public static string Path { get; } = Environment.GetEnvironmentVariable("SCREWSHEET_BROWSER") is { Length: > 0 } named ? named
        : (Environment.GetEnvironmentVariable("PATH") ?? "").Split(System.IO.Path.PathSeparator).SelectMany(folder => Names.Select(name => System.IO.Path.Combine(folder, name))).FirstOrDefault(File.Exists)
            ?? throw new InvalidOperationException("No Chromium or Chrome is on this machine. .ci/run installs one.");

    public async Task InitializeAsync()
    {
        string[] arguments = Environment.UserName == "root" ? ["--no-sandbox", "--disable-gpu"] : ["--disable-gpu"];
        Browser = await Puppeteer.LaunchAsync(new LaunchOptions { ExecutablePath = Path, Headless = true, Args = arguments });
    }

    public async Task DisposeAsync() => await Browser.CloseAsync();
}

/// <summary>Tests that share the browser.</summary>
[CollectionDefinition(nameof(Browsers))]
public sealed class BrowserTests : ICollectionFixture<Browsers>;
