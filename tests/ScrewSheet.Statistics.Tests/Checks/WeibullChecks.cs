using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Statistics.Tests.Data;
using ScrewSheet.TestKit;
using static ScrewSheet.TestKit.CheckRow;

namespace ScrewSheet.Statistics.Tests.Checks;

/// <summary>Weibull fits by both ways.</summary>
public static class WeibullChecks
{
    private const string Group = "Weibull";
    private const string Handbook = Works.Nist + "8.4.1.3";

    private static WeibullFit<double> Hours => WeibullLikelihood.WeibullCensoredLikelihood(Of.Numbers(PrintedBatches.Hours), Of.Numbers(PrintedBatches.HoursCensored));

    private static WeibullFit<double> Bearings => WeibullLikelihood.WeibullMaximumLikelihood(Of.Numbers(PrintedBatches.BallBearings));

    private static Series<double> Ten => Of.Numbers(16, 34, 53, 75, 93, 120, 150, 191, 240, 339);

    private static Series<double> Six => Of.Numbers(16, 34, 53, 75, 93, 120);

    [CheckTable]
    public static IReadOnlyList<CheckRow> Likelihood =>
    [
        Printed(Group, "NIST hours, shape", "1.7208", "", Handbook, Standing.Read, () => Hours.Shape),
        Printed(Group, "NIST hours, scale", "606.5280", "h", Handbook, Standing.Read, () => Hours.Scale) with { Allowed = 606.528 * 1e-6 },
        Printed(Group, "NIST hours, log-likelihood magnitude", "75.135", "", Handbook, Standing.Read, () => -Hours.LogLikelihood),
        Printed(Group, "NIST hours, AIC", "154.27", "", Handbook, Standing.Read, () => Hours.Akaike),
        Printed(Group, "NIST hours, mean", "540.737", "h", Handbook, Standing.Read, () => Hours.Mean) with { Allowed = 540.737 * 1e-6 },
        Printed(Group, "NIST hours, sd", "323.806", "h", Handbook, Standing.Read, () => Hours.Deviation) with { Allowed = 323.806 * 2e-6 },
        Arithmetic(Group, "NIST hours, shape, more digits", 1.72079726080, "", () => Hours.Shape, 1e-9),
        Arithmetic(Group, "NIST hours, scale, more digits", 606.527558004, "h", () => Hours.Scale, 1e-9),
        Arithmetic(Group, "NIST hours, lnL, more digits", -75.1346181645, "", () => Hours.LogLikelihood, 1e-9),
        Arithmetic(Group, "NIST hours, B10", 164.022439, "h", () => WeibullLikelihood.WeibullFractile(Hours, 0.1).Value, 1e-8),
        Arithmetic(Group, "NIST hours, u(b)", 0.502151, "", () => Hours.ShapeDeviation, 2e-6),
        Arithmetic(Group, "NIST hours, u(e)", 124.910656, "h", () => Hours.ScaleDeviation, 1e-8),
        Arithmetic(Group, "NIST hours, CI of b, lower", 0.971266, "", () => WeibullLikelihood.WeibullShapeInterval(Hours).Lower, 1e-6),
        Arithmetic(Group, "NIST hours, CI of b, upper", 3.048746, "", () => WeibullLikelihood.WeibullShapeInterval(Hours).Upper, 1e-6),
        Arithmetic(Group, "NIST hours, CI of e, lower", 405.0893, "h", () => WeibullLikelihood.WeibullScaleInterval(Hours).Lower, 2e-7),
        Arithmetic(Group, "NIST hours, CI of e, upper", 908.1348, "h", () => WeibullLikelihood.WeibullScaleInterval(Hours).Upper, 1e-7),
        Printed(Group, "ball bearings, shape", "2.102", "", "Lieblein and Zelen, 1956, fitted by Lawless and by Meeker", Standing.SecondHand, () => Bearings.Shape),
        Printed(Group, "ball bearings, scale", "81.88", "Mrev", "Lieblein and Zelen, 1956, fitted by Lawless and by Meeker", Standing.SecondHand, () => Bearings.Scale),
        Arithmetic(Group, "ball bearings, shape, more digits", 2.10205887519, "", () => Bearings.Shape, 1e-9),
        Arithmetic(Group, "ball bearings, scale, more digits", 81.8783340516, "", () => Bearings.Scale, 1e-9),
        Arithmetic(Group, "ball bearings, lnL", -113.691290932, "", () => Bearings.LogLikelihood, 1e-9),
        Arithmetic(Group, "ball bearings, B10", 28.0694141, "", () => WeibullLikelihood.WeibullFractile(Bearings, 0.1).Value, 4e-9),
        Arithmetic(Group, "ball bearings with 48.40 copied for 48.48, shape", 2.1018469, "", () => Seventh(48.40).Shape, 3e-8),
        Arithmetic(Group, "ball bearings with 48.80 copied for 48.48, shape", 2.1029030, "", () => Seventh(48.80).Shape, 3e-8),
        Printed(Group, "right-censored teaching set, shape", "2.149", "", "right-censored teaching set in a public test suite", Standing.SecondHand, () => Teaching.Shape) with { Allowed = 2.149e-3 },
        Printed(Group, "right-censored teaching set, scale", "28.99", "", "right-censored teaching set in a public test suite", Standing.SecondHand, () => Teaching.Scale) with { Allowed = 28.99e-3 },
        Arithmetic(Group, "right-censored teaching set, shape, more digits", 2.14937498, "", () => Teaching.Shape, 3e-9),
        Arithmetic(Group, "right-censored teaching set, scale, more digits", 28.9963522, "", () => Teaching.Scale, 3e-9),
        Arithmetic(Group, "batch of 18, shape", 24.8106466, "", () => Eighteen.Shape, 3e-9),
        Arithmetic(Group, "batch of 18, scale", 144.887210, "", () => Eighteen.Scale, 5e-9),
        Arithmetic(Group, "batch of 18, B10", 132.324058, "", () => WeibullLikelihood.WeibullFractile(Eighteen, 0.1).Value, 5e-9),
        Arithmetic(Group, "ten values by likelihood, shape", 1.37240986, "", () => WeibullLikelihood.WeibullMaximumLikelihood(Ten).Shape, 5e-9),
        Arithmetic(Group, "ten values by likelihood, scale", 143.599387, "", () => WeibullLikelihood.WeibullMaximumLikelihood(Ten).Scale, 5e-9),
        Printed(Group, "six values by likelihood, shape", "1.933", "", "six-failure example of the probability-plot literature", Standing.FromMemory, () => WeibullLikelihood.WeibullMaximumLikelihood(Six).Shape),
        Printed(Group, "six values by likelihood, scale", "73.526", "", "six-failure example of the probability-plot literature", Standing.FromMemory, () => WeibullLikelihood.WeibullMaximumLikelihood(Six).Scale),
        Arithmetic(Group, "six values by likelihood, shape, more digits", 1.93267798, "", () => WeibullLikelihood.WeibullMaximumLikelihood(Six).Shape, 5e-9),
    ];

