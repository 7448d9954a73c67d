using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Statistics.Tests.Data;
using ScrewSheet.TestKit;
using static ScrewSheet.TestKit.CheckRow;

namespace ScrewSheet.Statistics.Tests.Checks;

/// <summary>Comparisons of means, analysis of variance, interference and rig records.</summary>
public static class ComparisonChecks
{
    private const string Group = "Comparisons";

    [CheckTable]
    public static IReadOnlyList<CheckRow> TwoSamples
    {
        get
        {
            const string sleep = "Student's sleep data, in the manual of a general statistics system";
            Series<double> first = Of.Numbers(PrintedBatches.SleepFirst), second = Of.Numbers(PrintedBatches.SleepSecond);
            MeanComparison<double> welch = TwoSampleTests.WelchTest(first, second), pooled = TwoSampleTests.PooledTest(first, second), paired = TwoSampleTests.PairedTest(first, second);
            MeanComparison<double> cars = TwoSampleTests.WelchTestFromSummary(249, 20.14458, 6.41470, 79, 30.48101, 6.10771);
            MeanComparison<double> devices = TwoSampleTests.WelchTest(Of.Numbers(32, 37, 35, 28, 41, 44, 35, 31, 34, 38, 42), Of.Numbers(36, 31, 30, 31, 34, 36, 29, 32, 31));
            return
            [
                Printed(Group, "sleep, Welch t", "-1.860813", "", sleep, Standing.SecondHand, () => welch.Statistic),
                Printed(Group, "sleep, Welch dof", "17.77647", "", sleep, Standing.SecondHand, () => welch.DegreesOfFreedom),
                Printed(Group, "sleep, Welch p", "0.07939414", "", sleep, Standing.SecondHand, () => welch.PValue),
                Printed(Group, "sleep, pooled p", "0.07918671", "", sleep, Standing.SecondHand, () => pooled.PValue),
                Printed(Group, "sleep, paired t", "-4.0621", "", sleep, Standing.SecondHand, () => paired.Statistic),
                Printed(Group, "sleep, paired p", "0.002833", "", sleep, Standing.SecondHand, () => paired.PValue),
                Arithmetic(Group, "sleep, Welch t, more digits", -1.8608134674869, "", () => welch.Statistic, 1e-12),
                Arithmetic(Group, "sleep, Welch dof, more digits", 17.7764735162, "", () => welch.DegreesOfFreedom, 1e-11),
                Arithmetic(Group, "sleep, Welch p, more digits", 0.0793941401873582, "", () => welch.PValue, 1e-12),
                Arithmetic(Group, "sleep, CI lower", -3.36548323, "", () => welch.Lower, 3e-9),
                Arithmetic(Group, "sleep, CI upper", 0.20548323, "", () => welch.Upper, 5e-8),
                Printed(Group, "AUTO83B, t", "-12.94627", "", "NIST mileage data AUTO83B, from summaries", Standing.SecondHand, () => cars.Statistic),
                Printed(Group, "AUTO83B, dof", "136.87499", "", "NIST mileage data AUTO83B, from summaries", Standing.SecondHand, () => cars.DegreesOfFreedom),
                Arithmetic(Group, "AUTO83B, t, more digits", -12.9462675658, "", () => cars.Statistic, 2e-11),
                Arithmetic(Group, "AUTO83B, p", 1.5709e-25, "", () => cars.PValue, 5e-5),
                Arithmetic(Group, "AUTO83B, CI lower", -11.915244, "", () => cars.Lower, 5e-8),
                Arithmetic(Group, "AUTO83B, CI upper", -8.757616, "", () => cars.Upper, 1e-7),
                Printed(Group, "device times, t", "2.269", "", Works.Nist + "7.3.1", Standing.FromMemory, () => devices.Statistic),
                Printed(Group, "device times, dof", "15.533", "", Works.Nist + "7.3.1", Standing.FromMemory, () => devices.DegreesOfFreedom, 1.1),
                Arithmetic(Group, "device times, t, more digits", 2.2693731334, "", () => devices.Statistic, 1e-10),
                Arithmetic(Group, "device times, dof, more digits", 15.5325143535, "", () => devices.DegreesOfFreedom, 1e-11),
                Arithmetic(Group, "device times, p", 0.0378794765, "", () => devices.PValue, 1e-8),
            ];
        }
    }

