using PuppeteerSharp;
using PuppeteerSharp.Media;
using ScrewSheet.TestKit;

namespace ScrewSheet.Browser.Tests;

/// <summary>The picture of a handout that the README shows: with SCREWSHEET_WRITE=1 it is taken anew.</summary>
[Collection(nameof(Browsers))]
public sealed class ReadmePicture(Browsers browsers)
{
    private const int Width = 760, Height = 900, LargestFile = 200_000;

    private static string File { get; } = Path.Combine(GoldenFile.Root, "docs", "handouts", "standing-out.png");

    [Fact]
    public async Task ItIsAPictureOfTheHandout()
    {
        if (Environment.GetEnvironmentVariable("SCREWSHEET_WRITE") == "1") await Take();
        byte[] picture = await System.IO.File.ReadAllBytesAsync(File);
        Assert.Equal([0x89, (byte)'P', (byte)'N', (byte)'G'], picture[..4]);
        Assert.Equal((Width, Height), (Number(picture, 16), Number(picture, 20)));
        Assert.InRange(picture.Length, 10_000, LargestFile);
        Assert.Contains("(docs/handouts/standing-out.png)", await System.IO.File.ReadAllTextAsync(Path.Combine(GoldenFile.Root, "README.md")), StringComparison.Ordinal);
    }

    private async Task Take()
    {
        await using IPage page = await browsers.Browser.NewPageAsync();
        await page.SetViewportAsync(new ViewPortOptions { Width = Width, Height = Height });
        await page.GoToAsync(new Uri(Path.ChangeExtension(File, ".html")).AbsoluteUri, WaitUntilNavigation.Load);
        double top = await page.EvaluateExpressionAsync<double>("document.getElementById('step-2').getBoundingClientRect().top - 12");
        await page.ScreenshotAsync(File, new ScreenshotOptions { Clip = new Clip { X = 0, Y = (decimal)top, Width = Width, Height = Height } });
    }

    private static int Number(byte[] picture, int at) => System.Buffers.Binary.BinaryPrimitives.ReadInt32BigEndian(picture.AsSpan(at));
}
