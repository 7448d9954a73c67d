using System.Globalization;
using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Statistics.Tests.Data;
using ScrewSheet.TestKit;
using static ScrewSheet.TestKit.CheckRow;

namespace ScrewSheet.Statistics.Tests.Checks;

/// <summary>Acceptance sampling, control charts, capability.</summary>
public static class SamplingChecks
{
    private const string Group = "Acceptance sampling";

    [CheckTable]
    public static IReadOnlyList<CheckRow> Plans
    {
        get
        {
            const string manual = "manual of a general statistics system, hypergeometric and binomial examples";
            const string cfr = "US 7 CFR 42.140, n 500, c 3";
            string[] montgomery = [".9897", ".9397", ".7366", ".4985", ".3042", ".1721", ".0919", ".0468", ".0230", ".0109"];
            double[] at = [.005, .01, .02, .03, .04, .05, .06, .07, .08, .09];
            string[] handbook = [".998", ".980", ".930", ".845", ".739", ".620", ".502", ".394", ".300", ".223", ".162", ".115"];
            double[] hyper = [.9982, .9801, .9300, .8465, .7386, .6196, .5015, .3932, .2996, .2225, .1614, .1146];
            double[] binomial = [.9982, .9798, .9295, .8460, .7383, .6196, .5018, .3938, .3003, .2232, .1621, .1152];
            string[] inspected = ["70", "253", "753", "1584", "2655", "3836", "5007", "6083", "7012", "7779", "8388", "8854"];
            return
            [
                Printed(Group, "1.0 per hundred, in per cent", "26", "%", cfr, Standing.Read, () => 100 * AttributePlans.AcceptanceProbability(500, 3, 0.01)),
                Printed(Group, "0.10 per hundred, about, in per cent", "99", "%", cfr, Standing.Read, () => 100 * AttributePlans.AcceptanceProbability(500, 3, 0.001), 1),
                Arithmetic(Group, "n 500, c 3, p 0.01", 0.263616, "", () => AttributePlans.AcceptanceProbability(500, 3, 0.01), 2e-6),
                Arithmetic(Group, "n 500, c 3, p 0.001", 0.998264, "", () => AttributePlans.AcceptanceProbability(500, 3, 0.001), 1e-6),
                Printed(Group, "N 120, D 22, n 20, c 1", "0.0762970752", "", manual, Standing.Read, () => AttributePlans.AcceptanceProbabilityOfLot(120, 22, 20, 1)),
                Arithmetic(Group, "N 120, D 22, n 20, c 1, more digits", 0.0762970752148852, "", () => AttributePlans.AcceptanceProbabilityOfLot(120, 22, 20, 1), 1e-12),
                Printed(Group, "n 20, c 1, p 0.18", "0.1018322793", "", manual, Standing.Read, () => AttributePlans.AcceptanceProbability(20, 1, 0.18)),
                Printed(Group, "n 65, c 2, p 0.012", "0.9564398", "", "public sampling-plan example", Standing.SecondHand, () => AttributePlans.AcceptanceProbability(65, 2, 0.012), 0.6),
                Printed(Group, "n 68, c 2, producer's 5 % point", "0.01213", "", "public sampling-plan example", Standing.SecondHand, () => AttributePlans.QualityAccepted(68, 2, 0.95)),
                Printed(Group, "n 68, c 2, consumer's 5 % point", "0.089704", "", "public sampling-plan example", Standing.SecondHand, () => AttributePlans.QualityAccepted(68, 2, 0.05)),
                .. at.Select((p, i) => Printed(Group, Text($"n 89, c 2, p {p}"), montgomery[i], "", "Montgomery, Statistical Quality Control, OC curve", Standing.FromMemory, () => AttributePlans.AcceptanceProbability(89, 2, p), 0.51)),
                .. handbook.Select((pa, i) => Printed(Group, Text($"N 10000, n 52, c 3, p 0.{i + 1:00}"), pa, "", Works.Nist + "6.2.3.2", Standing.FromMemory, () => AttributePlans.AcceptanceProbabilityOfLot(10000, 100 * (i + 1), 52, 3), 2)),
                .. hyper.Select((pa, i) => Arithmetic(Group, Text($"the same by lot, p 0.{i + 1:00}, four decimals"), pa, "", () => AttributePlans.AcceptanceProbabilityOfLot(10000, 100 * (i + 1), 52, 3)) with { Allowed = 5.1e-5 }),
                .. binomial.Select((pa, i) => Arithmetic(Group, Text($"the same by process, p 0.{i + 1:00}, four decimals"), pa, "", () => AttributePlans.AcceptanceProbability(52, 3, 0.01 * (i + 1))) with { Allowed = 5.1e-5 }),
                .. inspected.Select((ati, i) => Printed(Group, Text($"ATI, N 10000, n 52, c 3, p 0.{i + 1:00}"), ati, "", Works.Nist + "6.2.3.2", Standing.FromMemory, () => AttributePlans.AverageTotalInspection(10000, 52, 3, 0.01 * (i + 1)), 1)),
                Arithmetic(Group, "small lot N 50, D 5, n 10, c 0", 0.310562782, "", () => AttributePlans.AcceptanceProbabilityOfLot(50, 5, 10, 0), 2e-9),
                Arithmetic(Group, "the same as a process", 0.348678440, "", () => AttributePlans.AcceptanceProbability(10, 0, 0.1), 2e-9),
                Arithmetic(Group, "plan for 0.01 and 0.05, n", 132, "", () => AttributePlans.FindSamplingPlan(0.01, 0.05).SampleSize, 1e-12),
                Arithmetic(Group, "plan for 0.01 and 0.05, c", 3, "", () => AttributePlans.FindSamplingPlan(0.01, 0.05).AcceptanceNumber, 1e-12),
                Arithmetic(Group, "plan for 0.01 and 0.05, Pa good", 0.955747, "", () => AttributePlans.FindSamplingPlan(0.01, 0.05).AcceptedAtGood, 1e-6),
                Arithmetic(Group, "plan for 0.01 and 0.05, Pa bad", 0.099228, "", () => AttributePlans.FindSamplingPlan(0.01, 0.05).AcceptedAtBad, 5e-6),
                Arithmetic(Group, "plan for 0.02 and 0.08, n", 98, "", () => AttributePlans.FindSamplingPlan(0.02, 0.08).SampleSize, 1e-12),
                Arithmetic(Group, "plan for 0.02 and 0.08, c", 4, "", () => AttributePlans.FindSamplingPlan(0.02, 0.08).AcceptanceNumber, 1e-12),
                Arithmetic(Group, "n 200, c 7, p 0.013", 0.995001, "", () => AttributePlans.AcceptanceProbability(200, 7, 0.013), 1e-6),
                Arithmetic(Group, "n 200, c 5, p 0.013", 0.952116, "", () => AttributePlans.AcceptanceProbability(200, 5, 0.013), 1e-6),
                Arithmetic(Group, "n 200, c 7, p 0.064", 0.054189, "", () => AttributePlans.AcceptanceProbability(200, 7, 0.064), 1e-5),
                Arithmetic(Group, "n 200, c 5, p 0.064", 0.010314, "", () => AttributePlans.AcceptanceProbability(200, 5, 0.064), 5e-5),
                Printed(Group, "standard plan, lot 5000, level II, AQL 1.5 %, n", "200", "", "ISO 2859-1, worked row", Standing.SecondHand, () => StandardPlans.StandardSamplingPlan(5000, 0.015).SampleSize),
                Printed(Group, "standard plan, lot 5000, level II, AQL 1.5 %, Ac", "7", "", "ISO 2859-1, worked row", Standing.SecondHand, () => StandardPlans.StandardSamplingPlan(5000, 0.015).AcceptanceNumber),
                Printed(Group, "arrow followed: lot 120 (letter F), AQL 1.5 %, n", "32", "", "ISO 2859-1, table 2-A", Standing.SecondHand, () => StandardPlans.StandardSamplingPlan(120, 0.015).SampleSize),
            ];
        }
    }

