namespace ScrewSheet.Workbooks.Tests.Format;

/// <summary>A text and the one fault it must give.</summary>
/// <param name="Code">The fault's code.</param>
/// <param name="Text">The whole file.</param>
/// <param name="Line">The fault's line.</param>
/// <param name="Column">The fault's column.</param>
/// <param name="Sentence">The whole sentence.</param>
public sealed record RefusalCase(int Code, string Text, int Line, int Column, string Sentence);

/// <summary>Every fault the format words, with its sentence and place.</summary>
public static class RefusalCases
{
    private const string Sheet = "screwsheet 1\nsheet A\n";

    /// <summary>Files that are not read at all.</summary>
    public static IReadOnlyList<RefusalCase> Refused { get; } =
    [
        new(1001, "", 1, 1, "The first line does not read screwsheet 1, so this is no workbook. Open another file, or put the line back."),
        new(1001, "screwsheet", 1, 1, "The first line does not read screwsheet 1, so this is no workbook. Open another file, or put the line back."),
        new(1001, "screwsheet 0\n", 1, 1, "The first line does not read screwsheet 1, so this is no workbook. Open another file, or put the line back."),
        new(1001, "\nscrewsheet 1\n", 1, 1, "The first line does not read screwsheet 1, so this is no workbook. Open another file, or put the line back."),
        new(1002, "screwsheet 2\nanything\n", 1, 1, "The workbook is written in version 2 of the format, this program reads version 1. Open it with a newer program."),
        new(1003, "screwsheet 1\ntitle T\ncolour red\n", 3, 1, "colour is not known before the first sheet. Known are title, author, date, units, seed, results omitted, made with, correlate, reviewed, function and remarks; cells follow a sheet line."),
        new(1003, "screwsheet 1\nA1 = 3\n", 2, 1, "A1 is not known before the first sheet. Known are title, author, date, units, seed, results omitted, made with, correlate, reviewed, function and remarks; cells follow a sheet line."),
    ];

