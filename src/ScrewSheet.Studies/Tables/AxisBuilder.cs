using System.Globalization;
using ScrewSheet.Quantities.Units;
using ScrewSheet.Studies.Faults;
using ScrewSheet.Studies.Scenarios;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Studies.Tables;

/// <summary>Works out the values a given takes, and refuses ranges that lead nowhere.</summary>
internal static class AxisBuilder
{
    private const double EndAllowance = 1e-9;

    /// <summary>The axis, or why there is none.</summary>
    public static StudyOutcome<WhatIfAxis> Build(Calculation calculation, VarySpec spec, string? sheet, FunctionLibrary library)
    {
        if (GivenValues.Find(calculation, spec.Name, sheet, out Fault? fault) is not { } given) return fault!;
        string label = CellNaming.Label(calculation.Workbook, given.Id);
        CellType type = GivenValues.TypeOf(given)!;
        return spec.Values switch
        {
            VaryList list => OfList(calculation.Workbook, given.Id, label, type, list, library),
            VaryRange when type is not (NumberType or QuantityType) => StudyFaults.NoRange(label, type.Phrase, PlaceOf(spec)),
            VaryRange range => OfRange(given.Id, label, type, range, PlaceOf(spec)),
            _ => throw new InvalidOperationException("An unknown form of values."),
        };
    }

    /// <summary>A count in words a reader takes in.</summary>
    public static string Count(double count) => count < 1e15 ? count.ToString("#,0", CultureInfo.InvariantCulture) : count.ToString("G3", CultureInfo.InvariantCulture);

    private static StudyOutcome<WhatIfAxis> OfList(Workbook workbook, CellId given, string label, CellType type, VaryList list, FunctionLibrary library)
    {
        CellValue?[] values = new CellValue?[list.Values.Length];
        Fault? fault = null;
        for (int i = 0; i < values.Length; i++)
        {
            VaryValue written = list.Values[i];
            if (written.Literal is not null) values[i] = GivenValues.OfLiteral(written.Literal, written.Text, type, label, PlaceOf(written.Place), out fault);
            if (fault is not null) return fault;
        }
        VaryValue[] expressions = [.. list.Values.Where(written => written.Literal is null)];
        if (expressions.Length > 0)
        {
            Queue<CellValue> worked = new(GivenValues.OfExpressions(workbook, library, expressions, type, label, out fault));
            if (fault is not null) return fault;
            for (int i = 0; i < values.Length; i++) values[i] ??= worked.Dequeue();
        }
        Unit? unit = list.Values.Select(written => (written.Literal as NumberLiteral)?.Unit).FirstOrDefault(unit => unit is not null);
        bool numeric = type is NumberType or QuantityType;
        return new WhatIfAxis(given, label, type, [.. values.Select(value => value!)], unit, numeric ? [] : [.. list.Values.Select(written => written.Text)]);
    }

    private static StudyOutcome<WhatIfAxis> OfRange(CellId given, string label, CellType type, VaryRange range, Place? place)
    {
        foreach (NumberLiteral end in new[] { range.From, range.To })
        {
            if (!double.IsFinite(end.Value)) return StudyFaults.NotFinite(label, place);
            GivenValues.OfLiteral(end, Write(end), type, label, place, out Fault? fault);
            if (fault is not null) return fault;
        }
        if (range.Step is { } step) return Stepped(given, label, type, range, step, place);
        if (range.Logarithmic && !(range.From.Si > 0 && range.To.Si > 0)) return StudyFaults.LogarithmOfZero(place);
        if (range.Steps >= WhatIfTable.MostEntries) return StudyFaults.TooMany(Count(range.Steps + 1.0), Count(WhatIfTable.MostEntries), place);
        if (range.Steps < 1) return StudyFaults.StepZero(place);
        double[] si = new double[range.Steps + 1];
        for (int i = 0; i < si.Length; i++)
        {
            double share = i / (double)range.Steps;
            si[i] = range.Logarithmic ? range.From.Si * Math.Pow(range.To.Si / range.From.Si, share) : Between(range, share);
        }
        (si[0], si[^1]) = (range.From.Si, range.To.Si);
        return Axis(given, label, type, range, si);
    }

    private static StudyOutcome<WhatIfAxis> Stepped(CellId given, string label, CellType type, VaryRange range, NumberLiteral step, Place? place)
    {
        Unit unit = range.From.Unit ?? UnitTable.Number;
        if (!double.IsFinite(step.Value)) return StudyFaults.NotFinite(label, place);
        if ((step.Unit ?? UnitTable.Number).Dimension != unit.Dimension) return StudyFaults.OtherKind(Write(step), step.Unit is null ? "a number" : CellType.Of(step.Unit.Dimension).Phrase, label, type.Phrase, place);
        // a step is a difference: in the unit of the first value, without the zero of its scale
        double by = ReferenceEquals(step.Unit, range.From.Unit) ? step.Value : step.Value * (step.Unit!.Multiplier / step.Unit.Divisor) * (unit.Divisor / unit.Multiplier);
        double from = range.From.Value, to = ReferenceEquals(range.To.Unit, range.From.Unit) ? range.To.Value : unit.FromSi(range.To.Si);
        if (by == 0) return StudyFaults.StepZero(place);
        if ((to - from) * by < 0) return StudyFaults.StepWrongSign(Write(range.From), Write(range.To), Write(step), place);
        double count = Math.Floor(((to - from) / by) + EndAllowance) + 1;
        if (count > WhatIfTable.MostEntries) return StudyFaults.TooMany(Count(count), Count(WhatIfTable.MostEntries), place);
        double[] si = new double[(int)count];
        for (int i = 0; i < si.Length; i++)
        {
            double value = Plain(from + (i * by));
            si[i] = Math.Abs(value - to) <= EndAllowance * Math.Abs(by) ? range.To.Si : unit.ToSi(value);
        }
        return Axis(given, label, type, range, si);
    }

    private static double Between(VaryRange range, double share)
    {
        Unit unit = range.From.Unit ?? UnitTable.Number;
        double from = range.From.Value, to = ReferenceEquals(range.To.Unit, range.From.Unit) ? range.To.Value : unit.FromSi(range.To.Si);
        return unit.ToSi(Plain(from + (share * (to - from))));
    }

    /// <summary>The value a person would have written: three steps of 0.1 are 0.3.</summary>
    private static double Plain(double value) => double.Parse(value.ToString("G15", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);

    private static WhatIfAxis Axis(CellId given, string label, CellType type, VaryRange range, double[] si) =>
        new(given, label, type, [.. si.Select(value => GivenValues.Number(type, value))], range.From.Unit, []);

    private static string Write(NumberLiteral number) => number.Unit is { } unit ? $"{Quantities.Formatting.NumberText.Exact(number.Value)} {unit}" : Quantities.Formatting.NumberText.Exact(number.Value);

    private static Place? PlaceOf(VarySpec spec) => PlaceOf(spec.Place);

    private static Place? PlaceOf(Place place) => place.Line > 0 ? place : null;
}
