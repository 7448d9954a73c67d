using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Statistics.Common;

namespace ScrewSheet.Statistics;

/// <summary>Least-squares lines and quadratics, with intervals.</summary>
public static class Regressions
{
    private const string Assumed = "The abscissa is known without error; readings scatter independently and equally about the curve.";
    private const string NotFor = "Reaching beyond the values that were measured.";
    private const string Method = "least squares by QR on the centred and scaled abscissa";

    /// <summary>The line b0 + b1 x; both series of the same length, at least three readings, two different x.</summary>
    [Callable(Topics.Regression, "Which straight line goes through the readings?", Assumes = Assumed, NotFor = NotFor)]
    [NoFormula(Method)]
    [Source(Works.StrdRegression, Standing.Read)]
    [Example("LinearRegression(Values(10 mm, 20 mm, 30 mm, 40 mm), Values(9.1 kN, 7.2 kN, 4.8 kN, 3.1 kN)).Slope", "-204 kN/m")]
    public static LineFit<TX, TY> LinearRegression<TX, TY>(
        [Parameter("x", "", Says.X)] Series<TX> x,
        [Parameter("y", "", Says.Y)] Series<TY> y) where TX : struct where TY : struct => Fit(x, y, 0, 1);

    /// <summary>The line b1 x through the origin; both series of the same length, at least two readings.</summary>
    [Callable(Topics.Regression, "Which straight line through zero goes through the readings?", Assumes = Assumed + " The curve passes through zero for a physical reason.", NotFor = NotFor + " R² here is set against zero and cannot be compared with that of a line with intercept.")]
    [NoFormula("sum of products over sum of squares, by QR")]
    [Source(Works.StrdRegression, Standing.Read)]
    [Example("RegressionThroughOrigin(Values(1 mm, 2 mm, 3 mm), Values(2.1 kN, 3.9 kN, 6.2 kN)).Slope", "2035.714286 kN/m")]
    public static LineFit<TX, TY> RegressionThroughOrigin<TX, TY>(
        [Parameter("x", "", Says.X)] Series<TX> x,
        [Parameter("y", "", Says.Y)] Series<TY> y) where TX : struct where TY : struct => Fit(x, y, 1, 1);

    /// <summary>The quadratic b0 + b1 x + b2 x²; both series of the same length, at least four readings, three different x.</summary>
    [Callable(Topics.Regression, "Which quadratic goes through the readings (calibration of a load cell)?", Assumes = Assumed, NotFor = NotFor)]
    [NoFormula(Method)]
    [Source(Works.StrdRegression, Standing.Read)]
    [Example("QuadraticRegression(Values(1, 2, 3, 4, 5), Values(2.1, 4.9, 10.2, 17.1, 26.3)).Intercept", "1.14")]
    public static LineFit<TX, TY> QuadraticRegression<TX, TY>(
        [Parameter("x", "", Says.X)] Series<TX> x,
        [Parameter("y", "", Says.Y)] Series<TY> y) where TX : struct where TY : struct => Fit(x, y, 0, 2);

    /// <summary>The fitted curve at a place, with the interval of the curve and of one further reading.</summary>
    [Callable(Topics.Regression, "What does the fitted curve say at this place, and how sure is it?", Assumes = Assumed + " Normally distributed scatter.", NotFor = NotFor)]
    [NoFormula("value of the curve plus and minus Student's quantile times its standard error, with the residual scatter added for one further reading")]
    [Source("Standard theory of the linear model, elementary", Standing.Derived)]
    [Example("PredictionAt(LinearRegression(Values(10 mm, 20 mm, 30 mm, 40 mm), Values(9.1 kN, 7.2 kN, 4.8 kN, 3.1 kN)), 25 mm).Value", "6.05 kN")]
    public static LinePrediction<TY> PredictionAt<TX, TY>(
        [Parameter("fit", "", "the fitted curve")] LineFit<TX, TY> fit,
        [Parameter("x", "", "the place along the abscissa")] TX at,
        [Parameter("C", "", Says.Confidence, Above = 0, Below = 1, UsualFrom = 0.5)] double confidence = 0.95) where TX : struct where TY : struct
    {
        ArgumentNullException.ThrowIfNull(fit);
        double x = Values.Si(at, nameof(at)), s = fit.Solution.Deviation;
        double t = Distributions.StudentQuantile((1 + Values.Share(confidence, nameof(confidence))) / 2, fit.DegreesOfFreedom);
        (double value, double error) = fit.Solution.At(x);
        double mean = t * error, single = t * Math.Sqrt((error * error) + (s * s));
        Func<double, TY> make = fit.MakeOrdinate;
        return new LinePrediction<TY>(make(value), make(error), make(value - mean), make(value + mean), make(value - single), make(value + single), confidence, CautionList.Of([
            .. fit.Cautions.Select(sentence => (true, sentence)),
            (x < fit.Solution.From || x > fit.Solution.To, "This place lies outside the values that were measured: the curve may go anywhere there."),
        ]));
    }

    private static LineFit<TX, TY> Fit<TX, TY>(Series<TX> x, Series<TY> y, int lowest, int highest) where TX : struct where TY : struct
    {
        int terms = highest - lowest + 1;
        var xs = Sample.Spread(x, terms + 1, "abscissa");
        var ys = Sample.Spread(y, terms + 1, "ordinate");
        Sample.SameLength(x, y, "abscissa", "ordinate");
        LeastSquares solution = LeastSquares.Fit(xs.AsSpan(), ys.AsSpan(), lowest, highest);
        if (!(solution.TotalSquares > 0)) throw new DomainException("All readings are equal: no dependence can be fitted.", nameof(y));
        int regressors = highest;
        double explained = Math.Max(0, solution.TotalSquares - solution.ResidualSquares);
        double f = solution.ResidualSquares > 0 ? explained / regressors / (solution.ResidualSquares / solution.Degrees) : double.MaxValue;
        (double b0, double u0) = lowest == 0 ? solution.Raw(0) : (0, 0);
        (double b1, double u1) = solution.Raw(1);
        (double b2, double u2) = highest == 2 ? solution.Raw(2) : (0, 0);
        Dimension perX = y.Dimension / x.Dimension, perX2 = perX / x.Dimension;
        return new LineFit<TX, TY>(y.Make(b0), Quantity.FromSi(b1, perX), Quantity.FromSi(b2, perX2), y.Make(u0), Quantity.FromSi(u1, perX), Quantity.FromSi(u2, perX2),
            y.Make(solution.Deviation), 1 - (solution.ResidualSquares / solution.TotalSquares), f, Distributions.FisherUpper(f, regressors, solution.Degrees), solution.Count, solution.Degrees, Cautions(solution))
        { Solution = solution, MakeOrdinate = y.Make };
    }

    private static IReadOnlyList<string> Cautions(LeastSquares solution)
    {
        Series<double> residuals = Series.OfNumbers(solution.Residuals);
        bool exact = solution.ResidualSquares <= 1e-24 * solution.TotalSquares;
        bool outlier = !exact && solution.Count >= 7 && OutlierTests.GrubbsTest(residuals, 0.01).IsOutlier;
        return CautionList.Of(
            (solution.Degrees < 5, $"Only {solution.Degrees} reading{(solution.Degrees == 1 ? "" : "s")} more than coefficients: the scatter is hardly known."),
            (outlier, "One reading lies further from the curve than chance explains (Grubbs' test at 1 %): look at it."),
            (exact, "The readings lie on the curve to the last digit: measured values do not, so check where they come from."));
    }
}
