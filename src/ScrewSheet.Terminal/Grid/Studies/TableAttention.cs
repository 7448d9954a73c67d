using ScrewSheet.Studies.Tables;
using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Terminal.Output;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Terminal.Grid.Studies;

/// <summary>What the list of what needs attention says about what-if tables: those that cannot be drawn, and how many entries are in fault. A check that fails in an entry is what tables are made for, so it is not there.</summary>
internal static class TableAttention
{
    /// <summary>The items of all sheets.</summary>
    public static IEnumerable<Item> Of(Session session)
    {
        foreach (Sheet sheet in session.Workbook.Sheets.Where(sheet => !sheet.WhatIfs.IsEmpty))
        {
            foreach (DrawnTable table in SheetTables.Of(session with { SheetName = sheet.Name }, session.Tables).Tables)
            {
                CellId at = new(sheet.Name, table.Block.Anchor);
                if (table.Trouble is { } trouble) yield return new Item("fault", $"{PlainText.Of(at.ToString())}: {PlainText.Of(trouble)}", "", new GoTo(at), IsBad: true);
                foreach (WhatIfColumn column in table.Table?.Columns.Where(column => column.FaultCount > 0) ?? [])
                {
                    yield return new Item("fault", $"{PlainText.Of(at.ToString())}: the table has {StudyFigures.Count(column.FaultCount)} of {StudyFigures.Count(table.Table!.Scenarios)} entries of {PlainText.Of(column.Label)} in fault", "", new GoTo(at), IsBad: true);
                }
            }
        }
    }
}