    [CheckTable]
    public static IReadOnlyList<CheckRow> Groups
    {
        get
        {
            var (sample, group) = Of.Groups([6.9, 5.4, 5.8, 4.6, 4.0], [8.3, 6.8, 7.8, 9.2, 6.5], [8.0, 10.5, 8.1, 6.9, 9.3], [5.8, 3.8, 6.1, 5.6, 6.2]);
            AnalysisOfVariance<double> handbook = GroupTests.OneWayAnova(sample, group);
            var (silicon, instruments) = Of.Groups(StrdData.SiRstv);
            var (atoms, others) = Of.Groups(StrdData.AtmWtAg);
            return
            [
                Arithmetic(Group, "NIST 7.4.7.1, between sum of squares", 38.82, "", () => Math.Pow(handbook.BetweenDeviation, 2) * handbook.BetweenDegrees, 1e-12),
                Arithmetic(Group, "NIST 7.4.7.1, within sum of squares", 21.292, "", () => Math.Pow(handbook.WithinDeviation, 2) * handbook.WithinDegrees, 1e-12),
                Arithmetic(Group, "NIST 7.4.7.1, F", 9.72383994, "", () => handbook.Statistic, 1e-9),
                Arithmetic(Group, "NIST 7.4.7.1, p", 6.844539e-4, "", () => handbook.PValue, 1e-7),
                Arithmetic(Group, "SiRstv, p", 0.349447494, "", () => GroupTests.OneWayAnova(silicon, instruments).PValue, 2e-9),
                Arithmetic(Group, "AtmWtAg, p", 0.000232684448, "", () => GroupTests.OneWayAnova(atoms, others).PValue, 1e-7),
            ];
        }
    }

    [CheckTable]
    public static IReadOnlyList<CheckRow> Interference
    {
        get
        {
            const string page = "public reliability text, normal strength and load";
            return
            [
                Printed("Interference", "load N(20, 6), strength N(40, 7)", "1.50298", "%", page, Standing.Read, () => 100 * StrengthAgainstLoad.NormalInterference(40.0, 7, 20, 6).FailureProbability),
                Misprint("Interference", "the same with Phi(+z) written for the chance of failure", "98.49702", "%", page, Standing.Read, () => 100 * StrengthAgainstLoad.NormalInterference(40.0, 7, 20, 6).FailureProbability),
                Arithmetic("Interference", "z of N(20, 6) against N(40, 7)", 2.169304578, "", () => StrengthAgainstLoad.NormalInterference(40.0, 7, 20, 6).SafetyIndex, 1e-9),
                Arithmetic("Interference", "load N(50, 15), strength N(75, 20)", 0.158655254, "", () => StrengthAgainstLoad.NormalInterference(75.0, 20, 50, 15).FailureProbability, 1e-8),
                Arithmetic("Interference", "load N(2500, 500), strength N(4000, 400)", 0.0095747858, "", () => StrengthAgainstLoad.NormalInterference(4000.0, 400, 2500, 500).FailureProbability, 1e-8),
                Arithmetic("Interference", "both lognormal, moments 20, 6 and 40, 7, z", 2.114254544, "", () => StrengthAgainstLoad.LognormalInterference(40.0, 7, 20, 6).SafetyIndex, 1e-9),
                Arithmetic("Interference", "both lognormal, moments 20, 6 and 40, 7", 0.0172467663, "", () => StrengthAgainstLoad.LognormalInterference(40.0, 7, 20, 6).FailureProbability, 1e-8),
                Printed("Interference", "load 1 + Weibull(2, 3), strength 3 + gamma(2, 3), by the library's own integral", "0.17078", "%", "public reliability text, general strength and load", Standing.Read, () => 100 * GammaStrength.Value),
                Arithmetic("Interference", "the same, more digits", 0.00170782407, "", () => GammaStrength.Value, 1e-8),
                Arithmetic("Interference", "Phi(-10) as the chance of failure", 7.61985302416047e-24, "", () => StrengthAgainstLoad.NormalInterference(10.0, 1, 0, 0).FailureProbability, 1e-12),
            ];
        }
    }

    [CheckTable]
    public static IReadOnlyList<CheckRow> Records
    {
        get
        {
            Series<UnitsNet.Length> x = Of.Millimetres(0, 1, 2.5, 5, 8, 9);
            Series<UnitsNet.Force> f = Of.Kilonewtons(0, 2, 5, 9, 12, 3);
            return [Arithmetic("Rig records", "energy of a record in straight pieces", 62.75, "J", () => RigRecords.RecordEnergy(x, f).Total.Joules, 1e-13)];
        }
    }

    private static readonly Lazy<double> GammaStrength = new(IntegrateGammaStrength);

    /// <summary>Gamma strength of shape 3 above 3: its strength as a function of the cumulative hazard is found by the regularised gamma function.</summary>
    private static double IntegrateGammaStrength()
    {
        static double Above(double s) => Math.Exp(-s) * (1 + s + (s * s / 2));
        double Strength(double hazard)
        {
            double survival = Math.Exp(-hazard), low = 0, high = 800;
            // For small hazards the chance of breaking below is s³/6 (1 - 3s/4 + …), which the difference from 1 would lose.
            double below = -Expm1(-hazard);
            for (int i = 0; i < 64; i++)
            {
                double middle = (low + high) / 2;
                bool less = hazard < 0.1 ? Series(middle) < below : Above(middle) > survival;
                if (less) low = middle;
                else high = middle;
            }
            return 3 + (2 * low);
        }
        return StrengthAgainstLoad.Integrate(Strength, x => x <= 1 ? 1 : Math.Exp(-Math.Pow((x - 1) / 2, 3)));

        static double Expm1(double x) => MathNet.Numerics.SpecialFunctions.Expm1(x);
        static double Series(double s) => MathNet.Numerics.SpecialFunctions.GammaLowerRegularized(3, s);
    }
}
