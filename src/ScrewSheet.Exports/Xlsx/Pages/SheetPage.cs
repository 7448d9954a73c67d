using ScrewSheet.Exports.Xlsx.Formulas;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Exports.Xlsx.Pages;

/// <summary>Lays a sheet of the workbook out: every cell at its own address, results as formulas where they have one.</summary>
/// <param name="book">What all sheets share.</param>
internal sealed class SheetPage(Book book)
{
    private const double Widest = 80;

    /// <summary>The sheet.</summary>
    public Page Make(Sheet sheet, string name)
    {
        Page page = new(name);
        book.Cells.Sheet = sheet.Name;
        foreach (CellResult cell in book.Calculation.Of(sheet))
        {
            if (!PlacedCells.IsPlaced(cell.Id.Address)) book.Unplaced(cell);
            else if (Make(cell) is { } made) page.Add(made);
        }
        CellAddress corner = new(1, 1);
        if (sheet.Title is { Length: > 0 } title) page.Add(new PageCell(corner, Values.Words(title), Role.Title));
        return page;
    }

    /// <summary>Gives every column a width: the author's, or what its contents need.</summary>
    public static void Widen(Page page, Sheet sheet)
    {
        foreach (PageCell cell in page.Cells.Where(cell => cell.Role is not (Role.Title or Role.Heading)))
        {
            double needed = Math.Min(Widest, Needed(cell) + 2);
            page.Widths[cell.At.Column] = Math.Max(page.Widths.GetValueOrDefault(cell.At.Column, 8), needed);
        }
        foreach ((int column, int width) in sheet.Widths)
            if (column <= PlacedCells.LastColumn) page.Widths[column] = Math.Clamp(Math.Max(width, page.Widths.GetValueOrDefault(column) is var needed && needed <= Widest / 2 ? needed : 0), 1, 250);
    }

    private static double Needed(PageCell cell) => cell.Value switch
    {
        Content.Words words => words.Value.Length,
        Content.Number => 8 + (cell.NumberFormat.Length / 2.0),
        _ => 6,
    };

    private PageCell? Make(CellResult cell) => cell.Cell.Content switch
    {
        NoteContent note => new PageCell(cell.Id.Address, Values.Words(note.Text), Role.Note),
        GivenContent given => Given(cell, given),
        ResultContent => Result(cell),
        _ => new PageCell(cell.Id.Address, new Content.None(), Role.Fixed) { Comment = CellComment.Of(cell, null) },
    };

    private PageCell Given(CellResult cell, GivenContent given)
    {
        CellUnit unit = book.Values.UnitOf(cell);
        bool isNumber = cell.Value is NumberValue or QuantityValue;
        return new PageCell(cell.Id.Address, book.Values.Of(cell), Role.Given)
        {
            NumberFormat = book.Values.FormatOf(cell),
            Comment = CellComment.Of(cell, null),
            Within = isNumber && given.Within is { } limits ? (unit.FromSi(limits.FromSi), unit.FromSi(limits.ToSi), VisibleText.Of(limits.Text)) : null,
        };
    }

    private PageCell Result(CellResult cell)
    {
        string? formula = Formula(cell, out string? why);
        book.Count(cell, formula is not null, why);
        return new PageCell(cell.Id.Address, book.Values.Of(cell), formula is null ? Role.Fixed : Role.Live)
        {
            Formula = formula,
            NumberFormat = book.Values.FormatOf(cell),
            Comment = CellComment.Of(cell, cell.Fault is null ? why : null),
            IsCheck = cell is { IsCheck: true, Value: TruthValue },
        };
    }

    private string? Formula(CellResult cell, out string? why)
    {
        why = null;
        try
        {
            if (cell.Value is null || cell.Bound is not { } tree) throw new NoForm(cell.Fault is null ? "it has no value" : "it is in fault");
            if (cell.Value is RecordValue or SeriesValue or TextSeriesValue) throw new NoForm($"{cell.Value.Type.Phrase} does not fit a cell");
            FormulaText si = book.Writer.Write(tree, Scope.Of(cell), book.Cells);
            if (si.Constant is not null && tree is BoundCall or BoundMember) throw new NoForm("its function has no closed formula, and it reads no other cell");
            string formula = PlacedCells.ForOwnSheet(book.Held(si, cell).Text);
            FormulaLength.Check(formula);
            return formula;
        }
        catch (NoForm none)
        {
            why = none.Message;
            return null;
        }
    }
}
