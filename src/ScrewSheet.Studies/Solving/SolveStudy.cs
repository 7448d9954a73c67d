using System.Collections.Immutable;
using System.Globalization;
using ScrewSheet.Quantities.Formatting;
using ScrewSheet.Quantities.Units;
using ScrewSheet.Studies.Faults;
using ScrewSheet.Studies.Scenarios;
using ScrewSheet.Studies.Uncertainty;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Studies.Solving;

/// <summary>Finds the given that makes a result equal a value, or a check turn.</summary>
internal sealed class SolveStudy
{
    private const int MostNamed = 8;

    private readonly Calculation calculation;
    private readonly CellResult result, given;
    private readonly string label, byLabel;
    private readonly CellType type, byType;
    private readonly double target;
    private readonly PointFunction point;
    private readonly CancellationToken stop;
    private long tried, faulted;
    private double least = double.NaN, most = double.NaN;
    private Fault? example;

    private SolveStudy(StudyTools tools, Calculation calculation, Cone cone, CellResult result, CellResult given, CellType type, CellType byType, double target, CancellationToken stop)
    {
        (this.calculation, this.result, this.given, this.type, this.byType, this.target, this.stop) = (calculation, result, given, type, byType, target, stop);
        (label, byLabel) = (CellNaming.Label(calculation.Workbook, result.Id), CellNaming.Label(calculation.Workbook, given.Id));
        // a search needs a thousand evaluations: too few to pay for a kernel
        point = new PointFunction(ScenarioModel.Make(tools, cone, [GivenValues.Number(byType, Present)], compile: false, []), tools, 0, stop);
    }

    private double Present => SiValue.Of(given.Value) ?? (given.Cell.Content is GivenContent { Literal: NumberLiteral number } ? number.Si : 1);

    private bool IsCheck => type is TruthType;

    public static StudyOutcome<Solution> Run(StudyTools tools, Calculation calculation, SolveRequest request, CancellationToken stop)
    {
        if (CellNaming.Find(calculation.Workbook, request.Cell, null, out Fault? fault) is not { } cell) return fault!;
        if (GivenValues.Find(calculation, request.By, null, out fault) is not { } given) return fault!;
        CellResult result = calculation.Cells[cell];
        (string label, string byLabel) = (CellNaming.Label(calculation.Workbook, cell), CellNaming.Label(calculation.Workbook, given.Id));
        CellType byType = GivenValues.TypeOf(given)!;
        if (result.Outcome is null) return StudyFaults.NoValue(label, null);
        if (byType is not (NumberType or QuantityType)) return StudyFaults.NoRange(byLabel, byType.Phrase, null);
        Cone cone = Cone.Of(calculation, [given.Id], [cell]);
        if (cone.Shown[0] < 0) return StudyFaults.SolveInVain(label, byLabel);
        CellType? type = GivenValues.TypeOf(result) ?? result.Bound?.Type;
        if (type is null) return StudyFaults.NothingAtBase(label, result.Fault!.Sentence);
        if (type is not (NumberType or QuantityType or TruthType)) return StudyFaults.NotMeasurable(label, type.Phrase, null);
        double? target = type is TruthType ? Turn(request.Equal, label, out fault) : Value(request.Equal, type, label, out fault);
        if (target is null) return fault!;
        if (Ends(request, byType, byLabel, out fault) is not { } ends) return fault!;
        return new SolveStudy(tools, calculation, cone, result, given, type, byType, target.Value, stop).Run(ends.From, ends.To);
    }

    private static double? Turn(PlacedText text, string label, out Fault? fault)
    {
        bool known = text.Text.Trim() is "holds" or "fails" or "true" or "false";
        fault = known ? null : StudyFaults.OtherKind(text.Text, "a value", label, "a check: ask for holds or fails", null);
        return known ? double.NaN : null;
    }

    private static double? Value(PlacedText text, CellType type, string label, out Fault? fault)
    {
        Literal? literal = StudyText.ReadValue(text, out fault);
        if (literal is null)
        {
            fault ??= StudyFaults.OtherKind(text.Text, "no value", label, type.Phrase, null);
            return null;
        }
        return SiValue.Of(GivenValues.OfLiteral(literal, text.Text, type, label, null, out fault));
    }

    private static (double From, double To)? Ends(SolveRequest request, CellType type, string label, out Fault? fault)
    {
        fault = request.From is null != request.To is null ? StudyFaults.HalfInterval() : null;
        if (fault is not null) return null;
        if (request.From is null) return (double.NaN, double.NaN);
        if (Value(request.From, type, label, out fault) is not { } from || Value(request.To!, type, label, out fault) is not { } to) return null;
        fault = from < to ? null : StudyFaults.Interval(request.From.Text, request.To!.Text);
        return fault is null ? (from, to) : null;
    }

    private Solution Run(double from, double to)
    {
        if (!double.IsNaN(from)) return Search(from, to, SearchInterval.Asked);
        if (given.Cell.Content is GivenContent { Within: { } limits }) return Search(limits.FromSi, limits.ToSi, SearchInterval.Limits);
        double size = Present == 0 ? ByUnit.ToSi(1) - ByUnit.ToSi(0) : Math.Abs(Present);
        Solution? other = null;
        foreach (double width in new[] { 0.25, 1, 10, 100, 1e3, 1e4, 1e6 })
        {
            Solution found = Search(Present - (width * size), Present + (width * size), SearchInterval.Grown);
            // a root beyond zero is an answer only where there is none on this side
            if (found.Roots.Any(root => Present == 0 || Math.Sign(root.Si) == Math.Sign(Present))) return found;
            if (other is null || (other.Roots.IsEmpty && (!found.Roots.IsEmpty || width <= 1e4))) other = found;
        }
        return other!;
    }