    [CheckTable]
    public static IReadOnlyList<CheckRow> Ranks
    {
        get
        {
            const string source = "ten-failure probability-plot example in a public test suite";
            double[] exact = [0.12944944, 0.31381017, 0.5, 0.68618983, 0.87055056];
            string[] benard = ["0.12963", "0.31481", "0.5", "0.68519", "0.87037"];
            WeibullPlotFit<double> ten = WeibullRanks.WeibullMedianRanks(Ten), turned = WeibullRanks.WeibullMedianRanks(Ten, RankRegression.StrengthOnRank), simple = WeibullRanks.WeibullMedianRanks(Ten, RankRegression.RankOnStrength, RankMethod.Benard), six = WeibullRanks.WeibullMedianRanks(Six);
            return
            [
                .. Enumerable.Range(1, 5).SelectMany(i => new[]
                {
                    Arithmetic("Median ranks", $"exact, {i} of 5", exact[i - 1], "", () => WeibullRanks.MedianRank(i, 5), 5e-8),
                    Arithmetic("Median ranks", $"Benard, {i} of 5", double.Parse(benard[i - 1], System.Globalization.CultureInfo.InvariantCulture), "", () => WeibullRanks.BenardRank(i, 5), 3e-5),
                }),
                Printed("Median ranks", "ten values, scale", "146.2545", "", source, Standing.SecondHand, () => ten.Scale),
                Printed("Median ranks", "ten values, shape", "1.1973", "", source, Standing.SecondHand, () => ten.Shape),
                Printed("Median ranks", "ten values, correlation", "0.9999", "", source, Standing.SecondHand, () => ten.Correlation),
                Arithmetic("Median ranks", "ten values, shape, more digits", 1.19732286117, "", () => ten.Shape, 1e-9),
                Arithmetic("Median ranks", "ten values, scale, more digits", 146.254504369, "", () => ten.Scale, 1e-9),
                Arithmetic("Median ranks", "ten values, correlation, more digits", 0.99987014, "", () => ten.Correlation, 5e-9),
                Arithmetic("Median ranks", "ten values, strength on rank, shape", 1.19763389, "", () => turned.Shape, 5e-9),
                Arithmetic("Median ranks", "ten values, Benard, shape", 1.19349132, "", () => simple.Shape, 5e-9),
                Arithmetic("Median ranks", "ten values, Benard, scale", 146.341345, "", () => simple.Scale, 5e-9),
                Printed("Median ranks", "six values, shape", "1.4301", "", "six-failure example of the probability-plot literature", Standing.FromMemory, () => six.Shape, 1),
                Printed("Median ranks", "six values, scale", "76.318", "", "six-failure example of the probability-plot literature", Standing.FromMemory, () => six.Scale, 1.1),
                Arithmetic("Median ranks", "six values, shape, more digits", 1.43017935, "", () => six.Shape, 5e-9),
                Arithmetic("Median ranks", "six values, scale, more digits", 76.3170328, "", () => six.Scale, 5e-9),
            ];
        }
    }

    private static WeibullFit<double> Eighteen => WeibullLikelihood.WeibullMaximumLikelihood(Of.Numbers(PrintedBatches.Eighteen));

    private static WeibullFit<double> Teaching => WeibullLikelihood.WeibullCensoredLikelihood(
        Of.Numbers(3, 5, 6, 8, 10, 11, 15, 20, 22, 23, 27, 29, 32, 35, 40, 26, 28, 33, 21, 24), Of.Numbers(0, 0, 1, 0, 1, 1, 0, 1, 0, 0, 1, 0, 0, 0, 0, 0, 0, 1, 0, 1));

    private static WeibullFit<double> Seventh(double value)
    {
        double[] copy = [.. PrintedBatches.BallBearings];
        copy[6] = value;
        return WeibullLikelihood.WeibullMaximumLikelihood(Of.Numbers(copy));
    }
}
