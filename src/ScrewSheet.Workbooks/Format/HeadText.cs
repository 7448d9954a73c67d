using System.Collections.Immutable;
using System.Globalization;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Format;

/// <summary>The lines before the first sheet, brought into line with a head and functions that have changed.</summary>
internal static class HeadText
{
    /// <summary>The lines as they must be written: those whose meaning has not changed as they stand.</summary>
    public static WorkbookSource Current(Workbook workbook)
    {
        WorkbookSource source = workbook.Source.Value ?? New;
        bool same = source.Head == workbook.Head && source.Functions.SequenceEqual(workbook.Functions);
        if (same) return source;
        List<HeadLine> lines = [.. source.HeadLines];
        ChangeHead(lines, source, workbook.Head);
        ChangeFunctions(lines, source, workbook.Functions);
        return source with { HeadLines = [.. lines], Head = workbook.Head, Functions = workbook.Functions };
    }

    /// <summary>What a workbook made in memory starts from.</summary>
    private static WorkbookSource New { get; } =
        new(false, LineEnd.Lf, [new HeadLine(new FileLine("screwsheet 1", LineEnd.Lf), "", null)], new Head(), []);

    private static void ChangeHead(List<HeadLine> lines, WorkbookSource source, Head head)
    {
        int after = 0;
        foreach (string word in HeadReader.Words)
        {
            string? before = Line(word, source.Head), now = Line(word, head);
            int at = lines.FindIndex(line => line.Word == word && line.Function is null);
            if (at < 0 && before != now && now is not null) lines.Insert(after + 1, new HeadLine(new FileLine(now, source.NewLine), word, null));
            else if (at >= 0 && now is null) lines.RemoveAt(at);
            else if (at >= 0 && before != now) lines[at] = new HeadLine(new FileLine(now!, lines[at].Line.End), word, null);
            after = Math.Max(after, lines.FindLastIndex(line => line.Word == word && line.Function is null));
        }
    }

    private static void ChangeFunctions(List<HeadLine> lines, WorkbookSource source, ImmutableArray<FunctionDefinition> functions)
    {
        lines.RemoveAll(line => line.Function is not null && !functions.Contains(line.Function));
        foreach (FunctionDefinition function in functions)
        {
            if (source.Functions.Contains(function)) continue;
            int last = lines.FindLastIndex(line => line.Function is not null);
            if (last < 0)
            {
                last = lines.FindLastIndex(line => line.Line.Text.Length > 0) + 1;
                lines.Insert(last, new HeadLine(new FileLine("", source.NewLine), "", null));
            }
            lines.Insert(last + 1, new HeadLine(new FileLine(FunctionLine.Write(function), source.NewLine), "function", function));
        }
    }

    private static string? Line(string word, Head head) => word switch
    {
        "title" => Text(word, head.Title),
        "author" => Text(word, head.Author),
        "date" => Text(word, head.Date),
        "units" => $"units {head.Units}",
        "seed" when head.Seed is { } seed => $"seed {seed.ToString(CultureInfo.InvariantCulture)}",
        "results" when head.ResultsOmitted => "results omitted",
        "made" when head.MadeWith is { Length: > 0 } version => $"made with {CellTextWriter.OneLine(version)}",
        _ => null,
    };

    private static string? Text(string word, string value) => value.Length == 0 ? null : $"{word} {CellTextWriter.OneLine(value)}";
}