    private Solution Search(double from, double to, SearchInterval interval)
    {
        (tried, faulted, least, most, example) = (0, 0, double.NaN, double.NaN, null);
        RootSearch search = new(IsCheck ? at => Evaluate(at) is var holds && double.IsNaN(holds) ? holds : holds > 0 ? 1 : -1 : at => Evaluate(at) - target);
        search.Run(from, to);
        ImmutableArray<Root> roots = IsCheck ? Turns(search) : [.. search.Roots.Select(root => RootAt(root.Si, root.Touches))];
        Root? answer = roots.OrderBy(root => Math.Sign(root.Si) == Math.Sign(Present) || Present == 0 ? 0 : 1).ThenBy(root => Math.Abs(root.Si - Present)).FirstOrDefault();
        Solution solution = new()
        {
            Cell = result.Id, Label = label, Type = type, Format = result.Cell.Format, TargetSi = target,
            By = given.Id, ByLabel = byLabel, ByType = byType, ByFormat = given.Cell.Format, BySi = SiValue.Of(given.Value) ?? double.NaN,
            Answer = answer, Roots = roots, Jumps = IsCheck ? [] : [.. search.Jumps], FromSi = from, ToSi = to, Interval = interval, LeastSi = IsCheck ? double.NaN : least, MostSi = IsCheck ? double.NaN : most,
            Tried = tried, Faulted = faulted, Notes = [],
        };
        return solution with { Notes = [.. Notes(solution, search)] };
    }

    private double Evaluate(double at)
    {
        if ((++tried & 63) == 0) stop.ThrowIfCancellationRequested();
        double value = point.At([at]);
        if (double.IsNaN(value))
        {
            faulted++;
            example ??= point.Fault;
            return value;
        }
        (least, most) = (double.IsNaN(least) ? value : Math.Min(least, value), double.IsNaN(most) ? value : Math.Max(most, value));
        return value;
    }

    private Root RootAt(double at, bool touches)
    {
        double there = Evaluate(at);
        return new Root(at, there, there - target, touches ? RootKind.Touching : RootKind.Crossing);
    }

    /// <summary>A check is 1 or -1, so every turn is a jump: the last double on the side that holds is the answer.</summary>
    private ImmutableArray<Root> Turns(RootSearch search)
    {
        var turns = ImmutableArray.CreateBuilder<Root>();
        foreach (double jump in search.Jumps)
        {
            double below = Math.BitDecrement(jump), above = Math.BitIncrement(jump);
            (double low, double here, double high) = (Evaluate(below), Evaluate(jump), Evaluate(above));
            if (double.IsNaN(here) || double.IsNaN(low + high)) continue;
            bool holdsBelow = low > 0;
            double at = here > 0 ? jump : holdsBelow ? below : above;
            turns.Add(new Root(at, 1, Math.Max(above - jump, jump - below), RootKind.Turning, holdsBelow));
        }
        return turns.ToImmutable();
    }

    private IEnumerable<Fault> Notes(Solution solution, RootSearch search)
    {
        string interval = $"{ByText(solution.FromSi)} to {ByText(solution.ToSi)}", wanted = IsCheck ? "turn" : CellText(target);
        if (solution.Answer is null && IsCheck) yield return SolveNotes.NoTurn(label, most > 0, byLabel, interval);
        else if (solution.Answer is null) yield return SolveNotes.NoRoot(label, wanted, byLabel, interval, double.IsNaN(least) ? "no value at all" : $"{CellText(least)} to {CellText(most)}");
        if (solution.Roots.Length > 1)
        {
            string more = solution.Roots.Length > MostNamed ? $", and {solution.Roots.Length - MostNamed} more" : "";
            yield return SolveNotes.Several(byLabel, string.Join(", ", solution.Roots.Take(MostNamed).Select(root => ByText(root.Si))) + more);
        }
        foreach (double jump in solution.Jumps.Take(MostNamed)) yield return SolveNotes.Jump(label, wanted, byLabel, ByText(jump));
        if (solution.Answer is { Kind: RootKind.Touching } touching) yield return SolveNotes.Touching(label, byLabel, ByText(touching.Si));
        long looked = search.Looked.Length, lost = search.Looked.LongCount(place => double.IsNaN(place.Value));
        if (lost > 0) yield return SolveNotes.Faults(label, Count(lost), Count(looked), example?.Message ?? "");
    }

    private Unit ByUnit => UnitOf(byType, given.Cell.Format);

    private Unit UnitOf(CellType of, DisplayFormat? format) => ValueText.UnitOf(of, format, calculation.Workbook.Head.Units);

    private string ByText(double si) => QuantityText.Write(si, ByUnit, new Digits(5, true));

    private string CellText(double si) => QuantityText.Write(si, UnitOf(type, result.Cell.Format), new Digits(5, true));

    private static string Count(long count) => count.ToString("#,0", CultureInfo.InvariantCulture);
}
