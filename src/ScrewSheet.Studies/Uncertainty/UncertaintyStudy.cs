using System.Collections.Immutable;
using ScrewSheet.Quantities.Formatting;
using ScrewSheet.Studies.Faults;
using ScrewSheet.Studies.Scenarios;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Studies.Uncertainty;

/// <summary>Works out the spread of a result in both ways and puts them side by side.</summary>
internal sealed class UncertaintyStudy
{
    private const int MostChecks = 12, MostGivens = 500;
    private const long KernelSamples = 1_000_000, OtherSamples = 100_000;

    private readonly StudyTools tools;
    private readonly Calculation calculation;
    private readonly UncertaintyRequest request;
    private readonly CancellationToken stop;

    private UncertaintyStudy(StudyTools tools, Calculation calculation, UncertaintyRequest request, CancellationToken stop) =>
        (this.tools, this.calculation, this.request, this.stop) = (tools, calculation, request, stop);

    public static StudyOutcome<UncertaintyReport> Run(StudyTools tools, Calculation calculation, UncertaintyRequest request, IProgress<double>? progress, CancellationToken stop)
    {
        if (request.Samples is < UncertaintyRequest.FewestSamples or > UncertaintyRequest.MostSamples) return StudyFaults.Samples(UncertaintyRequest.FewestSamples, UncertaintyRequest.MostSamples);
        if (CellNaming.Find(calculation.Workbook, request.Cell, null, out Fault? fault) is not { } cell) return fault!;
        CellResult result = calculation.Cells[cell];
        string label = CellNaming.Label(calculation.Workbook, cell);
        if (result.Outcome is null) return StudyFaults.NoValue(label, null);
        if (result.Fault is { } broken) return StudyFaults.NothingAtBase(label, broken.Sentence);
        if (result.Type is not (NumberType or QuantityType or TruthType)) return StudyFaults.NotMeasurable(label, result.Type!.Phrase, null);
        return new UncertaintyStudy(tools, calculation, request, stop).Run(result, label, progress);
    }

    private StudyOutcome<UncertaintyReport> Run(CellResult result, string label, IProgress<double>? progress)
    {
        CellId[] shown = [result.Id, .. result.IsCheck ? [] : UncertainGivens.ChecksAfter(calculation, result.Id).Take(MostChecks)];
        ImmutableArray<UncertainGiven> givens = UncertainGivens.Behind(calculation, shown);
        if (givens.Length > MostGivens) return StudyFaults.TooManyGivens(givens.Length, MostGivens);
        if (Correlations.Of(calculation.Workbook, givens, out Fault? fault) is not { } correlations) return fault!;
        Cone cone = Cone.Of(calculation, [.. givens.Select(given => given.Cell)], shown);
        if (givens.IsEmpty || cone.Shown[0] < 0) return StudyFaults.NoTolerance(label);
        Draws draws = new(givens, correlations, request.Seed ?? calculation.Workbook.Head.Seed ?? 1);
        ScenarioModel model = ScenarioModel.Make(tools, cone, [.. givens.Select(given => GivenValues.Number(given.Type, given.Si))], request.Method != StudyMethod.CellByCell, [.. Probes(draws, givens.Length)]);
        long samples = request.Samples ?? (model.IsCompiled ? KernelSamples : OtherSamples);
        Sampled sampled = new Sampling(tools, model, draws, samples, stop).Run(progress);
        bool isCheck = result.Type is TruthType;
        Propagation propagation = new(new PointFunction(model, tools, 0, stop), givens);
        GivenShare[] shares = propagation.Shares(cone.Behind(cone.Shown[0]), isCheck);
        double value = SiValue.Of(result.Value) ?? double.NaN;
        FirstOrder? first = isCheck ? null : propagation.Combine(shares, correlations, value);
        if (correlations.IsPlain) shares = Sobol(model, draws, shares, samples);
        UncertaintyReport report = new()
        {
            Cell = result.Id, Label = label, Type = result.Type!, Format = result.Cell.Format, Value = result.Value!,
            Givens = [.. shares.OrderByDescending(share => Math.Abs(share.Swing)).ThenBy(share => share.Given.Label, StringComparer.Ordinal)],
            FirstOrder = first, MonteCarlo = isCheck ? null : Sampling.Report(sampled), Checks = Odds(cone, sampled, isCheck ? 0 : 1),
            Samples = samples, Seed = request.Seed ?? calculation.Workbook.Head.Seed ?? 1, Faults = Faults(sampled), Cautions = Cautions(sampled), Notes = [], IsCompiled = model.IsCompiled,
        };
        return report with { Notes = [.. Notes(report, draws, givens, correlations)] };
    }

