using ScrewSheet.Quantities.Declarations;

namespace ScrewSheet.Statistics;

/// <summary>A two-parameter Weibull distribution fitted by maximum likelihood.</summary>
/// <typeparam name="T">The kind of the sample.</typeparam>
/// <param name="Shape">b.</param>
/// <param name="Scale">The characteristic strength: 63.2 % break below it.</param>
/// <param name="ShapeDeviation">Standard error of the shape, from the observed information.</param>
/// <param name="ScaleDeviation">Standard error of the scale.</param>
/// <param name="Mean">The mean of the fitted distribution.</param>
/// <param name="Deviation">Its standard deviation.</param>
/// <param name="LogLikelihood">Logarithm of the likelihood, of the values in coherent SI.</param>
/// <param name="Akaike">Akaike's criterion, 4 - 2 lnL, of the values in coherent SI.</param>
/// <param name="Count">Specimens.</param>
/// <param name="Failures">How many of them broke.</param>
/// <param name="Cautions">What the fit does not support.</param>
[SheetRecord("A two-parameter Weibull distribution fitted by maximum likelihood")]
public sealed record WeibullFit<T>(
    [property: Member("b", "", "shape")] double Shape,
    [property: Member("e", "", "characteristic strength (63.2 % point)")] T Scale,
    [property: Member("u(b)", "", "standard error of the shape")] double ShapeDeviation,
    [property: Member("u(e)", "", "standard error of the characteristic strength")] T ScaleDeviation,
    [property: Member("", "", "mean of the fitted distribution")] T Mean,
    [property: Member("", "", "standard deviation of the fitted distribution")] T Deviation,
    [property: Member("lnL", "", "logarithm of the likelihood of the values in coherent SI")] double LogLikelihood,
    [property: Member("AIC", "", "Akaike's criterion of the values in coherent SI; compare only fits of the same data")] double Akaike,
    [property: Member("n", "", "specimens")] double Count,
    [property: Member("r", "", "specimens that broke")] double Failures,
    IReadOnlyList<string> Cautions) : ICautioned where T : struct
{
    /// <summary>Covariance of ln b and ln e, from the observed information.</summary>
    internal (double Shape, double Scale, double Both) LogVariances { get; init; }
}

/// <summary>A two-parameter Weibull distribution from a straight line through a probability plot.</summary>
/// <typeparam name="T">The kind of the sample.</typeparam>
/// <param name="Shape">b.</param>
/// <param name="Scale">The characteristic strength.</param>
/// <param name="Correlation">Correlation of the plotted points, 0 to 1.</param>
/// <param name="Mean">The mean of the fitted distribution.</param>
/// <param name="Deviation">Its standard deviation.</param>
/// <param name="Count">Specimens.</param>
/// <param name="Failures">How many of them broke.</param>
/// <param name="Cautions">What the fit does not support.</param>
[SheetRecord("A two-parameter Weibull distribution from a straight line through a probability plot (median ranks)")]
public sealed record WeibullPlotFit<T>(
    [property: Member("b", "", "shape")] double Shape,
    [property: Member("e", "", "characteristic strength (63.2 % point)")] T Scale,
    [property: Member("ρ", "", "correlation of the plotted points")] double Correlation,
    [property: Member("", "", "mean of the fitted distribution")] T Mean,
    [property: Member("", "", "standard deviation of the fitted distribution")] T Deviation,
    [property: Member("n", "", "specimens")] double Count,
    [property: Member("r", "", "specimens that broke")] double Failures,
    IReadOnlyList<string> Cautions) : ICautioned where T : struct;

/// <summary>A fractile of a fitted distribution with one-sided bounds.</summary>
/// <typeparam name="T">The kind of the sample.</typeparam>
/// <param name="Value">The fractile.</param>
/// <param name="LowerBound">One-sided lower confidence bound.</param>
/// <param name="UpperBound">One-sided upper confidence bound.</param>
/// <param name="Fraction">The share that breaks below it, 0 to 1.</param>
/// <param name="Confidence">The confidence of each bound, 0 to 1.</param>
/// <param name="Cautions">What the numbers do not support.</param>
[SheetRecord("A fractile of a fitted distribution with one-sided confidence bounds")]
public sealed record BoundedFractile<T>(
    [property: Member("", "", "the fractile of the fitted distribution")] T Value,
    [property: Member("", "", "lower confidence bound (one-sided)")] T LowerBound,
    [property: Member("", "", "upper confidence bound (one-sided)")] T UpperBound,
    [property: Member("q", "", "share that breaks below it, 0 to 1")] double Fraction,
    [property: Member("C", "", "confidence of each bound, 0 to 1")] double Confidence,
    IReadOnlyList<string> Cautions) : ICautioned where T : struct;
