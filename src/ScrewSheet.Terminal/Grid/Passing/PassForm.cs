using System.Collections.Immutable;
using ScrewSheet.Exports.Pages;
using ScrewSheet.Exports.Steps;
using ScrewSheet.Exports.Xlsx;
using ScrewSheet.Terminal.Commands;
using ScrewSheet.Terminal.Files;
using ScrewSheet.Terminal.Handouts;
using ScrewSheet.Terminal.Output;

namespace ScrewSheet.Terminal.Grid.Passing;

/// <summary>Something a workbook can be passed on as.</summary>
/// <param name="Letter">The key that chooses it.</param>
/// <param name="Title">What it is, in a word or two.</param>
/// <param name="Meaning">What it is, as the menu says.</param>
/// <param name="Ending">How its file's name ends where nothing else is typed.</param>
/// <param name="Suffix">What the suggested name has besides that of the workbook.</param>
/// <param name="Hints">What may be answered to the question where to.</param>
/// <param name="Make">Makes it.</param>
internal sealed record PassForm(char Letter, string Title, string Meaning, string Ending, string Suffix, ImmutableArray<string> Hints, PassMaking Make)
{
    private static readonly ImmutableArray<string> Handouts = ["Its ending says what it becomes: .html for a browser and for paper, .pdf printed by a Chromium or Chrome on this machine, .md for a wiki."];

    /// <summary>All of them.</summary>
    public static ImmutableArray<PassForm> All { get; } =
    [
        new('h', "A handout", "a handout: every result worked out (.html, .pdf, .md)", ".html", "", Handouts, order => Handout(order, blanks: false)),
        new('b', "An exercise with blanks", "an exercise: the same with blanks to fill in", ".html", "-exercise", Handouts, order => Handout(order, blanks: true)),
        new('x', "A workbook with live formulas", "a workbook with live formulas (.xlsx)", ".xlsx", "", ["An .xlsx holds all sheets. Cautions in it are those of now; other givens typed into it bring no new ones."], Xlsx),
        new('c', "This sheet as a table of values", "this sheet as a table of values (.csv)", ".csv", "", ["A .csv holds the sheet you are on: its named columns as a table, or else a line for each cell."], Csv),
    ];

    private static (byte[], string) Handout(PassOrder order, bool blanks)
    {
        HandoutFile file = HandoutFile.At(order.Path);
        UnitChoice units = new(order.Calculation.Workbook.Head.Units, All: false);
        HandoutRequest request = HandoutCommand.Request(order.Calculator, order.Calculation, units, blanks, order.Stop, new PartOfWork(order.Progress, 0, 0.5));
        WatchedCells watched = new(order.Calculation.Cells.Count, new PartOfWork(order.Progress, 0.5, file.IsPrinted ? 0.8 : 1), order.Stop);
        return (file.Bytes(request with { Tools = request.Tools with { FormatOf = watched.Over(request.Tools.FormatOf) } }, order.Stop), "");
    }

    private static (byte[], string) Xlsx(PassOrder order)
    {
        Needs(order.Path, ".xlsx");
        XlsxRequest request = ExportCommand.Request(order.Calculator, order.Calculation, order.Stop, new PartOfWork(order.Progress, 0, 0.5));
        WatchedCells watched = new(order.Calculation.Cells.Count, new PartOfWork(order.Progress, 0.5, 1), order.Stop);
        (byte[] bytes, XlsxReport report) = ExportCommand.Xlsx(request with { FormatOf = watched.Over(request.FormatOf) });
        string others = report.Fixed.IsEmpty ? "" : " The first sheet lists the others and why.";
        return (bytes, ExportCommand.Live(report) + others + string.Concat(report.Left.Select(left => " " + PlainText.Of(left))));
    }

    private static (byte[], string) Csv(PassOrder order)
    {
        Needs(order.Path, ".csv");
        List<string> said = [];
        byte[] bytes = ExportCommand.Csv(order.Calculation, order.Calculation.Workbook.Find(order.Sheet)!, said);
        return (bytes, string.Join(' ', said));
    }

    private static void Needs(string path, string ending)
    {
        if (!Path.GetExtension(path).Equals(ending, StringComparison.OrdinalIgnoreCase)) throw new UserMistake($"{FileTrouble.Quoted(path)} has another ending than {ending}. End it with {ending}.");
    }
}
