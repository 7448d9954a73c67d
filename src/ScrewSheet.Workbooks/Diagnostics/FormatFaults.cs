using System.Globalization;
using ScrewSheet.Workbooks.Format;

namespace ScrewSheet.Workbooks.Diagnostics;

/// <summary>The wording of faults in the file's lines and in the text of a cell; codes 1xxx. Those in a given's value are in <see cref="GivenFaults"/>.</summary>
internal static class FormatFaults
{
    /// <summary>The code of <see cref="HeadWord"/>, which refuses the file where other faults of the head do not.</summary>
    public const int HeadWordCode = 1003;

    /// <summary>The code of <see cref="TooMany"/>, which refuses the file too.</summary>
    public const int TooManyCode = 1019;

    [FaultCode(1001, "The file is refused: its first line is not `screwsheet 1`.")]
    public static Fault FirstLine() =>
        Of(1001, new Place(1, 1), "The first line does not read screwsheet 1, so this is no workbook.", "Open another file, or put the line back.");

    [FaultCode(1002, "The file is refused: it is written in a later version of the format.")]
    public static Fault LaterVersion(Place place, string version) =>
        Of(1002, place, $"The workbook is written in version {version} of the format, this program reads version 1.", "Open it with a newer program.");

    [FaultCode(HeadWordCode, "The file is refused: a line before the first sheet begins with an unknown word.")]
    public static Fault HeadWord(Place place, string word) =>
        Of(HeadWordCode, place, $"{word} is not known before the first sheet.", "Known are title, author, date, units, seed, results omitted, made with, correlate, reviewed, function and remarks; cells follow a sheet line.");

    [FaultCode(1004, "The file is refused: it is not UTF-8 text.")]
    public static Fault NotUtf8(Place place) =>
        Of(1004, place, "The file is not UTF-8 text at this place.", "Save it as UTF-8.");

    [FaultCode(1005, "The file is refused: it is larger than 32 MB.")]
    public static Fault TooLarge(long bytes) =>
        new(1005, FaultKind.Budget, $"The file has {Count(bytes)} bytes, at most {Count(33_554_432)} (32 MB) are read.", "Split the workbook.");

    [FaultCode(1006, "The file is refused: it has more than 500,000 cells.")]
    public static Fault TooManyCells(Place place) =>
        new(1006, FaultKind.Budget, $"A workbook takes at most {Count(500_000)} cells.", "Split the workbook.", place);

    [FaultCode(1007, "The file has more than 1,000,000 lines.")]
    public static Fault TooManyLines() =>
        new(1007, FaultKind.Budget, $"A workbook takes at most {Count(FormatBudget.Lines)} lines.", "Split the workbook.", new Place(1, 1));

    [FaultCode(1008, "More than 10,000 lines of the file cannot be read.")]
    public static Fault TooManyBroken(Place place) =>
        new(1008, FaultKind.Budget, $"More than {Count(FormatBudget.BrokenLines)} lines up to here cannot be read.", "Check that the file is a workbook.", place);

    [FaultCode(1009, "A line is longer than 262,144 characters.")]
    public static Fault TooLongLine(Place place) =>
        new(1009, FaultKind.Budget, $"The line is longer than {Count(FormatBudget.LineLength)} characters.", "Split it over several cells or lines.", place);

    [FaultCode(TooManyCode, "A workbook has more sheets, functions, what-if tables, plots or correlated pairs than it may.")]
    public static Fault TooMany(Place place, int most, string what) =>
        new(TooManyCode, FaultKind.Budget, $"A workbook takes at most {Count(most)} {what}.", "Split the workbook.", place);

    [FaultCode(1035, "A function has more than 64 parameters.")]
    public static Fault TooManyParameters(Place place) =>
        new(1035, FaultKind.Budget, $"A function takes at most {Count(FormatBudget.Parameters)} parameters.", "Split it over several functions.", place);

    [FaultCode(1036, "A what-if table has more than 64 lines.")]
    public static Fault TooManyTableLines(Place place) =>
        new(1036, FaultKind.Budget, $"A what-if table takes at most {Count(FormatBudget.TableLines)} lines.", "Split it over several tables.", place);

    [FaultCode(1037, "An entry with a sign in a bracket that is not closed is neither a given nor a note.")]
    public static Fault OpenEntry(Place place, string bracket) =>
        Of(1037, place, $"The bracket {bracket} opened here is not closed.", "Close it, or put quotes round a text.") with { IsOpen = true };

    [FaultCode(1010, "A head line holds something its word does not take; it is kept and has no effect.")]
    public static Fault HeadValue(Place place, string word, string expected) =>
        Of(1010, place, $"This {word} line cannot be read.", $"Write {expected}.");

    [FaultCode(1011, "A head word stands twice; the second line has no effect.")]
    public static Fault HeadTwice(Place place, string word, int firstLine) =>
        Of(1011, place, $"There is a {word} line already, in line {firstLine}.", "Remove one of the two.");

    [FaultCode(1012, "A function line cannot be read.")]
    public static Fault FunctionLine(Place place) =>
        Of(1012, place, "This function line cannot be read.", "Write it like function Torque HingeMoment(Force f, Length arm) => f * arm.");

    [FaultCode(1013, "A head word or a function stands after the first sheet.")]
    public static Fault HeadPlace(Place place, string word) =>
        Of(1013, place, $"A {word} line belongs before the first sheet.", "Move it up.");

