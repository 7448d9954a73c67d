using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Studies.Tests.Support;
using ScrewSheet.Studies.Uncertainty;
using ScrewSheet.TestKit;
using ScrewSheet.Workbooks.Results;
using static ScrewSheet.TestKit.CheckRow;

namespace ScrewSheet.Studies.Tests.Checks;

/// <summary>The examples of the guides to the expression of uncertainty, and other published spreads, each as a workbook.</summary>
internal static class UncertaintyChecks
{
    private const string Group = "Uncertainty", EndGauge = "JCGM 100:2008, Evaluation of measurement data, example H.1 (end gauge), as transcribed in two public test suites";
    private const string Impedance = "JCGM 100:2008, example H.2 (simultaneous resistance and reactance), as transcribed in two public test suites";
    private const string Sums = "JCGM 101:2008, Propagation of distributions using a Monte Carlo method, section 9.2", Mass = "JCGM 101:2008, section 9.3 (mass calibration), from memory";
    private const string Ishigami = "T. Ishigami and T. Homma, An importance quantification technique in uncertainty analysis for computer models, ISUMA 1990; indices as transcribed in public test suites";
    private const string Reliability = "public reliability text, normal strength and load";

    private static readonly Lazy<UncertaintyReport> Gauge = new(() => Study(
        """
        A1 lS = 50000623 ± 25 k=1 dof 18
        A2 d = 215 ± 9.7 k=1 dof 25.6
        A3 aS = 0.0000115 ± 0.0000012 k=1
        A4 theta = -0.1 ± 0.41 k=1
        A5 da = 0 ± 5.8e-7 k=1 dof 50
        A6 dt = 0 ± 0.029 k=1 dof 2
        A7 l => lS + d - lS * (da * theta + aS * dt)
        """, "l"));

    private static readonly Lazy<StudyBook> Circuit = new(() => StudyBook.Of(
        """
        screwsheet 1
        correlate volt, ampere -0.35531122
        correlate volt, phase 0.857624211
        correlate ampere, phase -0.645111218

        sheet S
        A1 volt = 4.999 ± 0.00320936131 k=1
        A2 ampere = 0.019661 ± 9.47100839e-6 k=1
        A3 phase = 1.04446 rad ± 7.52063827e-4 rad k=1
        A4 r => volt / ampere * Cos(phase)
        A5 x => volt / ampere * Sin(phase)
        A6 z => volt / ampere
        """));

    private static readonly Lazy<UncertaintyReport> Normals = new(() => Study("A1 a = 0 ± 1 k=1\nA2 b = 0 ± 1 k=1\nA3 c = 0 ± 1 k=1\nA4 d = 0 ± 1 k=1\nA5 y => a + b + c + d", "y"));

    private static readonly Lazy<UncertaintyReport> Rectangles = new(() => Study(Rectangular(1), "y"));

    private static readonly Lazy<UncertaintyReport> OneWide = new(() => Study(Rectangular(10), "y"));

    private static readonly Lazy<UncertaintyReport> Weight = new(() => Study(
        """
        A1 mR = 100000 ± 0.05 k=1
        A2 dR = 1.234 ± 0.02 k=1
        A3 air = 1.2 ± 0.1 rectangular
        A4 weight = 8000 ± 1000 rectangular
        A5 reference = 8000 ± 50 rectangular
        A6 dm => (mR + dR) * (1 + (air - 1.2) * (1 / weight - 1 / reference)) - 100000
        """, "dm"));

    private static readonly Lazy<UncertaintyReport> Waves = new(() => Study(
        """
        A1 w_1 = 0 rad ± 3.14159265358979 rad rectangular
        A2 w_2 = 0 rad ± 3.14159265358979 rad rectangular
        A3 w_3 = 0 rad ± 3.14159265358979 rad rectangular
        A4 y => Sin(w_1) + 7 * Pow(Sin(w_2), 2) + 0.1 * Pow(w_3 / 1 rad, 4) * Sin(w_1)
        """, "y", 8_000_000));

    private static readonly Lazy<UncertaintyReport> Interference = new(() => Study("A1 load = 20 kN ± 6 kN k=1\nA2 strength = 40 kN ± 7 kN k=1\nA3 holds => strength > load", "holds"));

