using ScrewSheet.Terminal.Output;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Terminal.Commands;

/// <summary>Finds the cell a NAME on the command line means: a name or address, after its sheet and a dot where more than one sheet has it.</summary>
internal static class CellNames
{
    /// <summary>The cell.</summary>
    /// <exception cref="UserMistake">None or more than one is meant.</exception>
    public static CellId Find(Workbook workbook, string name)
    {
        int dot = name.IndexOf('.', StringComparison.Ordinal);
        string shown = PlainText.Of(name);
        IEnumerable<Sheet> sheets = dot < 0 ? workbook.Sheets : [Sheet(workbook, name[..dot])];
        CellId[] found = [.. sheets.SelectMany(sheet => On(sheet, name[(dot + 1)..]))];
        return found.Length switch
        {
            1 => found[0],
            0 => throw new UserMistake($"No cell is called {shown}. Its name or address stands in the first columns of what run prints."),
            _ => throw new UserMistake($"{shown} could be {string.Join(" or ", found.Select(id => PlainText.Of(id.ToString())))}. Write the sheet's name and a dot before it."),
        };
    }

    /// <summary>The sheet of that name.</summary>
    /// <exception cref="UserMistake">There is none.</exception>
    public static Sheet Sheet(Workbook workbook, string name) =>
        workbook.Sheets.FirstOrDefault(sheet => sheet.Name == name)
        ?? throw new UserMistake($"No sheet is called {PlainText.Of(name)}. There are: {string.Join(", ", workbook.Sheets.Select(sheet => PlainText.Of(sheet.Name)))}.");

    private static IEnumerable<CellId> On(Sheet sheet, string name)
    {
        if (CellAddress.TryParse(name, out CellAddress address) && sheet.Cells.ContainsKey(address)) return [new CellId(sheet.Name, address)];
        return sheet.CellsInOrder.Where(cell => cell.Name == name).Select(cell => new CellId(sheet.Name, cell.Address));
    }
}
