using System.Globalization;
using CsvHelper;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Terminal.Output;

/// <summary>A calculated workbook as a table with one line a cell, safe to open in a spreadsheet program.</summary>
internal static class CsvReport
{
    private static readonly string[] Header = ["sheet", "cell", "name", "kind", "type", "value", "unit", "si", "tolerance", "text", "fault", "cautions"];

    /// <summary>Writes the header and one line a cell.</summary>
    public static void Write(Selection selection, TextWriter output)
    {
        using CsvWriter csv = CsvWriter.Create(output, new CsvWriterOptions { NewLine = "\n" }, leaveOpen: true);
        csv.WriteRecord(Header);
        foreach (CellResult cell in selection.Cells) csv.WriteRecord(Fields(selection, cell));
    }

    /// <summary>
    /// Text that no spreadsheet program takes for a formula: with an apostrophe before it where its first visible character would begin one.
    /// Hidden characters are shown by number.
    /// </summary>
    public static string Harmless(string text)
    {
        string plain = PlainText.Of(text);
        string start = plain.TrimStart();
        return start.Length > 0 && start[0] is '=' or '+' or '-' or '@' or '＝' or '＋' or '－' or '＠' ? "'" + plain : plain;
    }

    private static string[] Fields(Selection selection, CellResult cell)
    {
        PlainCell plain = PlainCell.Of(selection, cell);
        return
        [
            Harmless(cell.Id.Sheet), cell.Id.Address.ToString(), Harmless(cell.Cell.Name ?? ""), plain.Kind, plain.Type ?? "",
            Value(cell, plain), Harmless(plain.Unit?.Symbol ?? ""), Number(plain.Si), Number(plain.Tolerance), Harmless(plain.Text ?? ""),
            cell.Fault is null ? "" : Harmless(OriginText.Of(cell.Fault)), Harmless(string.Join("; ", cell.Cautions.Select(OriginText.Of))),
        ];
    }

    private static string Value(CellResult cell, PlainCell plain) => cell.Value switch
    {
        TruthValue truth => truth.Value ? "true" : "false",
        NumberValue or QuantityValue => Number(plain.Unit is null ? plain.Si : plain.Unit.FromSi(plain.Si!.Value)),
        TextValue text => Harmless(text.Value),
        OptionValue option => Harmless(option.Value.ToString()),
        _ => "",
    };

    private static string Number(double? number) => number?.ToString("R", CultureInfo.InvariantCulture) ?? "";
}
