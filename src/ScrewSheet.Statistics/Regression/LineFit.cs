using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;

namespace ScrewSheet.Statistics;

/// <summary>A curve fitted by least squares. Units written with <c>TX</c> and <c>TY</c> mean the kinds of abscissa and ordinate.</summary>
/// <typeparam name="TX">The kind along the abscissa.</typeparam>
/// <typeparam name="TY">The kind measured.</typeparam>
/// <param name="Intercept">Value at zero; zero for a line through the origin.</param>
/// <param name="Slope">Ordinate per abscissa.</param>
/// <param name="Curvature">Coefficient of the square of the abscissa; zero for a line.</param>
/// <param name="InterceptError">Standard error of the intercept; zero for a line through the origin.</param>
/// <param name="SlopeError">Standard error of the slope.</param>
/// <param name="CurvatureError">Standard error of the curvature; zero for a line.</param>
/// <param name="ResidualDeviation">Standard deviation of the residuals.</param>
/// <param name="ExplainedShare">R², 0 to 1; without intercept set against the raw sum of squares.</param>
/// <param name="Statistic">F of the regression.</param>
/// <param name="PValue">The chance of such an F without any dependence, 0 to 1.</param>
/// <param name="Count">Readings.</param>
/// <param name="DegreesOfFreedom">Readings less coefficients.</param>
/// <param name="Cautions">What the fit does not support.</param>
[SheetRecord("A straight line or quadratic fitted by least squares")]
public sealed record LineFit<TX, TY>(
    [property: Member("b0", "", "value at zero")] TY Intercept,
    [property: Member("b1", "TY/TX", "slope")] Quantity Slope,
    [property: Member("b2", "TY/TX²", "coefficient of the square")] Quantity Curvature,
    [property: Member("u(b0)", "", "standard error of the value at zero")] TY InterceptError,
    [property: Member("u(b1)", "TY/TX", "standard error of the slope")] Quantity SlopeError,
    [property: Member("u(b2)", "TY/TX²", "standard error of the coefficient of the square")] Quantity CurvatureError,
    [property: Member("s", "", "standard deviation of the residuals")] TY ResidualDeviation,
    [property: Member("R²", "", "share of the sum of squares explained, 0 to 1")] double ExplainedShare,
    [property: Member("F", "", "F of the regression")] double Statistic,
    [property: Member("p", "", "chance of such an F without any dependence")] double PValue,
    [property: Member("n", "", "readings")] double Count,
    [property: Member("ν", "", "degrees of freedom of the residuals")] double DegreesOfFreedom,
    IReadOnlyList<string> Cautions) : ICautioned
    where TX : struct
    where TY : struct
{
    /// <summary>The fit on the centred and scaled abscissa, for intervals.</summary>
    internal LeastSquares Solution { get; init; } = null!;

    /// <summary>Makes ordinates from coherent SI.</summary>
    internal Func<double, TY> MakeOrdinate { get; init; } = null!;
}

/// <summary>What a fitted curve says at one place.</summary>
/// <typeparam name="TY">The kind measured.</typeparam>
/// <param name="Value">The curve's value.</param>
/// <param name="StandardError">Standard error of the curve there.</param>
/// <param name="MeanLower">Lower end of the confidence interval of the curve.</param>
/// <param name="MeanUpper">Upper end.</param>
/// <param name="SingleLower">Lower end of the interval for one further reading.</param>
/// <param name="SingleUpper">Upper end.</param>
/// <param name="Confidence">Confidence of both intervals, 0 to 1.</param>
/// <param name="Cautions">What the numbers do not support.</param>
[SheetRecord("What a fitted curve says at one place, with intervals")]
public sealed record LinePrediction<TY>(
    [property: Member("", "", "value of the curve")] TY Value,
    [property: Member("u", "", "standard error of the curve there")] TY StandardError,
    [property: Member("", "", "lower end for the curve")] TY MeanLower,
    [property: Member("", "", "upper end for the curve")] TY MeanUpper,
    [property: Member("", "", "lower end for one further reading")] TY SingleLower,
    [property: Member("", "", "upper end for one further reading")] TY SingleUpper,
    [property: Member("C", "", "confidence, 0 to 1")] double Confidence,
    IReadOnlyList<string> Cautions) : ICautioned
    where TY : struct;
