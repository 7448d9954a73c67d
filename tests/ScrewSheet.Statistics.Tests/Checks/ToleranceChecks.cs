using System.Globalization;
using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Statistics.Tests.Data;
using ScrewSheet.TestKit;
using static ScrewSheet.TestKit.CheckRow;

namespace ScrewSheet.Statistics.Tests.Checks;

/// <summary>Tolerance factors, bases, characteristic values.</summary>
public static class ToleranceChecks
{
    private static Series<double> Eighteen => Of.Numbers(PrintedBatches.Eighteen);

    private static Series<double> Batch => Of.Numbers(PrintedBatches.Constructed);

    [CheckTable]
    public static IReadOnlyList<CheckRow> Basis
    {
        get
        {
            (int N, string B, double ExactB, string A, double ExactA)[] table =
            [
                (2, "20.581", 20.58147, "37.094", 37.09358), (3, "6.157", 6.15528, "10.553", 10.55273), (4, "4.163", 4.16193, "7.042", 7.04236), (5, "3.408", 3.40663, "5.741", 5.74108),
                (6, "3.007", 3.00626, "5.062", 5.06199), (7, "2.756", 2.75543, "4.642", 4.64172), (8, "2.583", 2.58191, "4.354", 4.35386), (10, "2.355", 2.35464, "3.981", 3.98112),
                (12, "2.211", 2.21013, "3.747", 3.74708), (15, "2.069", 2.06837, "3.520", 3.52013), (20, "1.927", 1.92599, "3.295", 3.29516), (25, "1.839", 1.83810, "3.158", 3.15796),
                (30, "1.778", 1.77733, "3.064", 3.06390), (50, "1.646", 1.64556, "2.862", 2.86245), (75, "1.570", 1.56970, "2.748", 2.74811), (95, "1.534", 1.53385, "2.695", 2.69454),
            ];
            return [.. table.SelectMany(row => new[]
            {
                // The printed B column is up to 0.0017 high; the A column is the exact value rounded.
                Printed("k factors", $"B-basis, n {row.N}", row.B, "", Works.Cmh17, Standing.SecondHand, () => ToleranceFactors.ToleranceFactor(row.N, 0.90, 0.95), 2),
                Printed("k factors", $"A-basis, n {row.N}", row.A, "", Works.Cmh17, Standing.SecondHand, () => ToleranceFactors.ToleranceFactor(row.N, 0.99, 0.95), 0.51),
                Exact($"exact B, n {row.N}", row.ExactB, () => ToleranceFactors.ToleranceFactor(row.N, 0.90, 0.95)),
                Exact($"exact A, n {row.N}", row.ExactA, () => ToleranceFactors.ToleranceFactor(row.N, 0.99, 0.95)),
            })];
        }
    }

    [CheckTable]
    public static IReadOnlyList<CheckRow> Table
    {
        get
        {
            double[] contents = [0.90, 0.95, 0.99], confidences = [0.90, 0.95, 0.99];
            (int N, double[] K)[] table =
            [
                (3, [4.25816, 5.31148, 7.34044, 6.15528, 7.65590, 10.55273, 13.99541, 17.37020, 23.89556]),
                (5, [2.74235, 3.39983, 4.66598, 3.40663, 4.20268, 5.74108, 5.36172, 6.57834, 8.93902]),
                (10, [2.06567, 2.56837, 3.53166, 2.35464, 2.91096, 3.98112, 3.04791, 3.73831, 5.07373]),
                (20, [1.76521, 2.20778, 3.05154, 1.92599, 2.39600, 3.29516, 2.27565, 2.80787, 3.83156]),
                (30, [1.65706, 2.07982, 2.88372, 1.77733, 2.21984, 3.06390, 2.02983, 2.51549, 3.44651]),
                (50, [1.55947, 1.96529, 2.73489, 1.64556, 2.06499, 2.86245, 1.82080, 2.26890, 3.12461]),
                (100, [1.47006, 1.86125, 2.60090, 1.52675, 1.92654, 2.68396, 1.63898, 2.05629, 2.84965]),
            ];
            List<CheckRow> rows =
            [
                Printed("k factors", "ISO row n 10, p 0.95", "2.911", "", "ISO 16269-6, annex, C = 0.95", Standing.FromMemory, () => ToleranceFactors.ToleranceFactor(10, 0.95, 0.95)),
                Printed("k factors", "ISO row n 20, p 0.95", "2.396", "", "ISO 16269-6, annex, C = 0.95", Standing.FromMemory, () => ToleranceFactors.ToleranceFactor(20, 0.95, 0.95)),
                Printed("k factors", "ISO row n 30, p 0.95", "2.220", "", "ISO 16269-6, annex, C = 0.95", Standing.FromMemory, () => ToleranceFactors.ToleranceFactor(30, 0.95, 0.95)),
            ];
            foreach ((int n, double[] k) in table)
                for (int i = 0; i < 9; i++)
                {
                    double confidence = confidences[i / 3], content = contents[i % 3], expected = k[i];
                    rows.Add(Exact(string.Create(CultureInfo.InvariantCulture, $"n {n}, p {content}, C {confidence}"), expected, () => ToleranceFactors.ToleranceFactor(n, content, confidence)));
                }
            return rows;
        }
    }

