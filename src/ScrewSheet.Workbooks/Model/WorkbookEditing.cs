using System.Collections.Immutable;
using ScrewSheet.Workbooks.Format;

namespace ScrewSheet.Workbooks.Model;

/// <content>Changes. Each gives a workbook that shares what did not change, and the same one when nothing did; no other line of the file is rewritten.</content>
public sealed partial record Workbook
{
    /// <summary>
    /// With that cell in place of the one at its address, or new: after the nearest cell before it in row order. Its line is written in canonical form and read back,
    /// so columns count in the new line and a name that is none puts the cell in fault.
    /// </summary>
    /// <param name="sheet">The sheet's name.</param>
    /// <param name="cell">The cell.</param>
    /// <exception cref="ArgumentException">There is no such sheet, or its text cannot be read back as a cell at its address.</exception>
    /// <exception cref="InvalidOperationException">The workbook has its full number of cells.</exception>
    public Workbook WithCell(string sheet, Cell cell)
    {
        ArgumentNullException.ThrowIfNull(cell);
        return Change(sheet, old => SheetEditing.With(old, cell, NewLine), cell.Address, cell.Name);
    }

    /// <summary>Without the cell at that address and the remark directly above it. Where two lines have the address, the second takes the place.</summary>
    /// <param name="sheet">The sheet's name.</param>
    /// <param name="address">The address; the same workbook where no cell is.</param>
    /// <exception cref="ArgumentException">There is no such sheet.</exception>
    public Workbook WithoutCell(string sheet, CellAddress address) => Change(sheet, old => SheetEditing.Without(old, address), address, null);

    /// <summary>With these texts after <c>gives</c>; null takes it away. Where the head omits results, all are taken away. The rest of each line stays as it is.</summary>
    /// <param name="kept">The text for each result; cells that are no results are passed over.</param>
    /// <exception cref="ArgumentException">A text does not read back as a kept result.</exception>
    public Workbook WithKept(IReadOnlyDictionary<CellId, string?> kept)
    {
        ArgumentNullException.ThrowIfNull(kept);
        ImmutableArray<Sheet> sheets = Sheets;
        for (int i = 0; i < sheets.Length; i++)
        {
            Sheet changed = KeptEditing.With(sheets[i], kept, Head.ResultsOmitted, NewLine);
            if (!ReferenceEquals(changed, sheets[i])) sheets = sheets.SetItem(i, changed);
        }
        return sheets == Sheets ? this : this with { Sheets = sheets };
    }

    /// <summary>With that head; only the lines whose words change are rewritten, added or removed.</summary>
    /// <param name="head">The head; line breaks in its texts become blanks.</param>
    public Workbook WithHead(Head head)
    {
        ArgumentNullException.ThrowIfNull(head);
        if (head == Head) return this;
        Workbook changed = this with { Head = head };
        return changed with { Source = new(HeadText.Current(changed)) };
    }

    /// <summary>
    /// With that sheet in place of the one of its name, or added at the end. Cells that say the same keep their lines; the others are written and read back as in <see cref="WithCell"/>.
    /// </summary>
    /// <param name="sheet">The sheet; one made in memory needs no lines.</param>
    /// <exception cref="ArgumentException">A cell's text cannot be read back as a cell at its address.</exception>
    public Workbook WithSheet(Sheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        int at = IndexOf(sheet.Name);
        if (at >= 0 && ReferenceEquals(Sheets[at], sheet)) return this;
        Sheet adopted = SheetEditing.Adopt(at < 0 ? null : Sheets[at], sheet, NewLine);
        Workbook changed = this with { Sheets = at < 0 ? Sheets.Add(adopted) : Sheets.SetItem(at, adopted) };
        return adopted.Index.Doubled.IsEmpty ? changed : changed.ReadAgain();
    }

    /// <summary>Without the sheet of that name and its lines; the same workbook where there is none. A second sheet of the name, in fault until then, is read.</summary>
    /// <param name="sheet">The sheet's name.</param>
    public Workbook WithoutSheet(string sheet)
    {
        int at = IndexOf(sheet);
        if (at < 0) return this;
        ImmutableArray<FileLine> staying = SheetText.UnreadSheets(Sheets[at]);
        Workbook changed = this with { Sheets = Sheets.RemoveAt(at) };
        return staying.IsEmpty ? changed : changed.WithLinesBefore(at, staying).ReadAgain();
    }

    /// <summary>Lines put behind the sheet before that one, behind the head where it is the first.</summary>
    private Workbook WithLinesBefore(int sheet, ImmutableArray<FileLine> lines)
    {
        if (sheet == 0)
        {
            WorkbookSource head = HeadText.Current(this);
            return this with { Source = new(head with { HeadLines = [.. head.HeadLines, .. lines.Select(line => new HeadLine(line, "", null))] }) };
        }
        Sheet before = Sheets[sheet - 1];
        SheetSource source = SheetText.Current(before, NewLine);
        return this with { Sheets = Sheets.SetItem(sheet - 1, before with { Source = new(source with { Trailing = [.. source.Trailing, .. lines] }) }) };
    }

    private LineEnd NewLine => Source.Value?.NewLine ?? LineEnd.Lf;

    private Workbook Change(string sheet, Func<Sheet, Sheet> edit, CellAddress at, string? newName)
    {
        int index = IndexOf(sheet);
        if (index < 0) throw new ArgumentException($"There is no sheet {sheet}.", nameof(sheet));
        Sheet old = Sheets[index], changed = edit(old);
        if (ReferenceEquals(old, changed)) return this;
        Workbook workbook = this with { Sheets = Sheets.SetItem(index, changed) };
        bool doubled = old.Source.Value?.DoubledAddresses.Contains(at) == true;
        string? oldName = old.Cells.GetValueOrDefault(at)?.Name;
        bool clash = doubled || old.Index.Clashes(newName, at) || (newName is not null && old.Column(newName) is not null) || (oldName is not null && old.Index.Doubled.Contains(oldName));
        return clash ? workbook.ReadAgain() : workbook;
    }

    /// <summary>Where names or addresses are doubled, or were, which cells are in fault is found by reading the text again.</summary>
    private Workbook ReadAgain() => WorkbookText.Read(WorkbookText.Write(this)) is WorkbookRead read
        ? read.Workbook
        : throw new InvalidOperationException("The workbook has its full number of cells.");

    private int IndexOf(string sheet)
    {
        for (int i = 0; i < Sheets.Length; i++)
        {
            if (Sheets[i].Name == sheet) return i;
        }
        return -1;
    }
}
