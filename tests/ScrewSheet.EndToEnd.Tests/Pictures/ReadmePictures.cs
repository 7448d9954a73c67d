using System.Text.RegularExpressions;

namespace ScrewSheet.EndToEnd.Tests.Pictures;

/// <summary>The pictures of the README are drawn from real runs; <c>docs/pictures/make</c> writes them.</summary>
public sealed partial class ReadmePictures
{
    private const int Width = 100, Height = 30;

    [Fact]
    public void Grid_WithTheWorkedStepOfAResult() => Drawn("grid", "The grid with a workbook; below it the worked step of the cell under the cursor", desk => desk.Go("moment").Sees("formula"));

    [Fact]
    public void Typing_WithWhatTheLineGives() => Drawn("typing", "An expression being typed: what it gives, the call around the caret, what could stand there", desk =>
        desk.Go("C14").Type("twice [N·m, 1 decimal] => 2 * ArmMoment(load, )").Press("Left").Type("lost").Sees("gives").Sees("[Length arm]").Sees("IceLost"), unsaved: false);

    [Fact]
    public void Fault_WithWhatIsWrong() => Drawn("fault", "A cell in fault: what is wrong, where, and what to do", desk =>
        desk.Go("C14").Line("=> load + lost").Sees("fault").SeesNot("calculating").Go("C14").Sees("cannot be added"), unsaved: true);

    private static void Drawn(string name, string title, Action<Desk> walk, bool unsaved = false)
    {
        using Desk desk = new(Width, Height);
        desk.Open("short-screw.screwsheet", File.ReadAllText(Path.Combine(Programs.Root, "workbooks", "short-screw.screwsheet")));
        walk(desk);
        string picture = ScreenDrawing.Draw(desk.Styled, Width, Height, title);
        Assert.Equal(Letters(desk.Screen), Letters(string.Concat(Text().Matches(picture).Select(match => match.Groups[1].Value)).Replace("&lt;", "<", StringComparison.Ordinal).Replace("&gt;", ">", StringComparison.Ordinal).Replace("&amp;", "&", StringComparison.Ordinal)));
        string file = Path.Combine(Programs.Root, "docs", "pictures", name + ".svg");
        if (Environment.GetEnvironmentVariable("SCREWSHEET_WRITE") == "1") File.WriteAllText(file, picture);
        Assert.True(File.Exists(file), $"{file} is missing: run docs/pictures/make.");
        Assert.Contains($"docs/pictures/{name}.svg", File.ReadAllText(Path.Combine(Programs.Root, "README.md")), StringComparison.Ordinal);
        desk.Press("Escape", "Escape", "C-q");
        if (unsaved) desk.Type("d");
        desk.Left(0);
    }

    private static string Letters(string text) => string.Concat(text.Where(c => !char.IsWhiteSpace(c)));

    [GeneratedRegex("<text [^>]*>([^<]*)</text>")]
    private static partial Regex Text();
}
