using System.Collections.Immutable;
using ScrewSheet.Exports.Tables;
using ScrewSheet.Exports.Xlsx.Formulas;
using ScrewSheet.Quantities.Units;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Exports.Xlsx.Pages;

/// <summary>Lays a what-if table out on the sheet it belongs to, each entry a formula of its heads: whoever types over a head sees the entries follow.</summary>
internal sealed class TablePage
{
    private const int MostLive = 10_000;

    private readonly Book book;
    private readonly Page page;
    private readonly ComputedTable table;
    private readonly TableShape shape;
    private readonly TableCells cells;
    private readonly string label;
    private readonly string?[] why;
    private int live;

    private TablePage(Book book, Page page, ComputedTable table, CellAddress anchor)
    {
        (this.book, this.page, this.table) = (book, page, table);
        shape = new TableShape(table, anchor);
        label = $"{table.Sheet}.{anchor}";
        cells = new TableCells(book, [.. table.Axes.Select(axis => axis.Cell)], label);
        why = new string?[table.Columns.Length];
    }

    /// <summary>Puts the table there.</summary>
    /// <returns>Where its parts are, for charts; null where there is no table.</returns>
    public static TableShape? Add(Book book, Page page, ComputedTable table)
    {
        if (table.Anchor is not { } anchor) return null;
        if (table.Fault is { } fault)
        {
            page.Add(new PageCell(anchor, Values.Words($"No table: {fault}"), Role.Fixed));
            return null;
        }
        TablePage made = new(book, page, table, anchor);
        if (!made.shape.Fits)
        {
            book.NoPlace($"The table at {made.label} is larger than a sheet of such a file, and was left out.");
            return null;
        }
        made.Fill();
        return made.shape;
    }

    private void Fill()
    {
        book.Cells.Sheet = table.Sheet;
        Title();
        Heads();
        foreach (TableColumn column in table.Columns) cells.Depends(column.Cell);
        string? all = table.Scenarios > MostLive ? $"tables of more than {MostLive} scenarios are values" : table.Axes.FirstOrDefault(axis => !IsVariable(axis)) is { } words ? $"{words.Label} is varied in words" : null;
        Array.Fill(why, all);
        for (int scenario = 0; scenario < table.Scenarios; scenario++) Scenario(scenario);
        book.CountEntries(live, table.Scenarios * table.Columns.Length);
        for (int column = 0; column < why.Length; column++)
            if (why[column] is { } reason) book.FixedColumn(VisibleText.Of($"{label} {table.Columns[column].Label}"), reason);
        Remarks();
    }

    private static bool IsVariable(TableAxis axis) => axis.IsNumeric || axis.Values.All(value => value.Truth is not null);

    private void Title()
    {
        if (table.Title is not { Length: > 0 } title) return;
        CellAddress above = new(shape.Anchor.Column, shape.Anchor.Row - 1);
        if (above.Row > 0 && page.At(above) is null) page.Add(new PageCell(above, Values.Words(title), Role.Heading));
    }

    private void Heads()
    {
        foreach ((CellAddress at, string words) in shape.Heads()) page.Add(new PageCell(at, Values.Words(words), Role.Head) { Comment = at == shape.Anchor && table.Title is { } title ? VisibleText.Of(title) : null });
        foreach (AxisPlace place in shape.AxisPlaces())
        {
            TableAxis axis = table.Axes[place.Axis];
            TableEntry entry = axis.Values[place.Value];
            CellUnit unit = new(axis.Unit ?? UnitTable.Number);
            page.Add(new PageCell(place.At, ContentOf(entry, unit, isCheck: false), Role.Given) { NumberFormat = entry.Number is null ? NumberFormats.General : NumberFormats.Whole(unit, entry.Text), Formula = place.Same?.ToString() });
        }
    }

    private void Scenario(int scenario)
    {
        int[] places = table.Places(scenario);
        for (int column = 0; column < table.Columns.Length; column++)
        {
            TableColumn shown = table.Columns[column];
            TableEntry entry = shown.Entries[scenario];
            CellUnit unit = new(shown.Unit ?? UnitTable.Number);
            string? formula = entry.Fault is null && why[column] is null ? Formula(column, places, unit) : null;
            if (formula is not null) live++;
            page.Add(new PageCell(shape.Entry(column, scenario), ContentOf(entry, unit, shown.IsCheck), formula is null ? Role.Fixed : Role.Live)
            {
                Formula = formula,
                NumberFormat = shown.IsCheck && entry.Truth is not null ? NumberFormats.Check : entry.Number is null ? NumberFormats.General : NumberFormats.For(unit, entry.Text, shown.Format?.Digits),
                Comment = entry.Fault is { } fault ? $"Fault: {VisibleText.Of(fault)}" : null,
                IsCheck = shown.IsCheck && entry.Truth is not null,
            });
        }
    }

    private string? Formula(int column, int[] places, CellUnit unit)
    {
        TableColumn shown = table.Columns[column];
        try
        {
            cells.Begin(table.Axes.Select((axis, i) => (axis.Cell, Head(axis, shape.Head(column, i, places)))));
            CellResult cell = book.Calculation.Cells[shown.Cell];
            CellType type = cell.Value?.Type ?? cell.Type ?? cell.Bound?.Type ?? throw new NoForm($"{shown.Label} is in fault");
            if (type is RecordType or SeriesType) throw new NoForm($"{type.Phrase} does not fit a cell");
            string formula = PlacedCells.ForOwnSheet(Book.Held(cells.Shown(shown.Cell), type, unit, shown.IsCheck).Text);
            FormulaLength.Check(formula);
            return formula;
        }
        catch (NoForm none)
        {
            why[column] = none.Message;
            return null;
        }
    }

    private static FormulaText Head(TableAxis axis, CellAddress at)
    {
        FormulaText cell = FormulaText.Atom(PlacedCells.Here + at.ToString());
        return axis.IsNumeric ? new CellUnit(axis.Unit ?? UnitTable.Number).ToSi(cell) : cell;
    }

    private static Content ContentOf(TableEntry entry, CellUnit unit, bool isCheck)
    {
        if (entry.Fault is not null) return new Content.None();
        if (entry.Truth is { } truth) return isCheck ? new Content.Number(truth ? 1 : 0) : new Content.Truth(truth);
        return entry.Number is { } number ? new Content.Number(unit.IsPercent ? number / 100 : number) : Values.Words(entry.Text);
    }

    /// <summary>What must be said about the table stands in the comment of its first entry: there may be no room below it.</summary>
    private void Remarks()
    {
        ImmutableArray<string> said = [.. table.Notes, .. table.Columns.SelectMany(column => column.Remarks), .. why.OfType<string>().Distinct().Select(reason => $"Values, no formulas: {reason}. They do not follow when heads change here.")];
        CellAddress at = shape.Entry(0, 0);
        if (said.IsEmpty || page.At(at) is not { } first) return;
        page.Replace(first with { Comment = string.Join('\n', said.Select(VisibleText.Of).Prepend(first.Comment ?? "").Where(line => line.Length > 0)) });
    }
}
