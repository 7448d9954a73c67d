using System.Collections.Immutable;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Format;

/// <summary>The lines of a sheet that belong to no cell, brought into line with a heading that has changed.</summary>
internal static class SheetText
{
    /// <summary>The lines as they must be written.</summary>
    public static SheetSource Current(Sheet sheet, LineEnd newLine)
    {
        var now = SheetHeading.Of(sheet);
        if (sheet.Source.Value is not { } source) return New(sheet, now, newLine);
        return source.Said == now ? source : source with { Opening = Change(source, now), Said = now };
    }

    /// <summary>The lines from the first sheet line on that could not be read and stand behind this sheet's own.</summary>
    public static ImmutableArray<FileLine> UnreadSheets(Sheet sheet)
    {
        if (sheet.Source.Value is not { } source) return [];
        for (int i = 0; i < source.Trailing.Length; i++)
        {
            if (Begins(source.Trailing[i], "sheet")) return source.Trailing[i..];
        }
        return [];
    }

    private static SheetSource New(Sheet sheet, SheetHeading heading, LineEnd newLine)
    {
        List<string> opening = ["", SheetLine.WriteSheet(heading)];
        if (SheetLine.WriteWidths(heading) is { } widths) opening.Add(widths);
        opening.AddRange(sheet.Columns.Select(ColumnLine.Write));
        opening.Add("");
        IEnumerable<string> tables = sheet.WhatIfs.SelectMany(WhatIf);
        return new SheetSource(Lines(opening, newLine), Lines(tables, newLine), heading, []);
    }

    /// <summary>The lines of a table, a blank one first.</summary>
    public static IEnumerable<string> WhatIf(WhatIfBlock block)
    {
        yield return "";
        yield return block.Title is null ? $"what-if {block.Anchor}" : $"what-if {block.Anchor} {QuotedText.Write(block.Title)}";
        foreach (PlacedText vary in block.Vary) yield return $"  vary {CellTextWriter.OneLine(vary.Text)}";
        foreach (PlacedText show in block.Show) yield return $"  show {CellTextWriter.OneLine(show.Text)}";
    }

    private static ImmutableArray<FileLine> Lines(IEnumerable<string> texts, LineEnd newLine) => [.. texts.Select(text => new FileLine(text, newLine))];

    private static ImmutableArray<FileLine> Change(SheetSource source, SheetHeading now)
    {
        List<FileLine> lines = [.. source.Opening];
        int sheet = lines.FindIndex(line => Begins(line, "sheet"));
        if (source.Said.Name != now.Name || source.Said.Title != now.Title) lines[sheet] = Replace(lines[sheet], SheetLine.WriteSheet(now));
        if (source.Said.Widths == now.Widths) return [.. lines];
        int widths = lines.FindIndex(line => Begins(line, "widths"));
        FileLine replaced = widths < 0 ? new FileLine("", lines[sheet].End) : lines[widths];
        lines.RemoveAll(line => Begins(line, "widths"));
        if (SheetLine.WriteWidths(now) is { } text) lines.Insert(widths < 0 ? sheet + 1 : widths, Replace(replaced, text));
        return [.. lines];
    }

    /// <summary>The new text in place of the old, with the remark the line had.</summary>
    public static FileLine Replace(FileLine line, string text)
    {
        int remark = LineScan.Of(line.Text, 0).Remark;
        return line with { Text = remark < line.Text.Length ? $"{text} {line.Text[remark..]}" : text };
    }

    private static bool Begins(FileLine line, string word)
    {
        string text = line.Text.TrimStart(' ', '\t');
        return text.StartsWith(word, StringComparison.Ordinal) && (text.Length == word.Length || Blank.Is(text[word.Length]));
    }
}
