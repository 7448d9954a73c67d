using ScrewSheet.Exports;
using ScrewSheet.Terminal.Grid.Keys;
using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Terminal.Output;

namespace ScrewSheet.Terminal.Grid.Screen;

/// <summary>Pages to read: the help, and what must be known before anything else.</summary>
internal static class Pages
{
    private static readonly string[] Cautions = [.. StandingCaution.Usual, StandingCaution.Sentence];

    private static readonly (string Keys, string What)[] Moving =
    [
        ("arrows, Page Up, Page Down", "move; with Shift they select; with Ctrl ten rows or five columns"),
        ("Home, End", "first and last filled column of the row; with Ctrl of the sheet"),
        ("< and >", "the sheet before and after"),
        ("Enter", "type into the cell, beginning with what stands there"),
        ("any other character", "type into the cell, beginning afresh"),
        ("Tab", "into the detail: choose a cell it uses, that uses it, or that caused its fault; Enter goes there; Page Down scrolls"),
        ("Delete", "clear what is selected"),
        ("Space", "all commands, each with a letter"),
        ("the mouse", "press a cell to go there, twice to type, drag to select; drag the right end of a column's head to widen it; press a sheet's name; turn the wheel"),
        ("what is not saved", "outlives a power cut or a killed program: it is offered when the workbook is opened next; saving, or leaving without it, removes it"),
        ("?", "this page"),
    ];

    private static readonly (string Keys, string What)[] Typing =
    [
        ("Enter", "put the line in and go down; after Tab, below where the row began"),
        ("Tab, Shift+Tab", "put the line in and type into the next cell to the right, to the left"),
        ("Down, Up", "choose from the list of what could stand here; Enter or Tab takes it"),
        ("Esc", "leave the cell as it was; Space and E bring the line back"),
        ("Ctrl+A, Ctrl+E, Ctrl+U", "to the beginning, to the end, empty the line"),
        ("Ctrl+Z, Ctrl+Y", "take back what was typed into the line, do it again"),
    ];

    private static readonly (string Keys, string What)[] Asking =
    [
        ("Ctrl+T, or Space and 9", "on a result, a check or a given: ask what if, backwards, how sure, what drives it; the steps say what they need"),
        ("T  what if", "a table of the result for other values of its givens, drawn on the sheet and worked out again when something changes"),
        ("B  backwards", "the value of a given for which the result is what it should be, or the check turns; W offers to write it"),
        ("U  how sure", "the spread of the result within the tolerances, by two methods"),
        ("D  what drives it", "each given moved alone over its interval, the strongest first"),
        ("Enter on a table", "change it, plot it, remove it; Space and P plots it at once"),
        ("Esc", "leaves any step, and stops what is being worked out; nothing is changed then"),
    ];

    private static readonly (string Keys, string What)[] Passing =
    [
        ("Space and 6  pass it on", "a handout (.html, .pdf or .md), the same with blanks for students, a workbook with live formulas (.xlsx), this sheet as a table (.csv): as on the screen, changes that are not saved included"),
        ("Space and 7  compare", "with the version last saved, or with another file: what the author changed, what follows from it, what differs in the library; Enter goes to the cell"),
        ("Space and 8  review", "mark the result, or those selected, as checked by you; take a mark away. A mark falls when anything its result depends on changes"),
        ("Enter on two versions", "where a merge left both: choose ours or theirs"),
    ];

    private static readonly (string Keys, string What)[] Forms =
    [
        ("peak [kN] = 8.5 kN ± 0.5 kN", "a given with name, shown unit, value and tolerance"),
        ("8.5 kN", "a given without a name"),
        ("moment [N·m] => peak * arm", "a result"),
        ("strong => moment < 500 N·m", "a check: it holds or fails"),
        ("anything else", "words"),
    ];

    /// <summary>The lines of a page in a width.</summary>
    public static IReadOnlyList<ScreenLine> Lines(PageName page, int width) => page == PageName.Cautions ? [.. CautionLines(width)] : [.. HelpLines(width)];

    private static IEnumerable<ScreenLine> HelpLines(int width)
    {
        foreach (ScreenLine line in Part("In the grid", Moving, width)) yield return line;
        foreach (ScreenLine line in Part("While typing", Typing, width)) yield return line;
        foreach (ScreenLine line in Part("What to type", Forms, width)) yield return line;
        foreach (ScreenLine line in Part("Asking about a cell", Asking, width)) yield return line;
        foreach (ScreenLine line in Part("Passing it on, comparing, reviewing", Passing, width)) yield return line;
        foreach (ScreenLine line in Part("Commands: Space, then the letter; some also with Ctrl", GridCommands.All.Select(KeysOf), width)) yield return line;
        foreach (ScreenLine line in Part("Marks before a cell", CellFace.Marks.Select(mark => (mark.Mark.ToString(), mark.Meaning)), width)) yield return line;
        foreach (ScreenLine line in Part("Marks behind a cell", CellFace.MarksBehind.Select(mark => (mark.Mark.ToString(), mark.Meaning)), width)) yield return line;
        yield return ScreenLine.Of(" Cautions", Ink.Strong);
        foreach (ScreenLine line in CautionLines(width)) yield return line;
    }

    private static (string, string) KeysOf(Command command) => (command.Ctrl is { } ctrl ? $"{Shown(command.Letter)}, Ctrl+{char.ToUpperInvariant(ctrl)}" : Shown(command.Letter), $"{command.Group.ToLowerInvariant()}: {command.Title}");

    private static string Shown(char letter) => char.ToUpperInvariant(letter).ToString();

    private static IEnumerable<ScreenLine> Part(string title, IEnumerable<(string Keys, string What)> rows, int width)
    {
        yield return ScreenLine.Of(Fit.Cut(" " + title, width), Ink.Strong);
        foreach ((string keys, string what) in rows)
        {
            bool beside = keys.Length <= 28 && width >= 64;
            if (!beside) yield return new LineBuilder(width).Add("   " + keys, Ink.Key).Line();
            IReadOnlyList<string> lines = Wrapping.Lines(what, Math.Max(12, beside ? width - 34 : width - 8));
            for (int i = 0; i < lines.Count; i++)
            {
                LineBuilder line = new(width);
                if (beside) line.Add("   " + Fit.Left(i == 0 ? keys : "", 29), Ink.Key);
                else line.Add("       ");
                yield return line.Add(lines[i]).Line();
            }
        }
        yield return ScreenLine.Of("");
    }

    private static IEnumerable<ScreenLine> CautionLines(int width)
    {
        foreach (string caution in Cautions)
        {
            foreach (string line in Wrapping.Hanging(" ▲ ", caution, width - 1)) yield return ScreenLine.Of(line, Ink.Careful);
        }
    }
}
