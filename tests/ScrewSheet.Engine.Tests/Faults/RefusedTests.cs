using ScrewSheet.Engine.Tests.Support;
using ScrewSheet.Workbooks.Diagnostics;

namespace ScrewSheet.Engine.Tests.Faults;

/// <summary>What is refused, each with its whole sentence.</summary>
public sealed class RefusedTests
{
    [Theory]
    [InlineData("peek * 2", "There is no cell named peek here. Did you mean peak?")]
    [InlineData("load * 2", "There is no cell named load here. It is on another sheet: write Fall.load.")]
    [InlineData("Fall.nothing", "The sheet Fall has no cell and no column named nothing. Write one of its names or an address.")]
    [InlineData("Momemt(1 kN, 2 mm)", "There is no function Momemt. Did you mean Moment?")]
    [InlineData("Moment", "Moment is a function. Call it: Moment(…).")]
    [InlineData("Force", "Force is a type, not a value. Write it before the cell's name, or give a value with a unit.")]
    [InlineData("peak(2)", "peak is a value and cannot be called. Write * for a product.")]
    [InlineData("10 kM", "\"kM\" is no unit.")]
    [InlineData("A8 + 1 kN", "A8 is empty. Fill it or refer to another cell.")]
    [InlineData("A2 * 2", "A2 holds a note, not a value. Refer to another cell.")]
    [InlineData("ABCD1 + 1", "There is no cell named ABCD1 here.", true)]
    [InlineData("1 / 0", "This divides by zero. Check the value below the line.")]
    [InlineData("2 kN / (1 mm - 1 mm)", "This divides by zero. Check the value below the line.")]
    [InlineData("Sqrt(1 - 2)", "This is the root of a negative value. Check the sign of what stands in it.")]
    [InlineData("1e308 * 10", "This is larger than any number here. Check the values put in.")]
    [InlineData("1e308 * 10 > 5", "This is larger than any number here. Check the values put in.")]
    [InlineData("3 switch { 1 => 2 }", "No arm of the switch fits. Add an arm with _.")]
    [InlineData("(2 + 3", "The bracket ( is not closed. Add ) where it ends.")]
    [InlineData("2 + 3)", "The bracket ) closes nothing. Remove it or add its opening bracket.")]
    [InlineData("40m", "40m is no number. Write 40 m with a blank between number and unit.")]
    [InlineData("40.kM", ".kM is no unit.")]
    [InlineData("0x1F", "0x is no number. Write digits, perhaps a point and decimals, perhaps an exponent, such as 1.5e3.")]
    [InlineData("1_000", "1_ is no number. Write digits, perhaps a point and decimals, perhaps an exponent, such as 1.5e3.")]
    [InlineData("007", "007 begins with a zero that says nothing. Write 7.")]
    [InlineData("8,5 kN", "A number is written with a point. Write 8.5 kN.")]
    [InlineData("1/2 in", "1/2 in can be read two ways. Write 0.5 in or 1 / (2 in).")]
    [InlineData("(2+3) kN", "A unit follows a number only. Write * 1 kN to give the bracket a unit.")]
    [InlineData("10 N/exposed", "\"exposed\" is no unit; put blanks round / to divide by a cell.", true)]
    [InlineData("2^3", "^ is not part of the language of cells. Write Pow(x, 2) for a power, Root(x, 3) for a root.")]
    [InlineData("7 % 3", "Between 0.07 and 3 an operator is missing.")]
    [InlineData("peak % 3", "% is the unit percent; as a remainder it is not part of the language of cells. Write Remainder(a, b).")]
    [InlineData("1 & 2", "& is not part of the language of cells. Write && for and.")]
    [InlineData("~1", "~ is not part of the language of cells. Write ! for not.")]
    [InlineData("#load \"/etc/passwd\"", "A cell has no # lines. Remove the #.")]
    [InlineData("new Force()", "\"new\" is not part of the language of cells. Call a library function that gives what you need.")]
    [InlineData("typeof(Force)", "\"typeof\" is not part of the language of cells. Types are no values here.")]
    [InlineData("peak is Force", "\"is\" is not part of the language of cells. Use a comparison or a switch.")]
    [InlineData("peak?.Value", "?. is not part of the language of cells. Every value is there or in fault; write .")]
    [InlineData("peak[0]", "A bracket [ is not part of the language of cells. Use Series(first, last) and the functions over it.")]
    [InlineData("A1 = 3", "Assignment is not part of the language of cells. Write == to compare.")]
    [InlineData("1 < 2 < 3", "Two values are compared at a time. Join comparisons with &&.")]
    [InlineData("1; 2", "; as an end of statement is not part of the language of cells. A cell holds one expression.")]
    [InlineData("peak.Newtons", "What stands before the point has no member Newtons. See the list of functions for its members.", true)]
    [InlineData("\"abc\".ToUpper()", "A text has no member ToUpper. It has Length, Contains, StartsWith and EndsWith.")]
    [InlineData("\"abc\".Substring(1)", "A text has no member Substring. It has Length, Contains, StartsWith and EndsWith.")]
    [InlineData("\"abc\".Contains(\"b\", true)", "Contains takes one text.")]
    [InlineData("(1 + 2).ToString()", "What stands before the point has no member ToString. See the list of functions for its members.")]
    [InlineData("peak.GetHashCode()", "What stands before the point has no member GetHashCode. See the list of functions for its members.", true)]
    [InlineData("Moment(1 kN)", "Moment takes force, arm.")]
    [InlineData("Moment(1 kN, 2 mm, 3 mm)", "Moment takes force, arm.")]
    [InlineData("Moment(force: 1 kN, lever: 2 mm)", "Moment has no such parameter; it takes force, arm.")]
    [InlineData("x => x", "This is no value. Write an expression that gives a number, a quantity, a bool, a text or a library value.")]
    [InlineData("1 +", "The expression is not complete or has something too much here.")]
    [InlineData("true ? 1", "The expression is not complete or has something too much here.")]
    [InlineData("1 && true", "These values do not go together here. Compare numbers with numbers, give conditions where conditions are wanted, and keep texts apart.")]
    [InlineData("\"load \" + peak", "", true)]
    [InlineData("(1, 2)", "", true)]
    [InlineData("(1 kN, 2)", "", true)]
    [InlineData("'a'", "Texts are written \"…\" or $\"…\". Use one of these.")]
    [InlineData("@\"a\"", "Texts are written \"…\" or $\"…\". Use one of these.")]
    [InlineData("\"a\\q\"", "\\q is no escape in a text. Known are \\\\ \\\" \\n \\t and \\u with four hexadecimal digits.")]
    [InlineData("$\"{\"a\"}\"", "A hole of a composed text holds no text of its own. Put the text into a cell and name the cell.")]
    [InlineData("$\"{1\"", "A hole of a composed text holds no text of its own. Put the text into a cell and name the cell.")]
    [InlineData("$\"{peak:mm}\"", "The value shown in mm is a length; a force was given.")]
    [InlineData("peak × 2", "× is not written in an expression. Write * for a product.")]
    [InlineData("Scaled(1 kN, 2.5)", "Scaled: times must be a whole number; it is 2.5. Round it first.")]
    [InlineData("Moment(-1 kN, 2 mm)", "Moment: force must be at least 0 N; it is -1000 N.")]
    [InlineData("Stock.Deep.Disputed", "The sources differ; write the value of your edition as a given.")]
    [InlineData("Stock.Nothing", "", true)]
    [InlineData("Math.Cos(1)", "Math.Cos is not part of the language of cells. Known are Math.PI E Sqrt Cbrt Pow Exp Log Log10 Abs Min Max Floor Ceiling.")]
    [InlineData("Series(A1, A1, A1)", "A series is written Series(first, last) with two cells of one sheet.")]
    [InlineData("Series(A1, ZZZ99999)", "This series spans 1,827,781,722 cells. 200,000 are the most.")]
    [InlineData("Sum(Series(A1, A2))", "A2 in this series holds a note. A series has values of one kind; blanks are skipped.")]
    [InlineData("Sum(Series(A4, B5))", "The series A4 to B5 has no values. Fill a cell in it.")]
    public void ItIsRefusedWithASentence(string expression, string sentence, bool startsSo = false)
    {
        Book book = Book.Of("sheet Fall", "A1 load = 1 kN", "sheet S", "A1 peak = 2 kN", "A2 \"a note\"", "Z9 => " + expression);
        Fault? fault = book["Z9"].Fault;
        Assert.NotNull(fault);
        if (startsSo) Assert.StartsWith(sentence, fault.Sentence, StringComparison.Ordinal);
        else Assert.Equal(sentence, fault.Sentence);
        Assert.DoesNotContain("Quantity", fault.Sentence, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("1 + Sqrt(2 - 3) * 2", 11, 11)]
    [InlineData("2 kN + 1 / (3 - 3) * 1 kN", 14, 11)]
    [InlineData("1 + peek", 11, 4)]
    [InlineData("3 kN + 4 mm", 7, 11)]
    public void AFaultHasItsPlaceInTheLine(string expression, int column, int length)
    {
        Fault fault = Book.Of("A1 = 1", "A2 => " + expression)["A2"].Fault!;
        Assert.Equal(new Place(5, column, length), fault.Place);
    }

    [Fact]
    public void TheCompilersOwnIdIsKept() => Assert.Equal("CS7036", Book.Eval("Moment(1 kN)").Fault!.CompilerId);

    [Fact]
    public void APlaceIsRightInEveryCellOfAFilledColumn()
    {
        Book book = Book.Of("A9 = 1", "A10 = 0", "B9 => 2 / A9 + 1", "B10 => 2   /  A10 + 1");
        book["B9"].Gives(3, "number");
        Assert.Equal(new Place(7, 8, 10), book["B10"].Fault!.Place);
    }

    [Fact]
    public void FunctionsOfTheAuthorAreCheckedWhereTheyStand()
    {
        Book book = Book.Of("screwsheet 1", "function Force Bad(Length a) => a", "function Force Round(Force f) => Square(f)", "function Force Square(Force f) => Round(f)",
            "function Force Lost(Force f) => f * lost", "function Force Moment(Force f) => f", "function Farce Typo(Force f) => f", "", "sheet S", "A1 => Bad(1 mm)", "lost = 3");
        string[] sentences = [.. book.Calculation.Faults.Select(fault => fault.Sentence)];
        Assert.Contains("The function Bad is declared to give a force; its body gives a length. Change the type or the body.", sentences);
        Assert.Contains("These functions call each other in a circle: Round → Square → Round. Break the circle.", sentences);
        Assert.Contains("A function sees its parameters, other functions and the library, not the cell lost. Hand the cell over as an argument.", sentences);
        Assert.Contains("Moment is a function of the library; a function of the same name would hide it. Choose another name.", sentences);
        Assert.Contains("Farce is no type. Did you mean Force?", sentences);
        book["A1"].FaultsWith("The function Bad is in fault. Mend the function first.");
    }

    [Fact]
    public void ASheetThatWouldHideALibraryNameIsRefused() =>
        Assert.Contains("Stock is a name of the library; a sheet of the same name would hide it. Rename the sheet.", Book.Of("sheet Stock", "A1 = 1").Calculation.Faults.Select(fault => fault.Sentence));

    [Fact]
    public void AGivenRefersToNoCell() => Book.Of("A1 = 2 kN", "A2 = A1 * 2")["A2"].FaultsWith("A given refers to no cell. Write => for a result.");

    [Fact]
    public void AGivenMayBeAnyConstant()
    {
        Book book = Book.Of("A1 = 2 * 3 kN", "A2 = Stock.Plain", "A3 = Pull.Up", "A4 = true", "A5 = \"pull-out\"");
        book["A1"].Gives(6000, "Force");
        Assert.Equal("Bar", book["A2"].Type!.Name);
        book["A3"].Gives("Up");
        book["A4"].Gives("true");
        book["A5"].Gives("pull-out");
    }

    /// <summary>A remedy that trails off is none.</summary>
    [Theory]
    [InlineData("new typeof nameof sizeof default checked unchecked is as throw await async from out ref in params var dynamic null this base stackalloc delegate unsafe fixed and or not")]
    [InlineData("abstract bool break byte case catch char class const continue decimal do double else enum event explicit extern finally float for foreach goto if implicit int interface internal lock long")]
    [InlineData("namespace object operator override private protected public readonly return sbyte sealed short static string struct try uint ulong ushort using virtual void volatile while")]
    public void EveryRefusedWordIsRefusedInWholeSentences(string words)
    {
        foreach (string word in words.Split(' '))
            foreach (string form in (string[])["{0}", "1 + {0}", "{0} (1)", "1 {0} 2"])
                Assert.True(Book.Eval(form.Replace("{0}", word, StringComparison.Ordinal)).Fault is { Sentence: [.., '.'] }, $"{form} with {word}");
    }
}
