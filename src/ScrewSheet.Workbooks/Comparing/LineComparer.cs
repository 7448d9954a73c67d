using System.Collections.Immutable;
using System.Globalization;
using ScrewSheet.Workbooks.Editing;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Comparing;

/// <summary>Finds lines that are no cells and that an author changed.</summary>
internal static class LineComparer
{
    /// <summary>Of the head first, then sheet by sheet.</summary>
    public static ImmutableArray<LineChange> Changes(WorkbookPairs pairs)
    {
        IEnumerable<LineChange> gone = pairs.Before.Sheets.Where(sheet => pairs.Sheets.All(pair => pair.Before != sheet)).Select(sheet => new LineChange(sheet.Name, new TextChange("sheet", Heading(sheet), null)));
        return [.. Head(pairs.Before, pairs.After).Select(change => new LineChange(null, change)),
            .. pairs.After.Sheets.SelectMany(sheet => OfSheet(pairs, sheet).Select(change => new LineChange(sheet.Name, change))), .. gone];
    }

    private static IEnumerable<TextChange> Head(Workbook before, Workbook after)
    {
        (Head was, Head now) = (before.Head, after.Head);
        (string, string?, string?)[] values =
        [
            ("title", Text(was.Title), Text(now.Title)), ("author", Text(was.Author), Text(now.Author)), ("date", Text(was.Date), Text(now.Date)),
            ("units", was.Units.ToString(), now.Units.ToString()),
            ("seed", was.Seed?.ToString(CultureInfo.InvariantCulture), now.Seed?.ToString(CultureInfo.InvariantCulture)),
            ("results", was.ResultsOmitted ? "omitted" : null, now.ResultsOmitted ? "omitted" : null),
        ];
        IEnumerable<TextChange> heads = values.Where(value => value.Item2 != value.Item3).Select(value => new TextChange(value.Item1, value.Item2, value.Item3));
        return [.. heads, .. Keyed("function", Functions(before), Functions(after)), .. Bag("line", Others(before), Others(after)), .. Bag("remark", Remarks(before), Remarks(after))];
    }

    private static IEnumerable<TextChange> OfSheet(WorkbookPairs pairs, Sheet after)
    {
        if (pairs.Sheets.FirstOrDefault(pair => pair.After == after) is not { } pair) return [new TextChange("sheet", null, Heading(after))];
        Sheet before = pair.Before;
        string Forward(string word, string text) => pairs.IsPlain ? text : TableLines.Rewrite($"{word} {text}", name => pairs.Before.Find(name) is not null, said => Moved(pairs, before.Name, said))[(word.Length + 1)..];
        IEnumerable<TextChange> heading = Heading(before) == Heading(after) ? [] : [new TextChange("sheet", Heading(before), Heading(after))];
        IEnumerable<TextChange> widths = WidthsOf(before) == WidthsOf(after) ? [] : [new TextChange("widths", WidthsOf(before), WidthsOf(after))];
        return [.. heading, .. widths, .. Keyed("column", Columns(before), Columns(after)),
            .. Keyed("what-if", Tables(before, Forward), Tables(after, (_, text) => text)),
            .. Bag("line", Reserved(before, Forward), Reserved(after, (_, text) => text)), .. Bag("remark", Remarks(before), Remarks(after))];
    }

    /// <summary>What a word of a table's line reads in the later version, if it is the address of a cell that is there.</summary>
    private static string? Moved(WorkbookPairs pairs, string own, TableWord said) =>
        !CellAddress.TryParse(said.Name, out CellAddress address) || pairs.Forward(new CellId(said.Sheet ?? own, address)) is not { } to ? null : said.Sheet is null ? to.Address.ToString() : $"{to.Sheet}.{to.Address}";

    private static string? Text(string text) => text.Length == 0 ? null : text;

    private static string Heading(Sheet sheet) => SheetLine.WriteSheet(SheetHeading.Of(sheet))["sheet ".Length..];

    private static string? WidthsOf(Sheet sheet) => SheetLine.WriteWidths(SheetHeading.Of(sheet))?["widths ".Length..];

    private static Dictionary<string, string> Functions(Workbook workbook) =>
        workbook.Functions.ToDictionary(function => function.Name, function => FunctionLine.Write(function)["function ".Length..], StringComparer.Ordinal);

    private static Dictionary<string, string> Columns(Sheet sheet) => sheet.Columns.ToDictionary(column => column.Name, column => ColumnLine.Write(column)["column ".Length..], StringComparer.Ordinal);

    private static Dictionary<string, string> Tables(Sheet sheet, Func<string, string, string> moved)
    {
        Dictionary<string, string> tables = new(StringComparer.Ordinal);
        foreach (WhatIfBlock table in sheet.WhatIfs)
        {
            string anchor = moved("what-if", table.Anchor.ToString());
            IEnumerable<string> inner = [.. table.Vary.Select(text => $"vary {moved("vary", text.Text)}"), .. table.Show.Select(text => $"show {moved("show", text.Text)}")];
            tables.TryAdd(anchor, string.Join("; ", [table.Title is null ? anchor : $"{anchor} {QuotedText.Write(table.Title)}", .. inner]));
        }
        return tables;
    }

    private static IEnumerable<string> Reserved(Sheet sheet, Func<string, string, string> moved) =>
        sheet.Reserved.Where(line => line.Word != "reviewed").Select(line => $"{line.Word} {moved(line.Word, line.Text.Trim()[line.Word.Length..].Trim())}");

    private static IEnumerable<string> Others(Workbook workbook) => [.. workbook.Reserved.Select(line => line.Text.Trim()), .. workbook.BrokenLines.Select(line => string.Join(' ', line.Text.Split('\n', StringSplitOptions.TrimEntries)))];

    private static IEnumerable<string> Remarks(Workbook workbook) => Remarks(workbook.Source.Value?.HeadLines.Select(line => line.Line) ?? []);

    private static IEnumerable<string> Remarks(Sheet sheet)
    {
        IEnumerable<FileLine> lines = sheet.Cells.Values.SelectMany(cell => cell.Source.Value is { Leading.IsEmpty: false } source ? source.Leading : []);
        return Remarks(sheet.Source.Value is { } own ? [.. own.Opening, .. lines, .. own.Trailing] : lines);
    }

    private static IEnumerable<string> Remarks(IEnumerable<FileLine> lines) => lines.Where(line => line.IsRemark).Select(line => line.Text.Trim()[2..].Trim()).Where(text => text.Length > 0);

    private static IEnumerable<TextChange> Keyed(string what, Dictionary<string, string> before, Dictionary<string, string> after)
    {
        foreach ((string key, string now) in after)
        {
            string? was = before.GetValueOrDefault(key);
            if (was != now) yield return new TextChange(what, was, now);
        }
        foreach ((string key, string was) in before)
        {
            if (!after.ContainsKey(key)) yield return new TextChange(what, was, null);
        }
    }

    /// <summary>Texts that are more often in one than in the other.</summary>
    private static IEnumerable<TextChange> Bag(string what, IEnumerable<string> before, IEnumerable<string> after)
    {
        Dictionary<string, int> more = new(StringComparer.Ordinal);
        foreach (string text in before) more[text] = more.GetValueOrDefault(text) - 1;
        foreach (string text in after) more[text] = more.GetValueOrDefault(text) + 1;
        return more.Where(text => text.Value != 0).Select(text => text.Value > 0 ? new TextChange(what, null, text.Key) : new TextChange(what, text.Key, null));
    }
}
