using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Statistics.Common;

namespace ScrewSheet.Statistics;

/// <summary>A capability index with its approximate confidence interval. With the overall deviation of one sample it is a performance index (Ppk).</summary>
/// <param name="Index">Distance of the mean from the nearer limit in three deviations (Ppl, Ppu or Ppk).</param>
/// <param name="Lower">Lower end of its interval.</param>
/// <param name="Upper">Upper end of its interval.</param>
/// <param name="Confidence">Confidence of the interval, 0 to 1.</param>
/// <param name="Cautions">What the index does not show.</param>
[SheetRecord("A capability index with its interval")]
public sealed record CapabilityIndex(
    [property: Member("Ppk", "", "distance of the mean from the nearer limit, in three deviations")] double Index,
    [property: Member("", "", "lower end of its interval")] double Lower,
    [property: Member("", "", "upper end of its interval")] double Upper,
    [property: Member("C", "", "confidence of the interval, 0 to 1")] double Confidence,
    IReadOnlyList<string> Cautions) : ICautioned;

/// <summary>Capability of a process against its limits.</summary>
public static class Capability
{
    private const string Assumed = "Normally distributed values from a process under control; overall standard deviation (so Ppk, not Cpk).";

    /// <summary>The index against a single limit, such as the least strength; at least two values, not all equal.</summary>
    [Callable(Topics.Control, "How far does the process keep clear of a single limit?", Assumes = Assumed, NotFor = "A process that drifts, or a handful of pieces.")]
    [NoFormula("distance of the mean from the limit over three standard deviations, with the usual approximate interval")]
    [Source(Works.Capability, Standing.FromMemory)]
    [Example("CapabilityToLimit(Values(9.1 kN, 9.8 kN, 10.4 kN, 9.5 kN, 10.1 kN), 8 kN).Index", "1.170394")]
    public static CapabilityIndex CapabilityToLimit<T>(
        [Parameter("x", "", Says.Sample)] Series<T> sample,
        [Parameter("L", "", "the specification limit")] T limit,
        [Parameter("side", "", "which side of the limit is good")] LimitSide side = LimitSide.Lower,
        [Parameter("C", "", Says.Confidence, Above = 0, Below = 1, UsualFrom = 0.5)] double confidence = 0.95) where T : struct
    {
        Moments moments = Moments.Of(Sample.Spread(sample, 2).AsSpan());
        double off = moments.Mean - Values.SiLike(sample, limit, nameof(limit));
        return Index((side == LimitSide.Lower ? off : -off) / (3 * moments.Scattering("sample")), moments.Count, confidence);
    }

    /// <summary>The index against two limits; at least two values, not all equal, lower limit below the upper.</summary>
    [Callable(Topics.Control, "How far does the process keep clear of both limits?", Assumes = Assumed, NotFor = "A process that drifts, or a handful of pieces.")]
    [NoFormula("the smaller of both distances over three standard deviations, with the usual approximate interval")]
    [Source(Works.Capability, Standing.FromMemory)]
    [Example("CapabilityBetweenLimits(Values(9.1 kN, 9.8 kN, 10.4 kN, 9.5 kN, 10.1 kN), 8 kN, 12 kN).Index", "1.170394")]
    public static CapabilityIndex CapabilityBetweenLimits<T>(
        [Parameter("x", "", Says.Sample)] Series<T> sample,
        [Parameter("LSL", "", "the lower specification limit")] T lower,
        [Parameter("USL", "", "the upper specification limit")] T upper,
        [Parameter("C", "", Says.Confidence, Above = 0, Below = 1, UsualFrom = 0.5)] double confidence = 0.95) where T : struct
    {
        Moments moments = Moments.Of(Sample.Spread(sample, 2).AsSpan());
        double low = Values.SiLike(sample, lower, nameof(lower)), high = Values.SiLike(sample, upper, nameof(upper));
        Ordered(low, high);
        return Index(Math.Min(moments.Mean - low, high - moments.Mean) / (3 * moments.Scattering("sample")), moments.Count, confidence);
    }

    /// <summary>Cp = (USL - LSL) / (6 sigma), a pure number.</summary>
    [Callable(Topics.Control, "How many times do six deviations fit between the limits?", Assumes = "Normally distributed values; the deviation is that of the process.", NotFor = "A process off centre: Cp does not see the mean.")]
    [Formula("(upper - lower) / (6 * deviation)", Symbol = "Cp")]
    [Example("ProcessCapability(8 kN, 20 kN, 2 kN)", "1")]
    [Source(Works.Capability, Standing.FromMemory)]
    public static double ProcessCapability<T>(
        [Parameter("LSL", "", "the lower specification limit")] T lower,
        [Parameter("USL", "", "the upper specification limit")] T upper,
        [Parameter("σ", "", "the standard deviation of the process")] T deviation) where T : struct
    {
        double low = Values.Si(lower, nameof(lower)), high = Values.Si(upper, nameof(upper));
        Ordered(low, high);
        return (high - low) / (6 * Require.Above(Values.Si(deviation, nameof(deviation)), 0, "", nameof(deviation)));
    }

    /// <summary>Cpk = min(mean - LSL, USL - mean) / (3 sigma), a pure number.</summary>
    [Callable(Topics.Control, "How far does the mean keep clear of the nearer limit, in three deviations?", Assumes = "Normally distributed values; mean and deviation are those of the process.")]
    [Formula("Min(mean - lower, upper - mean) / (3 * deviation)", Symbol = "Cpk")]
    [Example("ProcessCapabilityCentred(16 kN, 8 kN, 20 kN, 2 kN)", "0.66666667")]
    [Source(Works.Capability, Standing.FromMemory)]
    public static double ProcessCapabilityCentred<T>(
        [Parameter("µ", "", "the mean of the process")] T mean,
        [Parameter("LSL", "", "the lower specification limit")] T lower,
        [Parameter("USL", "", "the upper specification limit")] T upper,
        [Parameter("σ", "", "the standard deviation of the process")] T deviation) where T : struct
    {
        double m = Values.Si(mean, nameof(mean)), low = Values.Si(lower, nameof(lower)), high = Values.Si(upper, nameof(upper));
        Ordered(low, high);
        return Math.Min(m - low, high - m) / (3 * Require.Above(Values.Si(deviation, nameof(deviation)), 0, "", nameof(deviation)));
    }

    private static void Ordered(double low, double high)
    {
        if (!(low < high)) throw new DomainException("The lower limit must be below the upper limit.", "lower");
    }

    private static CapabilityIndex Index(double index, int n, double confidence)
    {
        double z = Distributions.Z((1 + Values.Share(confidence, nameof(confidence))) / 2);
        double half = z * Math.Sqrt((1 / (9.0 * n)) + (index * index / (2.0 * (n - 1))));
        return new CapabilityIndex(index, index - half, index + half, confidence, CautionList.Of(
            (n < 30, $"From {n} pieces a capability index is very uncertain: read the lower end of its interval."),
            (index < 1, "The mean lies within three deviations of the limit: pieces beyond it must be expected.")));
    }
}