    [CheckTable]
    public static IReadOnlyList<CheckRow> Variables
    {
        get
        {
            const string z19 = "ASQ Z1.9, lot 3201-10000, level II, AQL 1.5, unknown sigma";
            const string mil = "MIL-STD-414, example B-1";
            Series<double> lot = Of.Numbers(197, 188, 184, 205, 201);
            VariablesDecision decision = VariablesPlans.VariablesDecide(lot, 209, 1.53, LimitSide.Upper);
            return
            [
                Printed(Group, "M of k 1.84097, n 75", "0.0317", "", z19, Standing.SecondHand, () => VariablesPlans.EstimatedFailing(75, 1.84097)),
                Printed(Group, "k of M 0.0317, n 75", "1.84097", "", z19, Standing.SecondHand, () => VariablesPlans.ConstantFromShare(75, 0.0317)),
                Arithmetic(Group, "M of k 1.84097, n 75, more digits", 0.031700027, "", () => VariablesPlans.EstimatedFailing(75, 1.84097), 3e-8),
                Arithmetic(Group, "k of M 0.0317, n 75, more digits", 1.84097037, "", () => VariablesPlans.ConstantFromShare(75, 0.0317), 5e-9),
                Arithmetic(Group, "n 75, k 1.84097, Pa at 0.015", 0.9599, "", () => VariablesPlans.VariablesAcceptanceProbability(75, 1.84097, 0.015), 6e-5),
                Arithmetic(Group, "n 75, k 1.84097, Pa at 0.064", 0.0488, "", () => VariablesPlans.VariablesAcceptanceProbability(75, 1.84097, 0.064), 1.1e-3),
                Arithmetic(Group, "known sigma, n 14, k 1.205, Pa at 0.05", 0.950096, "", () => VariablesPlans.VariablesAcceptanceProbabilityKnownDeviation(14, 1.205, 0.05), 6e-7),
                Arithmetic(Group, "known sigma, n 14, k 1.205, Pa at 0.20", 0.086972, "", () => VariablesPlans.VariablesAcceptanceProbabilityKnownDeviation(14, 1.205, 0.20), 6e-6),
                Printed(Group, "example B-1, mean", "195", "", mil, Standing.FromMemory, () => SampleStatistics.Mean(lot)),
                Printed(Group, "example B-1, s", "8.81", "", mil, Standing.FromMemory, () => SampleStatistics.StandardDeviation(lot), 1),
                Printed(Group, "example B-1, Q", "1.59", "", mil, Standing.FromMemory, () => decision.QualityIndex),
                Arithmetic(Group, "example B-1, s, more digits", 8.80340843, "", () => SampleStatistics.StandardDeviation(lot), 1e-9),
                Arithmetic(Group, "example B-1, Q, more digits", 1.59029316, "", () => decision.QualityIndex, 2e-8),
                Arithmetic(Group, "example B-1, share failing", 0.021823, "", () => decision.EstimatedFailing, 3e-5),
                Arithmetic(Group, "example B-1, accepted", 1, "", () => decision.Accepted ? 1 : 0, 1e-12),
            ];
        }
    }

