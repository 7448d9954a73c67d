using System.Globalization;
using ScrewSheet.Terminal.Grid.State;

namespace ScrewSheet.Terminal.Grid.Screen;

/// <summary>A plot in dots, eight to a character, with figures along both axes.</summary>
internal static class PlotPicture
{
    private const int LabelWidth = 10;

    /// <summary>The lines of a screen but the last.</summary>
    public static IEnumerable<ScreenLine> Lines(Plot plot, int width, int height)
    {
        int columns = Math.Max(4, width - LabelWidth - 3), rows = Math.Max(2, height - 5);
        (double lowX, double highX) = Range(plot.Points.Select(point => point.X));
        (double lowY, double highY) = Range(plot.Points.Select(point => point.Y));
        int[,] dots = Dots(plot, columns, rows, (lowX, highX), (lowY, highY));
        yield return new LineBuilder(width).Add(Fit.Cut($" {plot.Up} over {plot.Across}", width), Ink.FrameHere).Line(Ink.Frame);
        yield return new LineBuilder(width).Add($" {plot.Points.Length} points{(plot.LeftOut > 0 ? $"; {plot.LeftOut} rows without two figures are left out" : "")}", Ink.Faint).Line();
        for (int row = 0; row < rows; row++)
        {
            double? label = row == 0 ? highY : row == rows - 1 ? lowY : row == (rows - 1) / 2 ? highY - ((highY - lowY) * row / (rows - 1)) : null;
            LineBuilder line = new LineBuilder(width).Add(Fit.Figure(label is { } value ? Figure(value) : "", LabelWidth), Ink.Faint).Add(label is null ? " │" : " ┤", Ink.Frame);
            yield return line.Add(string.Concat(Enumerable.Range(0, columns).Select(column => Dots(dots[row, column]))), Ink.Strong).Line();
        }
        yield return new LineBuilder(width).To(LabelWidth + 1).Add("└" + new string('─', columns), Ink.Frame).Line();
        string left = Figure(lowX), right = Figure(highX);
        yield return new LineBuilder(width).To(LabelWidth + 2).Add(left, Ink.Faint).To(Math.Max(LabelWidth + 3 + left.Length, LabelWidth + 2 + columns - right.Length)).Add(right, Ink.Faint).Line();
    }

    // the pattern without dots is a letter nobody sees, so a blank stands for it
    private static char Dots(int pattern) => pattern == 0 ? ' ' : (char)(0x2800 + pattern);

    private static int[,] Dots(Plot plot, int columns, int rows, (double Low, double High) across, (double Low, double High) up)
    {
        int[,] dots = new int[rows, columns];
        void Dot(int dotX, int dotY) => dots[dotY / 4, dotX / 2] |= dotY % 4 == 3 ? 0x40 << (dotX % 2) : 1 << ((dotY % 4) + (dotX % 2 * 3));

        (int X, int Y)? before = null;
        foreach ((double x, double y) in plot.Points)
        {
            (int X, int Y) here = (Place(x, across, (columns * 2) - 1), (rows * 4) - 1 - Place(y, up, (rows * 4) - 1));
            Dot(here.X, here.Y);
            if (plot.IsJoined && before is { } from) Join(from, here, Dot);
            before = here;
        }
        return dots;
    }

    /// <summary>Every third dot between two points.</summary>
    private static void Join((int X, int Y) from, (int X, int Y) to, Action<int, int> dot)
    {
        const int apart = 3;
        int steps = Math.Max(Math.Abs(to.X - from.X), Math.Abs(to.Y - from.Y));
        for (int step = apart; step < steps; step += apart) dot(from.X + (int)Math.Round((to.X - from.X) * (double)step / steps), from.Y + (int)Math.Round((to.Y - from.Y) * (double)step / steps));
    }

    private static int Place(double value, (double Low, double High) range, int last) => Math.Clamp((int)Math.Round((value - range.Low) / (range.High - range.Low) * last), 0, last);

    /// <summary>From the least to the greatest; some room where all are the same.</summary>
    private static (double Low, double High) Range(IEnumerable<double> values)
    {
        double[] all = [.. values];
        double low = all.Min(), high = all.Max();
        double room = low == 0 ? 1 : Math.Abs(low) * 0.1;
        return high - low > 0 ? (low, high) : (low - room, high + room);
    }

    private static string Figure(double value) => value.ToString("G5", CultureInfo.InvariantCulture);
}
