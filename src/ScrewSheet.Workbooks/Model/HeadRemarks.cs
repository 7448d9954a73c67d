using System.Collections.Immutable;

namespace ScrewSheet.Workbooks.Model;

/// <summary>What an author says of the whole workbook: the remarks in its head.</summary>
public static class HeadRemarks
{
    /// <summary>The remarks before the first sheet, without their strokes; lines under each other make a paragraph.</summary>
    public static ImmutableArray<string> Of(Workbook workbook)
    {
        ArgumentNullException.ThrowIfNull(workbook);
        var paragraphs = ImmutableArray.CreateBuilder<string>();
        List<string> lines = [];
        foreach (HeadLine line in workbook.Source.Value?.HeadLines ?? [])
        {
            if (line.Line.IsRemark) lines.Add(line.Line.Text.TrimStart().TrimStart('/').Trim());
            else End();
        }
        End();
        return paragraphs.ToImmutable();

        void End()
        {
            string text = string.Join(' ', lines.Where(line => line.Length > 0));
            if (text.Length > 0) paragraphs.Add(text);
            lines.Clear();
        }
    }
}
