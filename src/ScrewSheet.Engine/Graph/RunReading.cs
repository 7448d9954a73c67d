using System.Collections.Immutable;
using ScrewSheet.Engine.Binding;
using ScrewSheet.Engine.Evaluation;
using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Units;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Engine.Graph;

/// <summary>Gathers the values of a run or column, cell by cell from top to bottom.</summary>
/// <remarks>In a column, notes above the first value are headings. Values know their rows where the run is one column and may have gaps.</remarks>
internal sealed class RunReading(CellReference run, Unit? unit)
{
    private const int NamedRows = 5;

    private readonly List<double> si = [];
    private readonly List<string> texts = [];
    private readonly List<int> rows = [];
    private CellType? element = unit is null ? null : unit.Kind is { } kind ? CellType.Of(kind) : CellType.Of(unit.Dimension);

    /// <summary>How many values were taken.</summary>
    public int Count => rows.Count;

    /// <summary>True where nothing was taken.</summary>
    public bool IsEmpty => rows.Count == 0;

    /// <summary>True for a note above the first value of a column.</summary>
    public bool IsHeading(Node cell) => run.Column is not null && IsEmpty && cell.Cell.Content is NoteContent;

    /// <summary>Takes a value.</summary>
    /// <returns>What is wrong with it, with the cell named by <paramref name="label"/>; else null.</returns>
    public Fault? Take(CellId cell, CellValue value, Func<string> label)
    {
        string? text = (value as TextValue)?.Value;
        double? number = SiValue.Of(value);
        if (number is null && text is null) return EvaluationFaults.SeriesType(label(), value.Type.Phrase);
        CellType? common = element is null ? value.Type : TypeRules.Common(element, value.Type);
        if (common is null)
            return run.Column is { } column && unit is not null ? EvaluationFaults.ColumnUnit(label(), value.Type.Phrase, column, unit.Symbol) : EvaluationFaults.SeriesMixed(label(), value.Type.Phrase, element!.Phrase);
        element = common;
        if (text is null) si.Add(number!.Value);
        else texts.Add(text);
        rows.Add(cell.Address.Row);
        return null;
    }

    /// <summary>The series.</summary>
    public CellValue Value()
    {
        ImmutableArray<int> known = KnowsRows ? [.. rows] : [];
        if (element is TextType) return new TextSeriesValue(new TextSeries([.. texts], known));
        Series series = SeriesFactory.Make(element!, [.. si]);
        return new SeriesValue(known.IsEmpty ? series : series.InRows(known), new SeriesType(element!));
    }

    /// <summary>What a reader of a column must know about its gaps, or null.</summary>
    /// <param name="label">The column, with its sheet.</param>
    public string? Blanks(string label)
    {
        if (run.Column is null || IsEmpty) return null;
        int blank = rows[^1] - rows[0] + 1 - rows.Count;
        if (blank == 0) return null;
        List<int> named = [];
        for (int i = 1; i < rows.Count && named.Count <= NamedRows; i++)
            for (int row = rows[i - 1] + 1; row < rows[i] && named.Count <= NamedRows; row++) named.Add(row);
        string list = named.Count <= NamedRows ? string.Join(", ", named) : string.Join(", ", named.Take(NamedRows)) + " and more";
        return $"The column {label} skips {blank} empty row{(blank == 1 ? "" : "s")} among its values: {list}.";
    }

    /// <summary>Runs without a gap are paired place by place, wherever they stand.</summary>
    private bool KnowsRows => run.Column is not null || (run.Last is { } last && run.First.Address.Column == last.Address.Column && rows.Count <= Math.Abs(last.Address.Row - run.First.Address.Row));
}
