using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Statistics.Tests.Data;
using ScrewSheet.TestKit;

namespace ScrewSheet.Statistics.Tests;

/// <summary>One certified figure of a NIST reference dataset, with what we get.</summary>
/// <param name="Set">The dataset.</param>
/// <param name="Quantity">The figure.</param>
/// <param name="Certified">As certified.</param>
/// <param name="Relative">The relative error allowed.</param>
/// <param name="Ours">Our figure.</param>
public sealed record CertifiedFigure(string Set, string Quantity, string Certified, double Relative, Func<double> Ours)
{
    /// <summary>The certified figure as a number.</summary>
    public double Value => double.Parse(Certified, System.Globalization.NumberStyles.Float, System.Globalization.CultureInfo.InvariantCulture);

    /// <summary>Log relative error: the number of correct digits, 15 at most; 0 where there is none.</summary>
    public double CorrectDigits()
    {
        double ours = Ours(), off = Value == 0 ? Math.Abs(ours) : Math.Abs((ours - Value) / Value);
        return off == 0 ? 15 : Math.Clamp(-Math.Log10(off), 0, 15);
    }
}

/// <summary>The certified figures of the NIST Statistical Reference Datasets; the list of checks prints the correct digits of each set.</summary>
public static class CertifiedSets
{
    private const string Source = "NIST, Statistical Reference Datasets, certified values";

    /// <summary>All figures, by set.</summary>
    public static IReadOnlyList<CertifiedFigure> All { get; } = [.. Univariate(), .. Lines(), .. Variance()];

    /// <summary>The fewest correct digits of each set.</summary>
    public static IEnumerable<(string Set, double Digits)> FewestDigits() =>
        All.GroupBy(figure => figure.Set).Select(set => (set.Key, set.Min(figure => figure.CorrectDigits())));

    [CheckTable]
    public static IReadOnlyList<CheckRow> Rows =>
        [.. All.Select(figure => CheckRow.Printed($"NIST StRD {figure.Set}", figure.Quantity, figure.Certified, "", Source, Standing.Read, figure.Ours)
            with { Allowed = Math.Max(Math.Abs(figure.Value) * figure.Relative, 1e-300) })];

    private static IEnumerable<CertifiedFigure> Univariate()
    {
        // NumAcc3 and NumAcc4: steps of 0.1 near 1e6 and 1e7 are no doubles, so no method over doubles reaches more.
        (string Set, double[] Data, string Mean, string Deviation, string Lag, double Mean0, double Spread)[] sets =
        [
            ("NumAcc1", StrdData.NumAcc1, "10000002", "1", "-0.5", 1e-15, 1e-13),
            ("NumAcc2", StrdData.NumAcc2, "1.2", "0.1", "-0.999", 1e-14, 1e-13),
            ("NumAcc3", StrdData.NumAcc3, "1000000.2", "0.1", "-0.999", 1e-15, 1e-9),
            ("NumAcc4", StrdData.NumAcc4, "10000000.2", "0.1", "-0.999", 1e-15, 1e-8),
            ("Mavro", StrdData.Mavro, "2.00185600000000", "0.000429123454003053", "0.937989183438248", 1e-14, 1e-12),
            ("Michelso", StrdData.Michelso, "299.852400000000", "0.0790105478190518", "0.535199668621283", 1e-14, 1e-12),
        ];
        foreach (var (set, data, mean, deviation, lag, meanAllowed, spread) in sets)
        {
            Series<double> series = Series.OfNumbers(data);
            yield return new(set, "mean", mean, meanAllowed, () => SampleStatistics.Mean(series));
            yield return new(set, "standard deviation", deviation, spread, () => SampleStatistics.StandardDeviation(series));
            yield return new(set, "lag-1 autocorrelation", lag, spread, () => SampleStatistics.LagOneAutocorrelation(series));
        }
    }

