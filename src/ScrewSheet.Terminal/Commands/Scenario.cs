using ScrewSheet.Terminal.Output;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Terminal.Commands;

/// <summary>A workbook computed with other givens than its file has.</summary>
internal static class Scenario
{
    /// <summary>Computes with every <c>NAME=VALUE</c> in place; a result whose value that changes is not compared with what the file kept.</summary>
    /// <exception cref="UserMistake">One cannot be read, or names no given.</exception>
    public static Calculation Calculate(Shell shell, Workbook workbook, IReadOnlyList<string> sets)
    {
        Workbook changed = sets.Aggregate(workbook, (current, set) => Set(current, set));
        ICalculator calculator = shell.Calculator();
        Calculation calculation = calculator.Calculate(changed);
        if (sets.Count == 0) return calculation;
        Calculation before = calculator.Calculate(workbook);
        return calculation with { Cells = calculation.Cells.With(calculation.Cells.Values.Where(cell => Moved(before, cell)).Select(cell => cell with { Kept = KeptState.NotKept })) };
    }

    private static bool Moved(Calculation before, CellResult cell) => cell.Kept != KeptState.NotKept && !Equals(before.Cells[cell.Id].Outcome, cell.Outcome);

    private static Workbook Set(Workbook workbook, string set)
    {
        int sign = set.IndexOf('=', StringComparison.Ordinal);
        if (sign <= 0) throw new UserMistake($"{PlainText.Of(set)} is no NAME=VALUE. Write for example --set \"peak=9 kN\".");
        string name = set[..sign].Trim();
        CellId id = CellNames.Find(workbook, name);
        Cell cell = workbook.Sheets.First(sheet => sheet.Name == id.Sheet).Cells[id.Address];
        if (cell.Content is not GivenContent old) throw new UserMistake($"{PlainText.Of(name)} is no given, so it cannot be set. Set the givens it is computed from.");
        GivenContent value = (GivenContent)Read("= " + set[(sign + 1)..].Trim(), set, id.Address).Content;
        Cell typed = cell with { Content = value with { Tolerance = value.Tolerance ?? old.Tolerance, Within = value.Within ?? old.Within, Source = value.Source } };
        return workbook.WithCell(id.Sheet, Read(CellText.WriteEntry(typed), set, id.Address));
    }

    // read again as a whole, so that the value is held against the range and the tolerance the cell keeps
    private static Cell Read(string entry, string set, CellAddress at) => CellText.ReadEntry(entry, at) switch
    {
        EntryRead { Cell: { Content: GivenContent } cell } => cell,
        EntryRefused refused => throw new UserMistake($"--set {PlainText.Of(set)}: {PlainText.Of(refused.Fault.Sentence)}"),
        _ => throw new UserMistake($"--set {PlainText.Of(set)}: the value is not a constant. Write for example --set \"peak=9 kN\"."),
    };
}
