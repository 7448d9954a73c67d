using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Editing;

/// <summary>Gives cells and sheets other names, wherever they are named.</summary>
public static class Renaming
{
    /// <summary>With another name for a cell, in every expression and table that uses it.</summary>
    /// <param name="workbook">The workbook.</param>
    /// <param name="id">The cell; it must be there.</param>
    /// <param name="name">The new name.</param>
    /// <param name="fault">Why it cannot be, or null.</param>
    public static Workbook Cell(Workbook workbook, CellId id, string name, out Fault? fault)
    {
        ArgumentNullException.ThrowIfNull(workbook);
        Sheet sheet = workbook.Find(id.Sheet) ?? throw new ArgumentException($"There is no sheet {id.Sheet}.", nameof(id));
        Cell cell = sheet.Cells[id.Address];
        fault = name.Length == 0 ? NoName("A cell keeps its name.", "Write another one, or take it out of the entry.") : NameRules.Cell(new LineText(name, 0), 0, name.Length)
            ?? (sheet.Column(name) is not null ? NameFaults.DoubledName(default, name, "", 0) with { Message = $"{name} is the name of a column of {id.Sheet} already.", Place = null }
            : sheet.Names.TryGetValue(name, out CellAddress bearer) && bearer != id.Address ? NameFaults.DoubledName(default, name, bearer.ToString(), 0) with { Message = $"{name} is the name of {bearer} already.", Place = null } : null);
        if (fault is not null || cell.Name == name) return workbook;
        string? old = cell.Name;
        Workbook renamed = workbook.WithCell(id.Sheet, cell with { Name = name });
        if (old is null) return renamed;
        Workbook everywhere = Expressions(renamed, (from, reference) => reference.Name == old && (reference.Sheet ?? from) == id.Sheet ? (reference.Sheet is null ? name : $"{reference.Sheet}.{name}") : null);
        return Lines(everywhere, (own, line) => TableReferences.Renamed(line, workbook, own, id, old, name));
    }

    /// <summary>With another name for a sheet, in every expression that uses it.</summary>
    /// <param name="workbook">The workbook.</param>
    /// <param name="sheet">The sheet; it must be there.</param>
    /// <param name="name">The new name.</param>
    /// <param name="fault">Why it cannot be, or null.</param>
    public static Workbook Sheet(Workbook workbook, string sheet, string name, out Fault? fault)
    {
        ArgumentNullException.ThrowIfNull(workbook);
        Sheet old = workbook.Find(sheet) ?? throw new ArgumentException($"There is no sheet {sheet}.", nameof(sheet));
        fault = name.Length == 0 ? NoName("A sheet has a name.", "Write one that begins with a capital.")
            : NameRules.Capital(new LineText(name, 0), 0, name.Length, "sheet")
            ?? (sheet != name && workbook.Find(name) is not null ? NameFaults.DoubledSheet(default, name, 0) with { Message = $"There is a sheet {name} already.", Place = null } : null);
        if (fault is not null || sheet == name) return workbook;
        Workbook expressions = Expressions(workbook, (_, reference) => reference.Sheet == sheet ? $"{name}.{reference.Name}" : null);
        int at = workbook.Sheets.IndexOf(old);
        return Lines(expressions with { Sheets = expressions.Sheets.SetItem(at, expressions.Sheets[at] with { Name = name }) }, (_, line) => TableReferences.RenamedSheet(line, sheet, name));
    }

    private static Fault NoName(string message, string remedy) => NameFaults.DoubledSheet(default, "", 0) with { Message = message, Remedy = remedy, Place = null };

    /// <summary>Every expression with its references written as told, or left where that gives null.</summary>
    internal static Workbook Expressions(Workbook workbook, Func<string, WrittenReference, string?> write)
    {
        Workbook changed = workbook;
        foreach (Sheet sheet in workbook.Sheets)
        {
            foreach (Cell cell in sheet.CellsInOrder)
            {
                if (cell.Content is not ResultContent result) continue;
                string expression = WrittenReferences.Rewrite(result.Expression, name => workbook.Find(name) is not null, reference => write(sheet.Name, reference));
                if (expression != result.Expression) changed = changed.WithCell(sheet.Name, cell with { Content = result with { Expression = expression } });
            }
        }
        return changed;
    }

    /// <summary>With another name for a column, in its line and in every expression that uses it.</summary>
    /// <param name="workbook">The workbook.</param>
    /// <param name="sheet">The sheet; it must be there.</param>
    /// <param name="old">The column's name; it must be there.</param>
    /// <param name="name">The new name.</param>
    /// <param name="fault">Why it cannot be, or null.</param>
    public static Workbook Column(Workbook workbook, string sheet, string old, string name, out Fault? fault)
    {
        ArgumentNullException.ThrowIfNull(workbook);
        Sheet found = workbook.Find(sheet) ?? throw new ArgumentException($"There is no sheet {sheet}.", nameof(sheet));
        if (found.Column(old) is null) throw new ArgumentException($"There is no column {old}.", nameof(old));
        fault = name.Length == 0 ? NoName("A column keeps its name.", "Write another one, or take its line out of the file.") : NameRules.Cell(new LineText(name, 0), 0, name.Length)
            ?? (name != old && found.Knows(name) ? NameFaults.DoubledName(default, name, sheet, 0) with { Message = $"{name} is a name on {sheet} already.", Place = null } : null);
        if (fault is not null || old == name) return workbook;
        Workbook everywhere = Expressions(workbook, (from, reference) => reference.Name == old && (reference.Sheet ?? from) == sheet ? (reference.Sheet is null ? name : $"{reference.Sheet}.{name}") : null);
        return Lines(everywhere, (own, line) => own == sheet ? ColumnMoves.Renamed(line, old, name) : line);
    }

    /// <summary>The lines that are no cells, of the head (whose sheet is null) and of all sheets, rewritten; the text is read again where one changed.</summary>
    private static Workbook Lines(Workbook workbook, Func<string?, string, string> rewrite)
    {
        bool any = false;
        string Text(string? own, string line)
        {
            string text = rewrite(own, line);
            any |= text != line;
            return text;
        }

        Workbook changed = workbook with { Sheets = [.. workbook.Sheets.Select(sheet => Lines(sheet, line => Text(sheet.Name, line)))], Source = Relocation.Head(workbook, line => Text(null, line)) };
        if (!any) return workbook;
        return WorkbookText.Read(WorkbookText.Write(changed)) is WorkbookRead read ? read.Workbook : workbook;
    }

    private static Sheet Lines(Sheet sheet, Func<string, string> rewrite)
    {
        FileLine Line(FileLine line) => line with { Text = rewrite(line.Text) };
        List<Cell> cells = [];
        foreach (Cell cell in sheet.CellsInOrder)
        {
            if (cell.Source.Value is not { Leading.IsEmpty: false } source) continue;
            cells.Add(cell with { Source = new(source.With([.. source.Leading.Select(Line)])) });
        }
        Sheet changed = sheet with { Cells = sheet.Cells.With(cells) };
        return sheet.Source.Value is { } own ? changed with { Source = new(own with { Opening = [.. own.Opening.Select(Line)], Trailing = [.. own.Trailing.Select(Line)] }) } : changed;
    }
}