    [CheckTable]
    public static IEnumerable<CheckRow> Guides =>
    [
        Printed(Group, "end gauge: length, nm", "50000838", "", EndGauge, Standing.SecondHand, () => Si(Gauge)),
        Printed(Group, "end gauge: u, nm", "32", "", EndGauge, Standing.SecondHand, () => Gauge.Value.FirstOrder!.StandardUncertainty),
        Printed(Group, "end gauge: effective degrees of freedom", "16", "", EndGauge, Standing.SecondHand, () => Gauge.Value.FirstOrder!.Freedom, 0),
        Printed(Group, "end gauge: contribution of the standard, nm", "25", "", EndGauge, Standing.SecondHand, () => Contribution(Gauge, "lS")),
        Printed(Group, "end gauge: contribution of the comparison, nm", "9.7", "", EndGauge, Standing.SecondHand, () => Contribution(Gauge, "d")),
        Printed(Group, "end gauge: contribution of the expansion coefficients, nm", "2.9", "", EndGauge, Standing.SecondHand, () => Contribution(Gauge, "da")),
        Printed(Group, "end gauge: contribution of the temperatures, nm", "16.7", "", EndGauge, Standing.SecondHand, () => Contribution(Gauge, "dt")),
        Printed(Group, "end gauge: 99 % half-width, nm", "93", "", EndGauge, Standing.SecondHand, () => Quantiles.Student(0.995, Gauge.Value.FirstOrder!.Freedom) * Gauge.Value.FirstOrder.StandardUncertainty),
        Printed(Group, "end gauge: u with second-order terms, nm", "34", "", EndGauge, Standing.SecondHand, () => Gauge.Value.FirstOrder!.SecondOrder),
        Printed(Group, "Student's t, 99 % both sides, 16 degrees of freedom", "2.92", "", EndGauge, Standing.SecondHand, () => Quantiles.Student(0.995, 16)),
        .. Correlated("r", "127.732", "0.071", 0.5), .. Correlated("x", "219.847", "0.295", 1), .. Correlated("z", "254.260", "0.236", 0.5),
    ];

    // what draws give differs by chance: by no more than five standard errors, s.e.(mean) = u / √M, s.e.(u) = u √((kurtosis − 1) / 4M), s.e.(end) = √(q (1 − q) / M) / density;
    // the printed ends of the mass calibration come from draws themselves, so they may differ by 0.002
    [CheckTable]
    public static IEnumerable<CheckRow> Distributions =>
    [
        Printed(Group, "four normal givens, u", "2.00", "", Sums + ".2", Standing.SecondHand, () => Normals.Value.MonteCarlo!.StandardUncertainty),
        Printed(Group, "four normal givens, half of the 95 % interval", "3.92", "", Sums + ".2", Standing.SecondHand, () => Half(Normals), 1),
        Printed(Group, "four normal givens, first order", "3.92", "", Sums + ".2", Standing.SecondHand, () => (Normals.Value.FirstOrder!.High - Normals.Value.FirstOrder.Low) / 2),
        Printed(Group, "four rectangular givens, u", "2.00", "", Sums + ".3", Standing.SecondHand, () => Rectangles.Value.MonteCarlo!.StandardUncertainty),
        Printed(Group, "four rectangular givens, half of the 95 % interval", "3.88", "", Sums + ".3", Standing.SecondHand, () => Half(Rectangles), 1),
        Printed(Group, "four rectangular givens, one ten times wider, u", "10.1", "", Sums + ".4, from memory", Standing.FromMemory, () => OneWide.Value.MonteCarlo!.StandardUncertainty, 0.6),
        Printed(Group, "four rectangular givens, one ten times wider, half of the 95 % interval", "17.0", "", Sums + ".4, from memory", Standing.FromMemory, () => Half(OneWide)),
        Printed(Group, "four rectangular givens, one ten times wider, first order", "19.9", "", Sums + ".4, from memory", Standing.FromMemory, () => (OneWide.Value.FirstOrder!.High - OneWide.Value.FirstOrder.Low) / 2),
        Printed(Group, "mass calibration, first order, u in mg", "0.0539", "", Mass, Standing.FromMemory, () => Weight.Value.FirstOrder!.StandardUncertainty),
        Printed(Group, "mass calibration, first order, lower end in mg", "1.1285", "", Mass, Standing.FromMemory, () => Weight.Value.FirstOrder!.Low),
        Printed(Group, "mass calibration, first order, upper end in mg", "1.3395", "", Mass, Standing.FromMemory, () => Weight.Value.FirstOrder!.High),
        Printed(Group, "mass calibration, with second-order terms, u in mg", "0.0750", "", Mass, Standing.FromMemory, () => Weight.Value.FirstOrder!.SecondOrder),
        Printed(Group, "mass calibration, Monte Carlo, mean in mg", "1.2341", "", Mass, Standing.FromMemory, () => Weight.Value.MonteCarlo!.Mean, 3),
        Printed(Group, "mass calibration, Monte Carlo, u in mg", "0.0754", "", Mass, Standing.FromMemory, () => Weight.Value.MonteCarlo!.StandardUncertainty, 3),
        Printed(Group, "mass calibration, Monte Carlo, lower end in mg", "1.0834", "", Mass, Standing.FromMemory, () => Weight.Value.MonteCarlo!.Low, 20),
        Printed(Group, "mass calibration, Monte Carlo, upper end in mg", "1.3825", "", Mass, Standing.FromMemory, () => Weight.Value.MonteCarlo!.High, 20),
        Printed(Group, "Ishigami function: mean", "3.5", "", Ishigami, Standing.SecondHand, () => Waves.Value.MonteCarlo!.Mean, 0.06),
        Printed(Group, "Ishigami function: variance", "13.845", "", Ishigami, Standing.SecondHand, () => Math.Pow(Waves.Value.MonteCarlo!.StandardUncertainty, 2), 20),
        .. Index("w_1", "0.3139", "0.5576"), .. Index("w_2", "0.4424", "0.4424"), .. Index("w_3", "0.0000", "0.2437"),
        Printed(Group, "load N(20, 6), strength N(40, 7): the check fails", "1.50298", "%", Reliability, Standing.Read, () => 100 * Interference.Value.Checks[0].Probability, 5000),
    ];