    /// <summary>Lines in fault, in files that are read.</summary>
    public static IReadOnlyList<RefusalCase> Lines { get; } =
    [
        new(1010, "screwsheet 1\nunits metric\n", 2, 1, "This units line cannot be read. Write units SI or units US."),
        new(1010, "screwsheet 1\nseed -4\n", 2, 1, "This seed line cannot be read. Write seed and a whole number, like seed 7."),
        new(1010, "screwsheet 1\nresults kept\n", 2, 1, "This results line cannot be read. Write results omitted, or remove the line."),
        new(1010, "screwsheet 1\nmade by hand\n", 2, 1, "This made line cannot be read. Write made with and a version, like made with 0.3.0."),
        new(1011, "screwsheet 1\ntitle One\ntitle Two\n", 3, 1, "There is a title line already, in line 2. Remove one of the two."),
        new(1012, "screwsheet 1\nfunction Torque HingeMoment(Force f => f\n", 2, 9, "This function line cannot be read. Write it like function Torque HingeMoment(Force f, Length arm) => f * arm."),
        new(1013, Sheet + "title Late\n", 3, 1, "A title line belongs before the first sheet. Move it up."),
        new(1013, Sheet + "function Force Twice(Force f) => 2 * f\n", 3, 1, "A function line belongs before the first sheet. Move it up."),
        new(1050, Sheet + "column\n", 3, 7, "This column line cannot be read. Write it like column B force [kN], without brackets for pure numbers and for texts."),
        new(1050, Sheet + "column B\n", 3, 8, "This column line cannot be read. Write it like column B force [kN], without brackets for pure numbers and for texts."),
        new(1050, Sheet + "column B2 force\n", 3, 8, "This column line cannot be read. Write it like column B force [kN], without brackets for pure numbers and for texts."),
        new(1050, Sheet + "column b force\n", 3, 8, "This column line cannot be read. Write it like column B force [kN], without brackets for pure numbers and for texts."),
        new(1050, Sheet + "column B Force force\n", 3, 8, "This column line cannot be read. Write it like column B force [kN], without brackets for pure numbers and for texts."),
        new(1050, Sheet + "column B force [kN] more\n", 3, 21, "This column line cannot be read. Write it like column B force [kN], without brackets for pure numbers and for texts."),
        new(1051, Sheet + "column B force\ncolumn B other\n", 4, 8, "There is a column line for B already, in line 3. Remove or change one of the two."),
        new(1051, Sheet + "column B force\ncolumn C force\n", 4, 8, "There is a column line for force already, in line 3. Remove or change one of the two."),
        new(1028, Sheet + "column B force [kN\n", 3, 16, "The bracket opened here is not closed. Write it like [kN] or [kN, 1 decimal]."),
        new(2001, Sheet + "column B float\n", 3, 10, "float is a word of the language and cannot be a name. Write float_ or another word."),
        new(2003, Sheet + "column B Force [kN]\n", 3, 10, "The name of a cell begins with a small letter, Force does not. Write force."),
        new(1014, "screwsheet 1\nsheet\nA1 = 3\n", 2, 6, "This sheet line cannot be read, so the cells beneath it are not read. Write it like sheet Fall \"What the fall leaves\"."),
        new(1014, "screwsheet 1\nsheet Fall What\nA1 = 3\n", 2, 11, "This sheet line cannot be read, so the cells beneath it are not read. Write it like sheet Fall \"What the fall leaves\"."),
        new(1015, Sheet + "widths A wide\n", 3, 7, "This widths line cannot be read. Write it like widths A 34, B 16; a width is 1 to 500."),
        new(1016, Sheet + "what-if here\n", 3, 9, "This what-if line cannot be read. Write it like what-if D2 \"Moment by exposed length\"."),
        new(1017, Sheet + "what-if D2\n  vary a: 1, 2\n  draw a\n", 5, 3, "Only vary and show lines stand under what-if. Begin it with vary or show, or take the blanks before it away."),
        new(1040, Sheet + "what-if D2\n  vary a 1, 2\n", 4, 8, "This vary line cannot be read. Write it like vary exposed: 0 mm to 60 mm step 10 mm, or vary peak: 4 kN, 6 kN."),
        new(1041, Sheet + "what-if D2\n  vary a: 1 mm to 9 mm\n", 4, 11, "This range cannot be read. Write it like 0 mm to 60 mm step 10 mm, 1 kN to 9 kN over 8 steps, or 1 kN to 100 kN log over 4 steps."),
        new(1042, Sheet + "what-if D2\n  vary a: 1 mm to 9 mm over some steps\n", 4, 24, "A whole number of at least 1 and the word steps follow over. Write it like over 12 steps, which are 13 values."),
        new(1043, Sheet + "what-if D2\n  show a b\n", 4, 8, "This show line cannot be read. Write names of results with commas between, like show moment, strong."),
        new(1044, Sheet + "correlate a, b 2\n", 3, 1, "This correlate line cannot be read. Write two givens and a coefficient from -1 to 1, like correlate peak, exposed 0.86."),
        new(1018, Sheet + "A1 = 3\nwidths A 5\n", 4, 1, "A widths line belongs before the first cell of its sheet. Move it up."),
        new(1020, Sheet + "peak = 8.5 kN\n", 3, 1, "The line begins with peak, which is neither a cell address nor a known word. Begin it with an address such as B7, or with // for a remark."),
        new(1021, Sheet + "b7 = 3\n", 3, 1, "b7 is no cell address. Write B7."),
        new(1021, Sheet + "B07 = 3\n", 3, 1, "B07 is no cell address. Columns go from A to ZZZ, rows from 1 to 99999 without leading zeros."),
        new(1021, Sheet + "AAAA1 = 3\n", 3, 1, "AAAA1 is no cell address. Columns go from A to ZZZ, rows from 1 to 99999 without leading zeros."),
        new(1021, Sheet + "A100000 = 3\n", 3, 1, "A100000 is no cell address. Columns go from A to ZZZ, rows from 1 to 99999 without leading zeros."),
        new(1022, Sheet + "A1 peak\n", 3, 8, "The cell holds nothing. Write a text in quotes, = and a given, or => and an expression."),
        new(1023, Sheet + "A1 \"Peak force\n", 3, 4, "The quote opened here is not closed. Close it with \" before the end of the line."),
        new(1024, Sheet + "A1 \"Peak\" force\n", 3, 11, "Something follows the text. A note fills its cell: put the rest into a cell of its own. Begin a remark with //, write a quote inside a text as \\\"."),
        new(1025, Sheet + "A1 \"a\\qb\"\n", 3, 6, "This backslash means nothing. Write \\\\ for a backslash; known are also \\\" \\n \\t and \\u with four digits."),
        new(1026, Sheet + "A1 \"a\u001b[31mb\"\n", 3, 6, "The line holds the control character U+001B. Remove it."),
        new(1027, Sheet + "A1 the peak force = 3\n", 3, 4, "More than a type and a name stand before the sign. Put a text in quotes, or make the name one word."),
        new(1028, Sheet + "A1 peak [kN = 3 kN\n", 3, 9, "The bracket opened here is not closed. Write it like [kN] or [kN, 1 decimal]."),
        new(1029, Sheet + "A1 peak [kX] = 3 kN\n", 3, 10, "\"kX\" is no unit."),
        new(1029, Sheet + "A1 peak [kN, many] = 3 kN\n", 3, 10, "\"many\" does not say how many digits; write 3 digits, 1 decimal or 2 decimals, then down or up if wanted."),
        new(1030, Sheet + "A1 [kN] peak = 3 kN\n", 3, 9, "Something stands between the bracket and the sign. Put type and name before the bracket."),
        new(1031, Sheet + "A1 peak = // nothing yet\n", 3, 10, "Nothing follows =. Write a value such as 8.5 kN."),
        new(1032, Sheet + "A1 peak =>\n", 3, 11, "Nothing follows =>. Write an expression."),
        new(1033, Sheet + "A1 => 2 * 3 gives\n", 3, 13, "Nothing follows gives. Remove the word; it is written again when results are kept."),
        new(1034, Sheet + "A1 == 2 * 3\n", 3, 4, "The expression stands after ==. Write => before an expression."),
        new(1101, Sheet + "A1 = 40m\n", 3, 6, "\"40m\": a blank stands between number and unit; write 40 m."),
        new(1101, Sheet + "A1 = 8,5 kN\n", 3, 6, "\"8,5\": the decimal sign is a point; write 8.5."),
        new(1101, Sheet + "A1 = 007\n", 3, 6, "\"007\": a number has no leading zeros; write 7."),
        new(1101, Sheet + "A1 = .5 kN\n", 3, 6, "\".5\": a digit stands before the point; write 0.5."),
        new(1101, Sheet + "A1 = 1e999\n", 3, 6, "\"1e999\" is larger than a number can be."),
        new(1101, Sheet + "A1 = 3 kN ± 0,5 kN\n", 3, 13, "\"0,5\": the decimal sign is a point; write 0.5."),
        new(1102, Sheet + "A1 = 1/2 in\n", 3, 6, "A fraction cannot stand before a unit. Write 0.5 in."),
        new(1102, Sheet + "A1 = 1/3 in\n", 3, 6, "A fraction cannot stand before a unit. Write 0.333333 in."),
        new(1103, Sheet + "A1 = 1e308 MN\n", 3, 6, "The number is too large. Write it in a larger unit."),
        new(1104, Sheet + "A1 = 8.5 kX\n", 3, 10, "\"kX\" is no unit."),
        new(1104, Sheet + "A1 = 10 N/exposed\n", 3, 9, "\"exposed\" is no unit; put blanks round / to divide by a cell."),
        new(1110, Sheet + "A1 = 8.5 kN ± some\n", 3, 15, "What follows ± cannot be read. Write it like ± 0.5 kN or ± 5 %."),
        new(1110, Sheet + "A1 = 8.5 kN ±\n", 3, 14, "What follows ± cannot be read. Write it like ± 0.5 kN or ± 5 %."),
        new(1111, Sheet + "A1 = 8.5 kN ± 10 mm\n", 3, 15, "A length cannot be the tolerance of a force. Write ± a value in kN."),
        new(1111, Sheet + "A1 = 8.5 kN ± 0.5\n", 3, 15, "A number cannot be the tolerance of a force. Write ± a value in kN."),
        new(1111, Sheet + "A1 = 0.6 +- 1 kN\n", 3, 13, "A force cannot be the tolerance of a number. Write ± a number without a unit."),
        new(1111, Sheet + "A1 = 20 N·m ± 1 J\n", 3, 15, "An energy cannot be the tolerance of a torque. Write ± a value in N·m."),
        new(1111, Sheet + "A1 = 15 deg ± 0.1\n", 3, 15, "A number cannot be the tolerance of an angle. Write ± a value in °."),
        new(1112, Sheet + "A1 = -18 °C ± 5 %\n", 3, 15, "The tolerance of a temperature cannot be in %, since its zero is only a choice. Write it in K, like ± 2 K."),
        new(1112, Sheet + "A1 = 255 K ± 5 %\n", 3, 14, "The tolerance of a temperature cannot be in %, since its zero is only a choice. Write it in K, like ± 2 K."),
        new(1113, Sheet + "A1 = 8 kN ± -1 kN\n", 3, 13, "A tolerance cannot be below zero. Write it without a sign."),
        new(1114, Sheet + "A1 = 8 kN ± 1 kN square\n", 3, 18, "square means nothing after a tolerance. Known are rectangular, triangular, k=1 and dof with a number."),
        new(1115, Sheet + "A1 = \"words\" ± 1\n", 3, 16, "Only a number or a quantity can have a tolerance. Remove it."),
        new(1115, Sheet + "A1 = true within 0 to 1\n", 3, 18, "Only a number or a quantity can have limits. Remove it."),
        new(1116, Sheet + "A1 = 8 kN ± 1 kN dof many\n", 3, 22, "A number of at least 1 follows dof. Write it like dof 18."),
        new(1116, Sheet + "A1 = 8 kN ± 1 kN dof 0\n", 3, 22, "A number of at least 1 follows dof. Write it like dof 18."),
        new(1120, Sheet + "A1 = 40 mm within 120 mm\n", 3, 19, "What follows within cannot be read. Write it like within 0 mm to 120 mm."),
        new(1121, Sheet + "A1 = 40 mm within 0 to 120 mm\n", 3, 19, "A number cannot be a limit of a length. Write both limits in a unit of the given."),
        new(1121, Sheet + "A1 = 40 mm within 0 kN to 12 kN\n", 3, 19, "A force cannot be a limit of a length. Write both limits in a unit of the given."),
        new(1122, Sheet + "A1 = 40 mm within 120 mm to 0 mm\n", 3, 19, "The limit 120 mm is not below 0 mm. Write the lower limit first."),
        new(1123, Sheet + "A1 = 140 mm within 0 mm to 12 cm\n", 3, 6, "The value 140 mm is not within 0 mm to 12 cm. Change the value or the limits."),
        new(1124, Sheet + "A1 = 40 mm source me\n", 3, 19, "A text in quotes follows source. Write it like source \"Calibration 12\"."),
        new(2001, Sheet + "A1 float = 3\n", 3, 4, "float is a word of the language and cannot be a name. Write float_ or another word."),
        new(2002, Sheet + "A1 T1 = 3\n", 3, 4, "T1 is shaped like a cell address. Write T_1."),
        new(2002, Sheet + "A1 t1 = 3\n", 3, 4, "t1 is shaped like a cell address. Write t_1."),
        new(2003, Sheet + "A1 Peak = 3\n", 3, 4, "The name of a cell begins with a small letter, Peak does not. Write peak."),
        new(2004, "screwsheet 1\nsheet fall\nA1 = 3\n", 2, 7, "The name of a sheet begins with a capital letter, fall does not. Write Fall."),
        new(2004, "screwsheet 1\nfunction Force twice(Force f) => 2 * f\n", 2, 16, "The name of a function begins with a capital letter, twice does not. Write Twice."),
        new(2004, Sheet + "A1 force peak = 3 kN\n", 3, 4, "The name of a type begins with a capital letter, force does not. Write Force."),
        new(2005, Sheet + "A1 μr = 3\n", 3, 4, "μr mixes Latin and Greek letters. Use letters of one alphabet in a name."),
        new(2006, Sheet + "A1 la\u0308nge = 3\n", 3, 4, "la\u0308nge is written with composed characters. Write each letter and its accent as one character (Unicode form NFC)."),
        new(2006, Sheet + "A1 \u03B1\u1F71 = 3\n", 3, 4, "\u03B1\u1F71 is written with composed characters. Write each letter and its accent as one character (Unicode form NFC)."),
        new(2007, Sheet + "A1 пик = 3\n", 3, 4, "пик is no name. A name begins with a letter; Latin or Greek letters, digits and _ follow."),
        new(2007, Sheet + "A1 peak-force = 3\n", 3, 4, "peak-force is no name. A name begins with a letter; Latin or Greek letters, digits and _ follow."),
        new(2008, Sheet + "A1 \u00B5 = 3\n", 3, 4, "\u00B5 is written with the micro sign. Write μ with the Greek letter μ."),
        new(2012, Sheet + "A1 = 3\nsheet A\nA1 = 4\n", 4, 7, "There is a sheet A in line 2 already; the cells of this one are not read. Rename one of the two."),
        new(2013, "screwsheet 1\nfunction Force F(Force f) => f\nfunction Force F(Force g) => g\n", 3, 16, "There is a function F in line 2 already. Rename one of the two."),
    ];
}