    [FaultCode(1014, "A sheet line cannot be read; the cells beneath it are not read.")]
    public static Fault SheetLine(Place place) =>
        Of(1014, place, "This sheet line cannot be read, so the cells beneath it are not read.", "Write it like sheet Fall \"What the fall leaves\".");

    [FaultCode(1015, "A widths line cannot be read.")]
    public static Fault WidthsLine(Place place) =>
        Of(1015, place, "This widths line cannot be read.", "Write it like widths A 34, B 16; a width is 1 to 500.");

    [FaultCode(1016, "A what-if line cannot be read.")]
    public static Fault WhatIfLine(Place place) =>
        Of(1016, place, "This what-if line cannot be read.", "Write it like what-if D2 \"Moment by exposed length\".");

    [FaultCode(1017, "An indented line under `what-if` begins with neither `vary` nor `show`.")]
    public static Fault WhatIfInner(Place place) =>
        Of(1017, place, "Only vary and show lines stand under what-if.", "Begin it with vary or show, or take the blanks before it away.");

    [FaultCode(1018, "A widths line stands after the first cell of its sheet.")]
    public static Fault WidthsPlace(Place place) =>
        Of(1018, place, "A widths line belongs before the first cell of its sheet.", "Move it up.");

    [FaultCode(1020, "A line after a sheet line begins with neither an address nor a known word.")]
    public static Fault NoAddress(Place place, string word) =>
        Of(1020, place, $"The line begins with {word}, which is neither a cell address nor a known word.", "Begin it with an address such as B7, or with // for a remark.");

    [FaultCode(1021, "A cell address is out of range or written otherwise than `B7`.")]
    public static Fault BadAddress(Place place, string word, string remedy) =>
        Of(1021, place, $"{word} is no cell address.", remedy);

    [FaultCode(1022, "A cell has neither a text in quotes nor `=` nor `=>`.")]
    public static Fault NoContent(Place place) =>
        Of(1022, place, "The cell holds nothing.", "Write a text in quotes, = and a given, or => and an expression.");

    [FaultCode(1023, "A quote is opened and not closed in its line.")]
    public static Fault OpenQuote(Place place) =>
        Of(1023, place, "The quote opened here is not closed.", "Close it with \" before the end of the line.") with { IsOpen = true };

    [FaultCode(1024, "Something other than a remark follows a text in quotes.")]
    public static Fault AfterText(Place place) =>
        Of(1024, place, "Something follows the text.", "A note fills its cell: put the rest into a cell of its own. Begin a remark with //, write a quote inside a text as \\\".");

    [FaultCode(1025, "A backslash in a text is followed by something unknown.")]
    public static Fault BadEscape(Place place) =>
        Of(1025, place, "This backslash means nothing.", "Write \\\\ for a backslash; known are also \\\" \\n \\t and \\u with four digits.");

    [FaultCode(1026, "A line holds a control character.")]
    public static Fault ControlCharacter(Place place, int character) =>
        Of(1026, place, $"The line holds the control character U+{character.ToString("X4", CultureInfo.InvariantCulture)}.", "Remove it.");

    [FaultCode(1027, "More than a type and a name stand before the sign of a cell.")]
    public static Fault TooManyWords(Place place) =>
        Of(1027, place, "More than a type and a name stand before the sign.", "Put a text in quotes, or make the name one word.");

    [FaultCode(1028, "The square bracket of a cell is not closed.")]
    public static Fault OpenBracket(Place place) =>
        Of(1028, place, "The bracket opened here is not closed.", "Write it like [kN] or [kN, 1 decimal].") with { IsOpen = true };

    [FaultCode(1029, "The unit or digits in square brackets cannot be read.")]
    public static Fault Format(Place place, string problem) => new(1029, FaultKind.Unit, Results.VisibleText.Of(problem), null, place);

    [FaultCode(1030, "Something stands between the square bracket and the sign of a cell.")]
    public static Fault AfterBracket(Place place) =>
        Of(1030, place, "Something stands between the bracket and the sign.", "Put type and name before the bracket.");

    [FaultCode(1031, "Nothing follows `=`.")]
    public static Fault EmptyGiven(Place place) =>
        Of(1031, place, "Nothing follows =.", "Write a value such as 8.5 kN.");

    [FaultCode(1032, "Nothing follows `=>`.")]
    public static Fault EmptyExpression(Place place) =>
        Of(1032, place, "Nothing follows =>.", "Write an expression.");

    [FaultCode(1033, "Nothing follows `gives`.")]
    public static Fault EmptyKept(Place place) =>
        Of(1033, place, "Nothing follows gives.", "Remove the word; it is written again when results are kept.");

    [FaultCode(1034, "An expression begins with a sign of comparison instead of standing after `=>`.")]
    public static Fault EqualSigns(Place place) =>
        Of(1034, place, "The expression stands after ==.", "Write => before an expression.");

    [FaultCode(1050, "A column line cannot be read.")]
    public static Fault ColumnLine(Place place) =>
        Of(1050, place, "This column line cannot be read.", "Write it like column B force [kN], without brackets for pure numbers and for texts.");

    [FaultCode(1051, "Two column lines of a sheet name the same column or have the same name; the second has no effect.")]
    public static Fault ColumnTwice(Place place, string what, int firstLine) =>
        Of(1051, place, $"There is a column line for {what} already, in line {firstLine}.", "Remove or change one of the two.");

    private static Fault Of(int code, Place place, string message, string remedy) => new(code, FaultKind.Format, message, remedy, place);

    private static string Count(long count) => count.ToString("#,0", CultureInfo.InvariantCulture);
}
