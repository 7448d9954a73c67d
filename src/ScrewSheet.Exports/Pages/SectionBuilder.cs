using ScrewSheet.Exports.Steps;
using ScrewSheet.Exports.Tables;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Exports.Pages;

/// <summary>Makes the section of a sheet: its rows from top to bottom, then its what-if tables and its plots.</summary>
internal sealed class SectionBuilder(HandoutRequest request, SourceList sources, List<CheckRow> checks)
{
    private const int LongestLead = 70;

    private readonly StepTools tools = request.Tools;
    private readonly Answers answers = new(request.Tools);
    private readonly GivenRows givens = new(request.Tools);
    private readonly StepBlocks steps = new(request.Tools, sources, checks);

    /// <summary>The section.</summary>
    public Section Of(Sheet sheet)
    {
        List<Block> blocks = [];
        HashSet<CellId> tabled = [];
        if (DataTable.Of(sheet, tools, tabled) is { } data) blocks.Add(data);
        List<GivenRow> rows = [];
        foreach (var row in tools.Calculation.Of(sheet).Where(cell => !tabled.Contains(cell.Id)).OrderBy(cell => cell.Id.Address).GroupBy(cell => cell.Id.Address.Row))
        {
            CellResult[] cells = [.. row];
            string label = string.Join(" · ", cells.Select(cell => cell.Cell.Content).OfType<NoteContent>().Select(note => note.Text));
            CellResult[] valued = [.. cells.Where(cell => cell.Cell.Content is not NoteContent)];
            foreach (CellResult given in valued.Where(cell => cell.Cell.Content is GivenContent)) rows.Add(givens.Of(given, label, sources));
            if (valued.All(cell => cell.Cell.Content is GivenContent) && valued.Length > 0) continue;
            Flush(blocks, rows);
            if (valued.Length == 0) blocks.Add(new ProseBlock(label, IsLead(label)));
            foreach (CellResult other in valued.Where(cell => cell.Cell.Content is not GivenContent)) blocks.Add(steps.Of(other, label));
        }
        Flush(blocks, rows);
        blocks.AddRange(Studies(sheet));
        return new Section(sheet.Name, sheet.Title ?? "", [.. blocks]);
    }

    private static bool IsLead(string text) => text.Length <= LongestLead && !text.EndsWith('.') && !text.EndsWith('!') && !text.EndsWith('?');

    private static void Flush(List<Block> blocks, List<GivenRow> rows)
    {
        if (rows.Count > 0) blocks.Add(new GivensBlock([.. rows]));
        rows.Clear();
    }

    private IEnumerable<Block> Studies(Sheet sheet)
    {
        ComputedTable[] tables = [.. request.Tables.Where(table => table.Sheet == sheet.Name)];
        foreach (ComputedTable table in tables)
            foreach (Block block in WhatIfBlocks.Of(table, answers)) yield return block;
        foreach (PlotLine line in PlotText.Of(sheet))
        {
            ComputedTable? table = tables.FirstOrDefault(each => each.Anchor == line.Table);
            yield return table is null ? new MissingBlock($"The plot at {line.At} is not drawn: no what-if table stands at {line.Table}.") : PlotBlocks.Of(line, table, tools.Blanks);
        }
    }
}
