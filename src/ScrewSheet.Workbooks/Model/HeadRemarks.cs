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
            string text = line.Line.IsRemark ? line.Line.Text.TrimStart().TrimStart('/').Trim() : "";
            // a remark that begins small after a full stop speaks of something else
            if (text.Length == 0 || (lines.Count > 0 && lines[^1].EndsWith('.') && char.IsLower(text[0]))) End();
            if (text.Length > 0) lines.Add(text);
        }
        End();
        return paragraphs.ToImmutable();

        void End()
        {
            if (lines.Count > 0) paragraphs.Add(string.Join(' ', lines));
            lines.Clear();
        }
    }
}