    private IEnumerable<double[]> Probes(Draws draws, int givens)
    {
        const int probes = 8;
        double[][] room = [.. Enumerable.Range(0, givens).Select(_ => new double[probes])];
        draws.Fill(3, 0, room, probes);
        for (int i = 0; i < probes; i++) yield return [.. room.Select(values => values[i])];
    }

    private GivenShare[] Sobol(ScenarioModel model, Draws draws, GivenShare[] shares, long samples)
    {
        var indices = SobolStudy.Run(tools, model, draws, shares.Length, samples, null, stop);
        return [.. shares.Zip(indices, (share, index) => share with { Sobol = index.First, SobolTotal = index.Total, SobolError = index.Error })];
    }

    private ImmutableArray<CheckOdds> Odds(Cone cone, Sampled sampled, int from)
    {
        var odds = ImmutableArray.CreateBuilder<CheckOdds>();
        long draws = sampled.Parts.Sum(part => part.Moments.Count + part.Faulted[0]);
        for (int shown = from; shown < cone.Shown.Length; shown++)
        {
            if (cone.Shown[shown] < 0) continue;
            long failed = sampled.Parts.Sum(part => (long)part.Failed[shown]), faulted = sampled.Parts.Sum(part => (long)part.Faulted[shown]);
            odds.Add(new CheckOdds(cone.ShownIds[shown], CellNaming.Label(calculation.Workbook, cone.ShownIds[shown]), failed, faulted, draws, Quantiles.Proportion(failed, draws).Low, Quantiles.Proportion(failed + faulted, draws).High));
        }
        return odds.ToImmutable();
    }

    private static ImmutableArray<FaultCount> Faults(Sampled sampled)
    {
        Dictionary<(int, string?), FaultCount> sorts = [];
        foreach (FaultCount count in sampled.Parts.SelectMany(part => part.Faults.Values)) Part.Count(sorts, count);
        return [.. sorts.Values.OrderByDescending(count => count.Count)];
    }

    private static ImmutableArray<CautionCount> Cautions(Sampled sampled) =>
        [.. sampled.Parts.SelectMany(part => part.Cautions).GroupBy(pair => pair.Key).OrderBy(group => group.Key, StringComparer.Ordinal).Select(group => new CautionCount(group.Key, group.Sum(pair => pair.Value)))];

    private IEnumerable<Fault> Notes(UncertaintyReport report, Draws draws, ImmutableArray<UncertainGiven> givens, Correlations correlations)
    {
        const double noticeable = 1e-4;
        if (report.Faulted > 0) yield return UncertaintyNotes.Faulted(report.Faulted, report.Samples);
        foreach (Fault note in Compared(report)) yield return note;
        foreach (var (given, cut) in givens.Zip(draws.CutOff))
        {
            if (cut > noticeable) yield return UncertaintyNotes.Cut(given.Label, cut);
            if (given is { IsStudent: true, Freedom: <= 2 }) yield return UncertaintyNotes.NoDeviation(given.Label);
        }
        if (!correlations.IsPlain) yield return UncertaintyNotes.Correlated();
        foreach (CheckOdds odds in report.Checks.Where(odds => odds.Failed is > 0 and < 10)) yield return UncertaintyNotes.FewFailures(odds.Label, odds.Failed);
    }

    /// <summary>First order against Monte Carlo (JCGM 101:2008, section 8): the ends agree within half a unit of the last digit of u, to two digits where chance allows to tell.</summary>
    private IEnumerable<Fault> Compared(UncertaintyReport report)
    {
        if (report.MonteCarlo is not { } drawn || drawn.StandardUncertainty == 0) yield break;
        if (report.FirstOrder is not { StandardUncertainty: > 0 } first)
        {
            yield return UncertaintyNotes.NoSlope();
            yield break;
        }
        double power = Math.Pow(10, Math.Floor(Math.Log10(drawn.StandardUncertainty)));
        int digits = 2 * drawn.EndError <= power / 20 / 2 ? 2 : 1;
        double allowed = digits == 2 ? power / 20 : power / 2, low = Math.Abs(first.Low - drawn.Low), high = Math.Abs(first.High - drawn.High);
        if (low <= allowed && high <= allowed) yield break;
        yield return UncertaintyNotes.Disagree(Difference(report, low), Difference(report, high), Difference(report, allowed), digits);
    }

    private string Difference(UncertaintyReport report, double si) =>
        QuantityText.WriteDifference(si, ValueText.UnitOf(report.Type, report.Format, calculation.Workbook.Head.Units), new Digits(2, true));
}
