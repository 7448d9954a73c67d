using System.Collections.Immutable;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Format;

/// <summary>Reads <c>plot</c> lines.</summary>
public static class PlotText
{
    /// <summary>The plots of a sheet, in the order of the file; a line that cannot be read is among the workbook's faults and not here.</summary>
    public static ImmutableArray<PlotLine> Of(Sheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        var plots = ImmutableArray.CreateBuilder<PlotLine>();
        foreach (ReservedLine line in sheet.Reserved)
            if (line.Word == "plot" && Read(new LineText(line.Text, line.Place.Line), line.Place.Column - 1, out _) is { } plot) plots.Add(plot);
        return plots.ToImmutable();
    }

    /// <summary>The plot of a line that begins with the word at <paramref name="start"/>; null with a fault.</summary>
    internal static PlotLine? Read(LineText line, int start, out Fault? fault)
    {
        int end = line.TrimEnd(start, LineScan.Of(line.Text, start).Remark), at = line.SkipBlanks(line.WordEnd(start, end), end), atEnd = line.WordEnd(at, end);
        int title = line.SkipBlanks(atEnd, end), titleEnd = title < end && line.Text[title] == '"' ? LineScan.CloseOf(line.Text, title) + 1 : title;
        int of = line.SkipBlanks(Math.Clamp(titleEnd, title, end), end), ofEnd = line.WordEnd(of, end), table = line.SkipBlanks(ofEnd, end);
        string? words = SheetLine.ReadTitle(line, title, line.TrimEnd(title, of), out bool readable, out Fault? titleFault);
        bool read = CellAddress.TryParse(line.Span(at, atEnd), out CellAddress anchor) & CellAddress.TryParse(line.Span(table, end), out CellAddress block);
        fault = CellLine.LineFault(line) ?? titleFault;
        if (fault is null && (!read || !readable || line.Piece(of, ofEnd) != "of")) fault = StudyTextFaults.PlotLine(line.At(start, end));
        return fault is null ? new PlotLine(anchor, words, block, line.At(start, end)) : null;
    }
}
