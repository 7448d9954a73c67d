namespace ScrewSheet.Studies.Uncertainty;

/// <summary>A derivative by differences that check themselves.</summary>
/// <param name="Value">The derivative.</param>
/// <param name="Error">How far it may be off, as far as the differences show.</param>
internal readonly record struct Derivative(double Value, double Error)
{
    private const int Rows = 10;

    /// <summary>
    /// Central differences of shrinking width, extrapolated to none (C. J. F. Ridders, Accurate computation of F'(x) and F'(x)F''(x), Advances in Engineering Software 4, 1982).
    /// NaN where the function has no value beside the point.
    /// </summary>
    /// <param name="function">The function of the distance from the point.</param>
    /// <param name="width">The greatest distance.</param>
    public static Derivative Of(Func<double, double> function, double width)
    {
        const double shrink = 1.6, shrinkSquare = shrink * shrink;
        double[] before = new double[Rows], now = new double[Rows];
        Derivative best = new(double.NaN, double.PositiveInfinity);
        for (int row = 0; row < Rows; row++, width /= shrink)
        {
            double factor = shrinkSquare;
            now[0] = (function(width) - function(-width)) / (2 * width);
            if (row == 0 && !double.IsNaN(now[0])) best = new Derivative(now[0], double.PositiveInfinity);
            for (int column = 1; column <= row; column++, factor *= shrinkSquare)
            {
                now[column] = ((now[column - 1] * factor) - before[column - 1]) / (factor - 1);
                double error = Math.Max(Math.Abs(now[column] - now[column - 1]), Math.Abs(now[column] - before[column - 1]));
                if (error <= best.Error || double.IsNaN(best.Value)) best = new Derivative(now[column], error);
            }
            if (row > 0 && Math.Abs(now[row] - before[row - 1]) >= 2 * best.Error) break;
            (before, now) = (now, before);
        }
        return best;
    }
}
