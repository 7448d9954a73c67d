using System.Globalization;
using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;
using UnitsNet;

namespace ScrewSheet.Mechanics.ViscoElastic;

/// <summary>Tension and stretch sampled at even times from the rope just taut.</summary>
[SheetRecord("tension and stretch sampled at even times from the rope just taut")]
public sealed record FallHistory : ICautioned
{
    private FallHistory(Series<Duration> times, Series<Force> forces, Series<Length> stretches, IReadOnlyList<string> cautions)
    {
        Times = times;
        Forces = forces;
        Stretches = stretches;
        Cautions = cautions;
    }

    /// <summary>The times, from 0.</summary>
    [Member("t", "s", "the times, from 0")]
    public Series<Duration> Times { get; }

    /// <summary>Tension at each.</summary>
    [Member("F", "N", "tension at each time")]
    public Series<Force> Forces { get; }

    /// <summary>Stretch at each.</summary>
    [Member("x", "m", "stretch at each time")]
    public Series<Length> Stretches { get; }

    /// <inheritdoc/>
    public IReadOnlyList<string> Cautions { get; }

    internal static FallHistory Sample(RopeMotion motion, double until, int samples)
    {
        double[] times = new double[samples], forces = new double[samples], stretches = new double[samples];
        double? slack = null;
        for (int i = 0; i < samples; i++)
        {
            times[i] = until * i / (samples - 1);
            (forces[i], stretches[i]) = motion.At(times[i]);
            if (forces[i] < -1e-9) slack ??= times[i];
        }
        return new FallHistory(Series.Of<Duration>(times), Series.Of<Force>(forces), Series.Of<Length>(stretches), slack is { } from ? [Slack(from)] : []);
    }

    private static string Slack(double from) => string.Create(CultureInfo.InvariantCulture,
        $"The rope goes slack at about {from:G3} s; a rope cannot push, so the values from there on mean nothing.");
}