    [CheckTable]
    public static IReadOnlyList<CheckRow> Charts
    {
        get
        {
            (int N, double D2, double D3, double C4, double A2, double A3, double B3, double B4, double Low, double High)[] table =
            [
                (2, 1.128379, 0.85250, 0.797885, 1.8800, 2.6587, 0, 3.2665, 0, 3.2665), (3, 1.692569, 0.88837, 0.886227, 1.0233, 1.9544, 0, 2.5682, 0, 2.5746),
                (4, 2.058751, 0.87981, 0.921318, 0.7286, 1.6281, 0, 2.2660, 0, 2.2821), (5, 2.325929, 0.86408, 0.939986, 0.5768, 1.4273, 0, 2.0890, 0, 2.1145),
                (6, 2.534413, 0.84804, 0.951533, 0.4832, 1.2871, 0.0304, 1.9696, 0, 2.0038), (7, 2.704357, 0.83321, 0.959369, 0.4193, 1.1819, 0.1177, 1.8823, 0.0757, 1.9243),
                (8, 2.847201, 0.81983, 0.965030, 0.3725, 1.0991, 0.1851, 1.8149, 0.1362, 1.8638), (10, 3.077505, 0.79705, 0.972659, 0.3083, 0.9754, 0.2837, 1.7163, 0.2230, 1.7770),
            ];
            var constants = table.ToDictionary(row => row.N, row => new Lazy<ChartConstants>(() => ControlConstants.ControlChartConstants(row.N)));
            CheckRow Row(string what, double value, double allowed, Func<double> ours) => Arithmetic("Control charts", what, value, "", ours) with { Allowed = allowed };
            ControlChart<double> chart = ControlCharts.MeanRangeChart(Of.Numbers(5, 7, 6, 6, 8, 7, 4, 6, 5, 7, 9, 8), 3);
            return
            [
                .. table.SelectMany(row => new[]
                {
                    Row($"d2, n {row.N}", row.D2, 6e-7, () => constants[row.N].Value.MeanRange),
                    Row($"d3, n {row.N}", row.D3, 6e-6, () => constants[row.N].Value.RangeDeviation),
                    Row($"c4, n {row.N}", row.C4, 6e-7, () => constants[row.N].Value.DeviationBias),
                    Row($"A2, n {row.N}", row.A2, 6e-5, () => constants[row.N].Value.MeanByRange),
                    Row($"A3, n {row.N}", row.A3, 6e-5, () => constants[row.N].Value.MeanByDeviation),
                    Row($"B3, n {row.N}", row.B3, 6e-5, () => constants[row.N].Value.DeviationLower),
                    Row($"B4, n {row.N}", row.B4, 6e-5, () => constants[row.N].Value.DeviationUpper),
                    Row($"D3, n {row.N}", row.Low, 6e-5, () => constants[row.N].Value.RangeLower),
                    Row($"D4, n {row.N}", row.High, 6e-5, () => constants[row.N].Value.RangeUpper),
                }),
                Printed("Control charts", "D4 of eleven values (a copy prints 1.774)", "1.744", "", "printed textbook tables of control-chart constants", Standing.SecondHand, () => ControlConstants.ControlChartConstants(11).RangeUpper, 1),
                Misprint("Control charts", "D4 of eleven values", "1.774", "", "one public copy of the textbook table", Standing.SecondHand, () => ControlConstants.ControlChartConstants(11).RangeUpper),
                Row("four subgroups of three, grand mean", 6.5, 1e-12, () => chart.Centre),
                Row("four subgroups of three, mean range", 2, 1e-12, () => chart.RangeCentre),
                Row("four subgroups of three, upper limit", 8.5466, 2e-4, () => chart.Upper),
                Row("four subgroups of three, lower limit", 4.4534, 2e-4, () => chart.Lower),
                Row("four subgroups of three, sigma", 1.181635, 1e-6, () => chart.ProcessDeviation),
                Printed("Capability", "Cp, limits 8 and 20, s 2", "1.0", "", Works.Nist + "6.1.6", Standing.FromMemory, () => Capability.ProcessCapability(8.0, 20, 2)),
                Printed("Capability", "Cpk, mean 16, limits 8 and 20, s 2", "0.6667", "", Works.Nist + "6.1.6", Standing.FromMemory, () => Capability.ProcessCapabilityCentred(16.0, 8, 20, 2)),
                Arithmetic("Capability", "constructed batch against 10 kN", 1.468472082, "", () => Capability.CapabilityToLimit(Of.Numbers(PrintedBatches.Constructed), 10).Index, 1e-9),
            ];
        }
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