    [CheckTable]
    public static IReadOnlyList<CheckRow> ThreeSigma
    {
        get
        {
            (int N, double At95, double At90, double Expected, double K)[] table =
            [
                (3, 0.670872, 0.795830, 0.939155, 13.465), (5, 0.862371, 0.922929, 0.974010, 7.2927), (6, 0.899421, 0.944037, 0.980490, 6.4276), (10, 0.955648, 0.974531, 0.990616, 5.0581),
                (20, 0.982313, 0.988844, 0.995682, 4.1968), (30, 0.988551, 0.992330, 0.996896, 3.9086), (50, 0.992719, 0.994761, 0.997702, 3.6586), (100, 0.995460, 0.996451, 0.998214, 3.4382),
                (1000, 0.997996, 0.998160, 0.998610, 3.1267),
            ];
            return [.. table.SelectMany(row => new[]
            {
                Arithmetic("Three sigma", $"content at 0.95, n {row.N}", row.At95, "", () => ToleranceFactors.ContentCovered(row.N, 3, 0.95), 1e-6),
                Arithmetic("Three sigma", $"content at 0.90, n {row.N}", row.At90, "", () => ToleranceFactors.ContentCovered(row.N, 3, 0.90), 1e-6),
                Arithmetic("Three sigma", $"expected content, n {row.N}", row.Expected, "", () => ToleranceFactors.ExpectedContent(row.N, 3), 1e-6),
                Arithmetic("Three sigma", $"k needed for the content of 3 sigma, n {row.N}", row.K, "", () => ToleranceFactors.ToleranceFactor(row.N, 0.998650102, 0.95), 5e-5),
            })];
        }
    }

    [CheckTable]
    public static IReadOnlyList<CheckRow> Worked =>
    [
        Printed("Tolerance limits", "Natrella, n 43, p 0.90, C 0.99", "1.8751896", "", Works.Nist + "7.2.6.3", Standing.SecondHand, () => ToleranceFactors.NatrellaToleranceFactor(43, 0.90, 0.99)),
        Printed("Tolerance limits", "Howe, n 43, p 0.90, C 0.99", "2.2173159", "", Works.Nist + "7.2.6.3", Standing.SecondHand, () => ToleranceFactors.HoweToleranceFactor(43, 0.90, 0.99)),
        Printed("Tolerance limits", "two-sided lower limit, mean 97.07, s 0.0268", "97.010576", "", Works.Nist + "7.2.6.3", Standing.SecondHand, () => 97.07 - (0.0268 * ToleranceFactors.HoweToleranceFactor(43, 0.90, 0.99))),
        Printed("Tolerance limits", "one-sided upper limit, mean 97.07, s 0.0268", "97.120255", "", Works.Nist + "7.2.6.3", Standing.SecondHand, () => 97.07 + (0.0268 * ToleranceFactors.NatrellaToleranceFactor(43, 0.90, 0.99))),
        Misprint("Tolerance limits", "one-sided upper limit with s taken as 2.68", "102.096", "", "a stored copy of " + Works.Nist + "7.2.6.3", Standing.SecondHand, () => 97.07 + (0.0268 * ToleranceFactors.NatrellaToleranceFactor(43, 0.90, 0.99))),
        Printed("Tolerance limits", "exact one-sided, n 43, p 0.90, C 0.99", "1.8740", "", Works.Nist + "7.2.6.3", Standing.FromMemory, () => ToleranceFactors.ToleranceFactor(43, 0.90, 0.99)),
        Arithmetic("Tolerance limits", "Natrella, more digits", 1.8751895813, "", () => ToleranceFactors.NatrellaToleranceFactor(43, 0.90, 0.99), 1e-10),
        Arithmetic("Tolerance limits", "Howe, more digits", 2.2173158967, "", () => ToleranceFactors.HoweToleranceFactor(43, 0.90, 0.99), 1e-10),
        Arithmetic("Tolerance limits", "exact one-sided, more digits", 1.8739536, "", () => ToleranceFactors.ToleranceFactor(43, 0.90, 0.99), 5e-8),
        Arithmetic("Tolerance limits", "exact two-sided", 2.22283, "", () => ToleranceFactors.TwoSidedToleranceFactor(43, 0.90, 0.99), 4e-6),
        Near("batch of 18, normal, B", "129.287", () => NormalLimits.BBasis(Eighteen).Limit),
        Near("batch of 18, normal, A", "120.336", () => NormalLimits.ABasis(Eighteen).Limit),
        Near("batch of 18, lognormal, B", "129.664", () => NormalLimits.LognormalLowerLimit(Eighteen, 0.90).Limit),
        Near("batch of 18, lognormal, A", "121.710", () => NormalLimits.LognormalLowerLimit(Eighteen, 0.99).Limit),
        Arithmetic("Tolerance limits", "batch of 18, k of B", 1.9737950, "", () => NormalLimits.BBasis(Eighteen).Factor, 3e-8),
        Arithmetic("Tolerance limits", "batch of 18, k of A", 3.3703320, "", () => NormalLimits.ABasis(Eighteen).Factor, 3e-8),
        Arithmetic("Tolerance limits", "batch of 18, normal, B, more digits", 129.28978, "", () => NormalLimits.BBasis(Eighteen).Limit, 5e-8),
        Arithmetic("Tolerance limits", "batch of 18, normal, A, more digits", 120.35491, "", () => NormalLimits.ABasis(Eighteen).Limit, 5e-8),
        Arithmetic("Tolerance limits", "batch of 18, lognormal, B, more digits", 129.66703, "", () => NormalLimits.LognormalLowerLimit(Eighteen, 0.90).Limit, 5e-8),
        Arithmetic("Tolerance limits", "batch of 18, lognormal, A, more digits", 121.72647, "", () => NormalLimits.LognormalLowerLimit(Eighteen, 0.99).Limit, 5e-8),
        Arithmetic("Tolerance limits", "batch of 18, three sigma", 122.72424882, "", () => NormalLimits.ThreeSigmaRating(Eighteen).Limit, 1e-10),
        Arithmetic("Tolerance limits", "constructed batch, three sigma", 10.925158235, "", () => NormalLimits.ThreeSigmaRating(Batch).Limit, 1e-10),
        Arithmetic("Tolerance limits", "constructed batch, B", 11.349986, "", () => NormalLimits.BBasis(Batch).Limit, 1e-7),
        Arithmetic("Tolerance limits", "constructed batch, A", 10.279307, "", () => NormalLimits.ABasis(Batch).Limit, 1e-7),
    ];