    private static IEnumerable<CertifiedFigure> Lines()
    {
        var norris = Line(StrdData.Norris, Regressions.LinearRegression);
        foreach (var figure in Coefficients("Norris", norris, "-0.262323073774029", "0.232818234301152", "1.00211681802045", "0.429796848199937E-03", "0.884796396144373", "0.999993745883712", "5436385.54079785", 1e-10)) yield return figure;
        var pontius = Line(StrdData.Pontius, Regressions.QuadraticRegression);
        foreach (var figure in Coefficients("Pontius", pontius, "0.673565789473684E-03", "0.107938612033077E-03", "0.732059160401003E-06", "0.157817399981659E-09", "0.205177424076185E-03", "0.999999900178537", "185330865.995752", 1e-9)) yield return figure;
        yield return new("Pontius", "B2", "-0.316081871345029E-14", 1e-9, () => pontius.Curvature.Si);
        yield return new("Pontius", "sd of B2", "0.486652849992036E-16", 1e-9, () => pontius.CurvatureError.Si);
        yield return new("Pontius", "residual sum of squares", "0.155761768796992E-05", 1e-9, () => Math.Pow(pontius.ResidualDeviation, 2) * pontius.DegreesOfFreedom);
        yield return new("Norris", "residual sum of squares", "26.6173985294224", 1e-10, () => Math.Pow(norris.ResidualDeviation, 2) * norris.DegreesOfFreedom);
        foreach (var figure in Coefficients("NoInt1", Line(StrdData.NoInt1, Regressions.RegressionThroughOrigin), null, null, "2.07438016528926", "0.165289256198347E-01", "3.56753034006338", "0.999365492298663", "15750.2500000000", 1e-12)) yield return figure;
        foreach (var figure in Coefficients("NoInt2", Line(StrdData.NoInt2, Regressions.RegressionThroughOrigin), null, null, "0.727272727272727", "0.420827318078432E-01", "0.369274472937998", "0.993348115299335", "298.666666666667", 1e-12)) yield return figure;
    }

    private static LineFit<double, double> Line((double[] X, double[] Y) data, Func<Series<double>, Series<double>, LineFit<double, double>> fit) =>
        fit(Series.OfNumbers(data.X), Series.OfNumbers(data.Y));

    private static IEnumerable<CertifiedFigure> Coefficients(string set, LineFit<double, double> fit, string? b0, string? u0, string b1, string u1, string s, string r2, string f, double relative)
    {
        if (b0 is not null) yield return new(set, "B0", b0, relative, () => fit.Intercept);
        if (u0 is not null) yield return new(set, "sd of B0", u0, relative, () => fit.InterceptError);
        yield return new(set, "B1", b1, relative, () => fit.Slope.Si);
        yield return new(set, "sd of B1", u1, relative, () => fit.SlopeError.Si);
        yield return new(set, "residual sd", s, relative, () => fit.ResidualDeviation);
        yield return new(set, "R squared", r2, 1e-14, () => fit.ExplainedShare);
        yield return new(set, "F", f, relative * 3, () => fit.Statistic);
    }

    private static IEnumerable<CertifiedFigure> Variance()
    {
        var (sample, group) = Of.Groups(StrdData.SiRstv);
        var silicon = GroupTests.OneWayAnova(sample, group);
        foreach (var figure in Anova("SiRstv", silicon, "5.11462616000000E-02", "2.16636560000000E-01", "1.18046237440255E+00", "1.90999039051129E-01", "1.04076068334656E-01", 1e-12)) yield return figure;
        var (atoms, instruments) = Of.Groups(StrdData.AtmWtAg);
        // Seven constant leading digits: the readings themselves hold only about nine digits of F as doubles.
        foreach (var figure in Anova("AtmWtAg", GroupTests.OneWayAnova(atoms, instruments), "3.63834187500000E-09", "1.04951729166667E-08", "1.59467335677930E+01", "2.57426544538321E-01", "1.51048314446410E-05", 1e-7)) yield return figure;
    }

    private static IEnumerable<CertifiedFigure> Anova(string set, AnalysisOfVariance<double> ours, string between, string within, string f, string r2, string s, double relative)
    {
        yield return new(set, "between sum of squares", between, relative, () => Math.Pow(ours.BetweenDeviation, 2) * ours.BetweenDegrees);
        yield return new(set, "within sum of squares", within, relative, () => Math.Pow(ours.WithinDeviation, 2) * ours.WithinDegrees);
        yield return new(set, "F", f, relative, () => ours.Statistic);
        yield return new(set, "R squared", r2, relative, () => ours.ExplainedShare);
        yield return new(set, "residual sd", s, relative, () => ours.WithinDeviation);
    }
}