    /// <summary>Sums of squares (JCGM 101:2008, 9.4): exact values, where first order sees nothing at all.</summary>
    [CheckTable]
    public static IEnumerable<CheckRow> Squares =>
    [
        Arithmetic(Group, "sum of two squares at zero, mean in 1e-6", 50, "", () => 1e6 * Square("0").MonteCarlo!.Mean, 0.005),
        Arithmetic(Group, "sum of two squares at zero, u in 1e-6", 50, "", () => 1e6 * Square("0").MonteCarlo!.StandardUncertainty, 0.007),
        Arithmetic(Group, "sum of two squares at 0.010, u in 1e-6", 111.8034, "", () => 1e6 * Square("0.01").MonteCarlo!.StandardUncertainty, 0.007),
        Arithmetic(Group, "sum of two squares at 0.050, u in 1e-6", 502.4938, "", () => 1e6 * Square("0.05").MonteCarlo!.StandardUncertainty, 0.007),
        Arithmetic(Group, "sum of two squares at 0.050, first order, u in 1e-6", 500, "", () => 1e6 * Square("0.05").FirstOrder!.StandardUncertainty, 1e-9),
        Arithmetic(Group, "sum of two correlated squares at zero, u in 1e-6", 67.2681, "", () => 1e6 * Square("0", "correlate a, b 0.9").MonteCarlo!.StandardUncertainty, 0.007),
        Arithmetic(Group, "sum of two squares at zero, upper end of the shortest interval in 1e-6", 149.787, "", () => 1e6 * Square("0").MonteCarlo!.ShortestHigh, 0.007),
    ];

    private static UncertaintyReport Square(string at, string head = "") =>
        Of(StudyBook.Of($"screwsheet 1\n{head}\n\nsheet S\nA1 a = {at} ± 0.005 k=1\nA2 b = 0 ± 0.005 k=1\nA3 y => a * a + b * b"), "y");

    private static IEnumerable<CheckRow> Correlated(string cell, string value, string u, double units) =>
    [
        Printed(Group, $"impedance with correlated readings: {cell}", value, "", Impedance, Standing.SecondHand, () => Si(Of(Circuit.Value, cell)), 1),
        Printed(Group, $"impedance with correlated readings: u of {cell}", u, "", Impedance, Standing.SecondHand, () => Of(Circuit.Value, cell).FirstOrder!.StandardUncertainty, units),
    ];

    private static IEnumerable<CheckRow> Index(string given, string first, string total) =>
    [
        Printed(Group, $"Ishigami function: share of {given} by itself", first, "", Ishigami, Standing.SecondHand, () => Waves.Value.Givens.Single(share => share.Given.Label == given).Sobol, 50),
        Printed(Group, $"Ishigami function: share {given} has a part in", total, "", Ishigami, Standing.SecondHand, () => Waves.Value.Givens.Single(share => share.Given.Label == given).SobolTotal, 50),
    ];

    private static string Rectangular(double wide)
    {
        string one = Math.Sqrt(3).ToString("R", System.Globalization.CultureInfo.InvariantCulture), other = (wide * Math.Sqrt(3)).ToString("R", System.Globalization.CultureInfo.InvariantCulture);
        return $"A1 a = 0 ± {one} rectangular\nA2 b = 0 ± {one} rectangular\nA3 c = 0 ± {one} rectangular\nA4 d = 0 ± {other} rectangular\nA5 y => a + b + c + d";
    }

    private static UncertaintyReport Study(string lines, string cell, long? samples = null) => Of(StudyBook.Of(lines), cell, samples);

    private static UncertaintyReport Of(StudyBook sheet, string cell, long? samples = null)
    {
        StudyOutcome<UncertaintyReport> outcome = sheet.Runner.Uncertainty(sheet.Calculation, new UncertaintyRequest { Cell = StudyBook.At(cell), Samples = samples });
        Assert.True(outcome.IsAnswered, outcome.Fault?.Sentence);
        return outcome.Answer;
    }

    private static double Half(Lazy<UncertaintyReport> report) => (report.Value.MonteCarlo!.High - report.Value.MonteCarlo.Low) / 2;

    private static double Si(Lazy<UncertaintyReport> report) => Si(report.Value);

    private static double Si(UncertaintyReport report) => SiValue.Of(report.Value)!.Value;

    private static double Contribution(Lazy<UncertaintyReport> report, string given) => Math.Abs(report.Value.Givens.Single(share => share.Given.Label == given).Contribution);
}