    [CheckTable]
    public static IReadOnlyList<CheckRow> Characteristic
    {
        get
        {
            (int N, string Known, double KnownExact, string Unknown, double UnknownExact)[] table =
            [
                (3, "1.89", 1.899482, "3.37", 3.3717), (4, "1.83", 1.839166, "2.63", 2.6307), (5, "1.80", 1.802007, "2.33", 2.3355), (6, "1.77", 1.776803, "2.18", 2.1764),
                (8, "1.74", 1.744786, "2.00", 2.0100), (10, "1.72", 1.725291, "1.92", 1.9225), (20, "1.68", 1.685623, "1.76", 1.7717), (30, "1.67", 1.672192, "1.73", 1.7271),
            ];
            Series<double> five = Of.Numbers(10.4, 11.1, 12.0, 10.8, 11.6);
            return
            [
                // The printed table cuts some entries (up to one unit) and takes 1.76 where the formula gives 1.7717.
                .. table.SelectMany(row => new[]
                {
                    Printed("Characteristic values", $"k_n, V known, n {row.N}", row.Known, "", Works.En1990, Standing.FromMemory, () => CharacteristicValues.CharacteristicFactorKnownVariation(row.N), 1),
                    Printed("Characteristic values", $"k_n, V unknown, n {row.N}", row.Unknown, "", Works.En1990, Standing.FromMemory, () => CharacteristicValues.CharacteristicFactor(row.N), row.N == 20 ? 1.2 : 1.01),
                    Arithmetic("Characteristic values", $"formula, V known, n {row.N}", row.KnownExact, "", () => CharacteristicValues.CharacteristicFactorKnownVariation(row.N), 1e-4),
                    Arithmetic("Characteristic values", $"formula, V unknown, n {row.N}", row.UnknownExact, "", () => CharacteristicValues.CharacteristicFactor(row.N), 2.7e-4),
                }),
                // The formula rows were computed with 1.645 and t to three decimals, so they hold to 1e-4 and 2.7e-4.
                Arithmetic("Characteristic values", "five specimens, with 2.33 of the printed table", 9.702699, "kN", () => CharacteristicValues.CharacteristicValue(five).Limit, 4e-4),
                Arithmetic("Characteristic values", "five specimens, three sigma", 9.277896, "kN", () => NormalLimits.ThreeSigmaRating(five).Limit, 1e-7),
            ];
        }
    }

    private static CheckRow Exact(string what, double value, Func<double> ours) => Arithmetic("k factors", what, value, "", ours) with { Allowed = 1e-5 };

    /// <summary>The program behind these rows used approximate factors: 2e-4 relative.</summary>
    private static CheckRow Near(string what, string published, Func<double> ours)
    {
        CheckRow row = Printed("Tolerance limits", what, published, "", Works.Cmh17Batch, Standing.SecondHand, ours);
        return row with { Allowed = row.PublishedValue * 2e-4 };
    }
}
