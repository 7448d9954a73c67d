using System.Globalization;
using ScrewSheet.Terminal.Output;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Terminal.Import;

/// <summary>Reads a table from text: finds separator and decimal sign, takes headings apart, and says of each column whether it measures something.</summary>
internal sealed class TableReader
{
    /// <summary>The rows a sheet has room for beneath the headings.</summary>
    public const int MostRows = CellAddress.LastRow - 1;

    private readonly ImportWishes wishes;
    private readonly char separator;
    private readonly RawRow heading;
    private readonly RawRow[] preamble;
    private readonly List<RawRow> rows;
    private readonly int width;

    private TableReader(string file, string text, ImportWishes wishes)
    {
        this.wishes = wishes;
        char? said = Separator.Said(text);
        int firstLine = said is null ? 1 : 2;
        string body = said is null ? text : Separator.Beneath(text);
        separator = said ?? Separator.Find(body, wishes.HeadingLine, firstLine);
        rows = [.. CsvRows.Read(body, separator, firstLine)];
        if (rows.Count == 0) throw new UserMistake($"{file} is empty. A table has a line of headings and rows beneath it.");
        preamble = [.. rows.TakeWhile(row => row.Line < wishes.HeadingLine)];
        if (preamble.Length == rows.Count) throw new UserMistake($"{file} has no line {wishes.HeadingLine}, or nothing from there on. Name the line its headings stand in.");
        heading = rows[preamble.Length];
        rows.RemoveRange(0, preamble.Length + 1);
        TakeRows(file);
        width = Math.Max(heading.Fields.Length, 1);
        while (width > 1 && heading.Fields[width - 1].Length == 0 && rows.TrueForAll(row => row.Fields.Length < width || row.Fields[width - 1].Length == 0)) width--;
        if (width > CellAddress.LastColumn - 1) throw new UserMistake($"{file} has more columns than a sheet.");
    }

    /// <summary>Reads the table.</summary>
    /// <param name="file">The file's name for sentences.</param>
    /// <param name="text">Its text.</param>
    /// <param name="wishes">What the user says.</param>
    /// <exception cref="UserMistake">It is no table.</exception>
    public static ImportedTable Read(string file, string text, ImportWishes wishes) => new TableReader(file, text, wishes).Read(file);

    private void TakeRows(string file)
    {
        if (rows.Count == 0) throw new UserMistake($"{file} has headings and no rows beneath them, so there is nothing to import.");
        int all = rows.Count, last = Math.Min(wishes.Last ?? all, all);
        if (wishes.First > all) throw new UserMistake($"{file} has {Count(all)} rows, so there is no row {Count(wishes.First)}.");
        if (last - wishes.First + 1 > MostRows)
            throw new UserMistake($"{file} has {Count(last - wishes.First + 1)} rows; a sheet has room for {Count(MostRows)}. Import it in parts, each onto a sheet of its own: --rows {wishes.First}-{wishes.First + MostRows - 1}, then --rows {wishes.First + MostRows}-{last}.");
        rows.RemoveRange(last, all - last);
        rows.RemoveRange(0, wishes.First - 1);
    }

    private ImportedTable Read(string file)
    {
        Heading[] headings = [.. Enumerable.Range(0, width).Select(i => Heading.Of(heading.Fields[i]))];
        RawRow[] whole = [.. rows.Where(HasItsFields)];
        if (whole.Length == 0) throw new UserMistake($"{file}: line {heading.Line} has {(width == 1 ? "1 heading" : $"{width} headings")}, and no row beneath has as many fields (line {rows[0].Line} has {rows[0].Fields.Length}). Where the headings stand further down, say --header LINE.");
        DecimalSigns signs = DecimalSigns.Of(file, headings, whole, separator, wishes.DecimalSign);
        HashSet<string> names = new(StringComparer.Ordinal);
        TableColumn[] columns = [.. headings.Select((each, i) => Column(file, each, i, whole, signs, names))];
        TableRow[] read = [.. rows.Select(row => Row(row, columns, signs.Sign))];
        if (Array.TrueForAll(read, row => row.Problem is not null)) throw new UserMistake($"{file}: none of its {Count(read.Length)} rows can be read. Line {read[0].Line}: {read[0].Problem}");
        return new ImportedTable { Columns = columns, Rows = read, Preamble = [.. preamble.Select(row => string.Join(" | ", row.Fields.Where(field => field.Length > 0)))], Separator = separator, DecimalSign = signs.Found, IsDoubtful = signs.IsDoubtful };
    }

    private bool HasItsFields(RawRow row) => row.Fields.Length >= width && row.Fields.Skip(width).All(field => field.Length == 0);

    private static TableColumn Column(string file, Heading heading, int index, RawRow[] whole, DecimalSigns signs, HashSet<string> names)
    {
        string letters = CellAddress.ColumnName(index + 1);
        string name = CellName.From(heading.Words, $"column_{letters}", names.Contains);
        names.Add(name);
        (bool number, RawRow? odd) = Kind(heading, index, whole, signs.Sign);
        if (heading.Problem is not null && number) throw new UserMistake($"{file}: the heading {Quoted(heading.Text)} names no unit known here. {heading.Problem} Write the unit as a workbook does, or [1] for pure numbers.");
        string? remark = odd is null ? null : $"texts, since line {odd.Line} says {Quoted(odd.Fields[index])}; where it measures something, put its unit into the heading, [1] for pure numbers";
        return new TableColumn(heading, name, number && heading.Problem is null, remark);
    }

    /// <summary>Numbers where the heading says so, or every value is one; else texts, with the first that is no number where most are.</summary>
    private static (bool IsNumber, RawRow? Odd) Kind(Heading heading, int index, RawRow[] whole, char sign)
    {
        if (heading.IsNumber) return (true, null);
        int numbers = 0, filled = 0;
        RawRow? odd = null;
        foreach (RawRow row in whole)
        {
            string field = row.Fields[index];
            if (field.Length == 0) continue;
            filled++;
            if (!Numeral.HasLeadingZero(field) && Numeral.Read(field, sign) is not null) numbers++;
            else odd ??= row;
        }
        return (filled > 0 && numbers == filled, numbers * 2 > filled && numbers < filled ? odd : null);
    }

    private TableRow Row(RawRow row, TableColumn[] columns, char sign)
    {
        if (!HasItsFields(row)) return new TableRow(row.Line, row.Fields, $"it has {row.Fields.Length} field{(row.Fields.Length == 1 ? "" : "s")}, the headings are {width}.");
        if (row.IsMisquoted) return new TableRow(row.Line, row.Fields, "something follows a closing quote.");
        string[] values = new string[width];
        for (int i = 0; i < width; i++)
        {
            string field = row.Fields[i];
            values[i] = columns[i].IsNumber && field.Length > 0 ? Numeral.Read(field, sign) ?? "" : field;
            if (values[i].Length == 0 && field.Length > 0) return new TableRow(row.Line, row.Fields, $"{Quoted(field)} in the column {columns[i].Name} is no number.");
            if (columns[i] is { IsNumber: true, Heading.Unit: { } unit } && Numeral.IsBeyond(values[i], unit)) return new TableRow(row.Line, row.Fields, $"{Quoted(field)} in the column {columns[i].Name} is too large for a number in {unit.Symbol}.");
        }
        return new TableRow(row.Line, values, null);
    }

    private static string Count(int count) => count.ToString("#,0", CultureInfo.InvariantCulture);

    private static string Quoted(string text) => $"\"{PlainText.Of(text.Length > 60 ? text[..60] + "…" : text)}\"";
}
