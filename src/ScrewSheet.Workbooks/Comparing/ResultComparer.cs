using System.Collections.Immutable;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Workbooks.Comparing;

/// <summary>Finds results whose values changed, and those that only other versions of the program computed differently.</summary>
internal sealed class ResultComparer(Calculation before, Calculation after, WorkbookPairs pairs, ImmutableArray<CellChange> changed)
{
    /// <summary>What the order of summing may change: less is no change of a value.</summary>
    private const double Allowance = 1e-12;

    private readonly HashSet<CellId> byAuthor = [.. changed.Where(change => change.After is not null && change.Changes.Any(text => text.What is "expression" or "given" or "type")).Select(change => change.After!.Value)];
    private readonly List<(CellResult Before, CellResult After)> results = [.. Pairs(before, after, pairs)];

    /// <summary>Results with another value, in the order of the later version.</summary>
    public ImmutableArray<ResultChange> Changes() =>
        [.. results.Where(pair => !IsSame(pair.Before.Outcome, pair.After.Outcome)).Select(pair => new ResultChange(pair.Before, pair.After, Relative(pair.Before.Value, pair.After.Value), byAuthor.Contains(pair.After.Id)))];

    /// <summary>Results that say and give the same, kept as different values.</summary>
    public ImmutableArray<LibraryChange> ByLibrary() =>
        [.. results.Where(pair => KeptOf(pair.Before) is { } early && KeptOf(pair.After) is { } late && early != late && !byAuthor.Contains(pair.After.Id)
            && Equals(pair.Before.Cell.Format, pair.After.Cell.Format) && IsSame(pair.Before.Outcome, pair.After.Outcome)).Select(pair => new LibraryChange(pair.Before, pair.After))];

    private static IEnumerable<(CellResult, CellResult)> Pairs(Calculation before, Calculation after, WorkbookPairs pairs) =>
        from sheet in after.Workbook.Sheets
        from late in after.Of(sheet)
        where late.Cell.Content is ResultContent
        let id = pairs.Backward(late.Id)
        where id is not null
        let early = before.Cells[id.Value]
        where early.Cell.Content is ResultContent
        select (early, late);

    private static string? KeptOf(CellResult cell) => (cell.Cell.Content as ResultContent)?.Kept;

    private static bool IsSame(Outcome? one, Outcome? other) => (one, other) switch
    {
        (Computed early, Computed late) => IsSame(early.Value, late.Value),
        (Faulted early, Faulted late) => early.Fault.Kind == late.Fault.Kind && (early.Fault.Kind == Diagnostics.FaultKind.Waiting || early.Fault.Message == late.Fault.Message),
        (null, null) => true,
        _ => false,
    };

    private static bool IsSame(CellValue one, CellValue other) => (one, other) switch
    {
        (SeriesValue early, SeriesValue late) => early.Type == late.Type && early.Value.Count == late.Value.Count && early.Value.Si.Zip(late.Value.Si).All(pair => IsNear(pair.First, pair.Second)),
        (TextSeriesValue early, TextSeriesValue late) => early.Value.Texts.SequenceEqual(late.Value.Texts),
        (NumberValue or QuantityValue, NumberValue or QuantityValue) => DimensionOf(one) == DimensionOf(other) && IsNear(SiValue.Of(one)!.Value, SiValue.Of(other)!.Value),
        _ => Equals(one, other),
    };

    private static bool IsNear(double one, double other) => one == other || Math.Abs(one - other) <= Allowance * Math.Max(Math.Abs(one), Math.Abs(other));

    private static double? Relative(CellValue? one, CellValue? other) =>
        one is not null && other is not null && SiValue.Of(one) is { } early && SiValue.Of(other) is { } late && early != 0 && DimensionOf(one) == DimensionOf(other) ? (late - early) / Math.Abs(early) : null;

    private static Quantities.Dimension DimensionOf(CellValue value) => value.Type is QuantityType quantity ? quantity.Dimension : Quantities.Dimension.None;
}
