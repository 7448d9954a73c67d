using ScrewSheet.Terminal.Grid.Screen;
using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Terminal.Output;

namespace ScrewSheet.Terminal.Grid.Studies;

/// <summary>What is shown while a study is asked for, waited for or read.</summary>
internal static class StudyPicture
{
    private const int Bar = 40;

    /// <summary>The columns what was found is laid out in: a line of a handout, not of a wall.</summary>
    public static int WidthOf(GridState state) => Math.Min(state.Width, 100) - 2;

    /// <summary>What stands above the detail.</summary>
    public static string Heading(Studying studying) => studying switch { Stepping step => step.Title, Working working => working.Ticket.What, _ => "" };

    /// <summary>What stands in place of the detail.</summary>
    public static IEnumerable<ScreenLine> Middle(Studying studying, int width) => studying switch
    {
        Stepping step => OfStep(step, width),
        Working working => OfWorking(working, width),
        _ => [],
    };

    /// <summary>What was found: all lines but the last, which shows the keys.</summary>
    public static IEnumerable<ScreenLine> Page(GridState state, Finding finding)
    {
        IReadOnlyList<StyledLine> lines = finding.Lines(WidthOf(state));
        int rows = state.Height - 2, below = lines.Count - finding.Top - rows;
        yield return new LineBuilder(state.Width).Add($" {finding.Title}", Ink.FrameHere).Add(below > 0 ? $"  {below} more lines below" : "", Ink.Frame).Line(Ink.Frame);
        foreach (StyledLine line in lines.Skip(finding.Top)) yield return new LineBuilder(state.Width).Add(" " + line.Text, InkOf(line.Tone)).Line();
    }

    /// <summary>The keys that apply.</summary>
    public static (string Key, string What)[] Keys(Studying studying) => studying switch
    {
        Stepping => [("Enter", "done"), ("Esc", "leave, change nothing"), ("Ctrl+U", "empty")],
        Working working => [("Esc", $"stop, {(working.Ticket.Writes ? "write" : "change")} nothing")],
        Finding finding => [.. finding.Actions.Select(action => (char.ToUpperInvariant(action.Letter).ToString(), action.Meaning)), ("↑↓", "scroll"), ("Esc", "back to the grid")],
        _ => [],
    };

    private static IEnumerable<ScreenLine> OfStep(Stepping step, int width)
    {
        if (step.Trouble is { } trouble)
        {
            foreach (string line in Wrapping.Hanging(" ! ", trouble, width - 1)) yield return new LineBuilder(width).Add(line, Ink.Bad).Line();
        }
        foreach (string said in step.SoFar) yield return new LineBuilder(width).Add("   ").Add(said, Ink.Strong).Line();
        foreach (string hint in step.Hints)
        {
            foreach (string line in Wrapping.Hanging("   ", hint, width - 1)) yield return new LineBuilder(width).Add(line, Ink.Faint).Line();
        }
    }

    private static IEnumerable<ScreenLine> OfWorking(Working working, int width)
    {
        int wide = Math.Min(Bar, width - 12);
        string share = double.IsNaN(working.Share) ? "" : $" {(int)(working.Share * 100)} %";
        int done = double.IsNaN(working.Share) ? 0 : (int)(working.Share * wide);
        yield return new LineBuilder(width).Line();
        yield return new LineBuilder(width).Add("   ").Add(new string('█', done), Ink.Good).Add(new string('░', wide - done), Ink.Faint).Add(share).Line();
        yield return new LineBuilder(width).Add($"   Esc stops it; nothing is {(working.Ticket.Writes ? "written" : "changed")} then.", Ink.Faint).Line();
    }

    private static Ink InkOf(Tone tone) => tone switch { Tone.Strong => Ink.Strong, Tone.Bad => Ink.Bad, Tone.Careful => Ink.Careful, _ => Ink.Plain };
}
