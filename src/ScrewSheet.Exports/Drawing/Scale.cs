using System.Collections.Immutable;
using ScrewSheet.Quantities.Formatting;

namespace ScrewSheet.Exports.Drawing;

/// <summary>An axis from one round number to another, with ticks at round numbers between.</summary>
/// <param name="From">The first tick.</param>
/// <param name="To">The last tick.</param>
/// <param name="Step">From tick to tick.</param>
internal readonly record struct Scale(double From, double To, double Step)
{
    private const int About = 6;

    /// <summary>Over some values; zero is taken in where it is near.</summary>
    public static Scale Over(IEnumerable<double> values)
    {
        double[] all = [.. values];
        double least = all.DefaultIfEmpty(0).Min(), most = all.DefaultIfEmpty(1).Max(), range = most - least;
        if (least > 0 && least < range) least = 0;
        if (most < 0 && -most < range) most = 0;
        if (!(most - least > 1e-9 * Math.Max(Math.Abs(most), Math.Abs(least)))) (least, most) = most == 0 ? (-1, 1) : (Math.Min(0, 2 * most), Math.Max(0, 2 * most));
        double step = Round((most - least) / About);
        return new Scale(Math.Floor((least / step) + 1e-9) * step, Math.Ceiling((most / step) - 1e-9) * step, step);
    }

    /// <summary>The ticks.</summary>
    public ImmutableArray<double> Ticks
    {
        get
        {
            (double from, double step) = (From, Step);
            return [.. Enumerable.Range(0, (int)Math.Round((To - From) / Step) + 1).Select(i => from + (i * step))];
        }
    }

    /// <summary>Where a value lies, from 0 to 1.</summary>
    public double Place(double value) => (value - From) / (To - From);

    /// <summary>The figure at a tick: as many decimals as the step has.</summary>
    public string Figure(double tick)
    {
        double clean = Math.Abs(tick) < Step * 1e-9 ? 0 : tick;
        int decimals = Math.Clamp((int)Math.Ceiling(-Math.Log10(Step) - 1e-9), 0, 15);
        return Math.Abs(clean) >= 1e7 || Step < 1e-5 ? NumberText.Format(clean, new Digits(4, true)) : NumberText.Format(clean, new Digits(decimals, false));
    }

    private static double Round(double step)
    {
        double power = Math.Pow(10, Math.Floor(Math.Log10(step))), part = step / power;
        return power * (part <= 1 ? 1 : part <= 2 ? 2 : part <= 5 ? 5 : 10);
    }
}
