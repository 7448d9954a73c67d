using System.Globalization;
using ScrewSheet.Engine.Tests.Support;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Engine.Tests.Language;

public sealed class ColumnTests
{
    private static Book Batch(params string[] more) => Book.Of(
    [
        "sheet Tests", "column B force [kN]", "column C mode", "column D depth [mm]", "column E design",
        "B1 \"Force [kN]\"", "C1 \"Mode\"", "D1 \"Depth\"",
        "B2 = 12 kN", "C2 = \"pull-out\"", "D2 = 100 mm", "E2 = 1",
        "B3 = 14 kN", "C3 = \"shear\"", "D3 = 120 mm", "E3 = 2",
        "C4 = \"pull-out\"", "D4 = 130 mm", "E4 = 1",
        "B5 = 16000 N", "D5 = 140 mm", "E5 = 2",
        "B6 = 18 kN", "C6 = \"pull-out\"", "D6 = 150 mm", "E6 = 2",
        "sheet S", .. more,
    ]);

    private static CellResult Eval(string expression, params string[] more) => Batch([.. more, "Z9 => " + expression])["Z9"];

    private static double[] Si(CellResult result) => [.. Assert.IsType<SeriesValue>(result.Value).Value.Si];

    [Fact]
    public void AColumnIsASeriesByNameInItsUnit()
    {
        CellResult force = Eval("Tests.force");
        Assert.Equal("Series<Force>", force.Type!.Name);
        Assert.Equal([12000, 14000, 16000, 18000], Si(force));
        Eval("Sum(Tests.force)").Gives(60000, "Force");
        Eval("Tests.force.Count").Gives(4, "number");
        Eval("Count(Tests.mode)").Gives(4, "number");
        Assert.Equal("pull-out shear pull-out pull-out", string.Join(' ', Assert.IsType<TextSeriesValue>(Eval("Tests.mode").Value).Value.Texts));
    }

    [Fact]
    public void OnItsOwnSheetAColumnNeedsNoSheet()
    {
        Book book = Book.Of("column B force", "B2 = 1", "B3 = 3", "D1 => Sum(force)");
        book["D1"].Gives(4, "number");
        Assert.Equal(new CellReference(Book.Id("B1"), Book.Id("B99999")) { Column = "force" }, Assert.Single(book["D1"].References));
    }

    [Theory]
    [InlineData("Tests.force.Where(Tests.mode, \"pull-out\")", "12000 18000")] // row 4 has no force, row 5 no mode
    [InlineData("Tests.force.Where(Tests.mode, \"shear\", \"pull-out\")", "12000 14000 18000")]
    [InlineData("Tests.force.WhereNot(Tests.mode, \"pull-out\")", "14000")]
    [InlineData("Tests.force.Where(Tests.design, 2)", "14000 16000 18000")]
    [InlineData("Tests.force.WhereNot(Tests.design, 2)", "12000")]
    [InlineData("Tests.force.Where(Tests.depth, d => d > 120 mm)", "16000 18000")]
    [InlineData("Tests.force.Where(Tests.mode, m => m.StartsWith(\"pull\"))", "12000 18000")]
    [InlineData("Tests.force.Where(Tests.mode, \"pull-out\").Where(Tests.design, 2)", "18000")]
    [InlineData("Where(Tests.force, f => f > 15 kN).Where(Tests.mode, \"pull-out\")", "18000")]
    [InlineData("Map(Tests.force, f => f * 2).Where(Tests.mode, \"shear\")", "28000")]
    [InlineData("Tests.depth.Beside(Tests.force)", "0.1 0.12 0.14 0.15")]
    [InlineData("Tests.depth.Beside(Tests.force).Beside(Tests.mode)", "0.1 0.12 0.15")]
    [InlineData("Tests.force.Where(Tests.mode, C1)", "14000", "C1 = \"shear\"")]
    [InlineData("Tests.force.Where(by: Tests.mode, \"shear\")", "14000")]
    public void RowsArePickedByAnotherColumnWithoutShifting(string expression, string values, params string[] more) =>
        Assert.Equal(values, string.Join(' ', Si(Eval(expression, more)).Select(si => si.ToString("0.######", CultureInfo.InvariantCulture))));

    [Theory]
    [InlineData("Any(Tests.mode, m => m == \"shear\")", "holds")]
    [InlineData("All(Tests.mode, m => m.Length > 5)", "fails")]
    [InlineData("Count(Where(Tests.mode, m => m == \"pull-out\")) == 3", "holds")]
    public void LambdasReadTexts(string expression, string said) => Eval(expression).Gives(said);

    [Theory]
    [InlineData("Sum(Tests.force.Where(Tests.mode, \"pullout\"))", "No row says \"pullout\". Did you mean \"pull-out\"?")]
    [InlineData("Sum(Tests.force.WhereNot(Tests.mode, \"weld\"))", "No row says \"weld\". The rows say \"pull-out\", \"shear\".")]
    [InlineData("Tests.force.Where(Tests.mode)", "Where needs a value that rows are picked by. Write it like force.Where(mode, \"pull-out\").")]
    [InlineData("Tests.force.Where(Tests.depth, 100 mm)", "Where picks rows by texts or pure numbers; two quantities are never exactly equal. Write a lambda: force.Where(depth, d => d > 100 mm).")]
    [InlineData("Tests.force.Where(Tests.mode, 3)", "What the rows are compared with is a text; a number was given.")]
    [InlineData("Tests.force.Beside(Values(1, 2))", "There are 4 values and 2 to pick them by, and they do not stand in rows of one sheet. Use columns of one sheet, or series of one length.")]
    [InlineData("Sum(Tests.mode)", "A number is wanted here; a text was given. Divide by a unit to get a number.")]
    [InlineData("Tests.forse", "The sheet Tests has no cell and no column named forse. Did you mean force?")]
    [InlineData("Tests.Force", "The sheet Tests has no cell and no column named Force. Did you mean force?")]
    [InlineData("Tests.stiffness", "The sheet Tests has no cell and no column named stiffness. Write one of its names or an address.")]
    [InlineData("force", "There is no cell named force here. It is on another sheet: write Tests.force.")]
    [InlineData("Tests.force + 1 kN", "These values do not go together here. Compare numbers with numbers, give conditions where conditions are wanted, and keep texts apart.")]
    public void WhatCannotBePickedIsSaid(string expression, string sentence) => Eval(expression).FaultsWith(sentence);

    [Theory]
    [InlineData("B4 \"no reading\"", "Tests.B4 in the column force holds a note. Notes stand above the first value; leave a cell empty where a value is missing.")]
    [InlineData("B4 = 3 mm", "Tests.B4 in the column force is a length; the column is in kN. Give the value a unit such as kN, or change the column's line.")]
    [InlineData("B4 = 3", "Tests.B4 in the column force is a number; the column is in kN. Give the value a unit such as kN, or change the column's line.")]
    [InlineData("B4 = \"lost\"", "Tests.B4 in the column force is a text; the column is in kN. Give the value a unit such as kN, or change the column's line.")]
    [InlineData("B4 = true", "Tests.B4 is a yes-or-no value; a series has numbers, quantities or texts.")]
    [InlineData("B4 => 1 / 0", "It waits for Tests.B4, which is in fault.")]
    public void WhatDoesNotBelongInAColumnNamesTheCell(string cell, string sentence)
    {
        Book book = Book.Of("sheet Tests", "column B force [kN]", "B1 \"Force\"", "B2 = 12 kN", cell, "sheet S", "A1 => Sum(Tests.force)");
        book["A1"].FaultsWith(sentence);
    }

    [Fact]
    public void AnEmptyColumnIsAFault() =>
        Book.Of("sheet Tests", "column B force [kN]", "B1 \"Force\"", "sheet S", "A1 => Sum(Tests.force)")["A1"].FaultsWith("The column force has no values. Fill a cell beneath its heading.");

    [Fact]
    public void EmptyRowsAreSkippedAndCounted()
    {
        Assert.Equal(["The column Tests.force skips 1 empty row among its values: 4."], Eval("Sum(Tests.force)").Cautions.Select(caution => caution.Message));
        Assert.Empty(Eval("Sum(Tests.depth)").Cautions);
    }

    [Fact]
    public void WhoeverReadsAColumnFollowsIt()
    {
        Book book = Batch("A1 => Sum(Tests.force)", "A2 => Sum(Tests.force.Where(Tests.mode, \"shear\"))", "A3 => Sum(Tests.depth)");
        book.Type("Tests.B7", "20 kN")["A1"].Gives(80000, "Force");
        Assert.Equal("A1 A2", book.Ran);
        book.Type("Tests.C7", "\"shear\"");
        book["A2"].FaultsWith("Tests.C7 in the column mode holds a note. Notes stand above the first value; leave a cell empty where a value is missing.");
        book.Type("Tests.C7", "= \"shear\"")["A2"].Gives(34000, "Force");
        Assert.Equal("A2", book.Ran);
        book.Clear("Tests.B3")["A2"].Gives(20000, "Force");
        book.Type("Tests.B1", "\"Kraft\"");
        Assert.Equal("", book.Ran);
        book.Type("Tests.B1", "2 kN")["A1"].Gives(68000, "Force");
    }

    [Fact]
    public void StudiesMakeTheSameSeries()
    {
        Book book = Batch("A1 => Tests.force", "A2 => Tests.mode");
        SeriesValue force = Assert.IsType<SeriesValue>(book["A1"].Value);
        CellValue again = RunSeries.Of(Assert.Single(book["A1"].References), new[] { "Tests.B2", "Tests.B3", "Tests.B5", "Tests.B6" }.Select(cell => (Book.Id(cell), book[cell].Value!)));
        Assert.Equal("2 3 5 6", string.Join(' ', Assert.IsType<SeriesValue>(again).Value.Rows));
        Assert.Equal(force.Type, again.Type);
        Assert.True(Si(book["A1"]).SequenceEqual(((SeriesValue)again).Value.Si));
        Assert.IsType<TextSeriesValue>(RunSeries.Of(Assert.Single(book["A2"].References), [(Book.Id("Tests.C2"), book["Tests.C2"].Value!)]));
        Assert.Throws<ArgumentException>(() => RunSeries.Of(Assert.Single(book["A1"].References), []));
        Assert.Throws<ArgumentException>(() => RunSeries.Of(Assert.Single(book["A1"].References), [(Book.Id("Tests.B2"), book["Tests.B2"].Value!), (Book.Id("Tests.C2"), book["Tests.C2"].Value!)]));
    }

    [Fact]
    public void ACellOfTheColumnThatReadsItWaitsForItself() =>
        Book.Of("column B force", "B2 = 1", "B3 => Sum(force)")["B3"].FaultsWith("These cells wait for each other: S.B3 → S.B3. Break the circle.");

    [Fact]
    public void AnIncrementalCalculationIsAFullOne()
    {
        Book book = Batch("A1 => Sum(Tests.force)", "A2 => Count(Tests.mode)", "A3 => Tests.depth.Beside(Tests.force).Count");
        string[] entries = ["3 kN", "\"note\"", "= \"x\"", "5 mm", "1"];
        Random random = new(7);
        for (int i = 0; i < 200; i++)
        {
            string cell = $"Tests.{"BCD"[random.Next(3)]}{random.Next(1, 9)}";
            if (random.Next(4) == 0) book.Clear(cell);
            else book.Type(cell, entries[random.Next(entries.Length)]);
            Calculation full = new Calculator(Book.Library).Calculate(book.Workbook);
            foreach (string result in (string[])["A1", "A2", "A3"])
            {
                CellResult now = book[result], fresh = full.Cells[Book.Id(result)];
                Assert.Equal(fresh.Fault, now.Fault);
                Assert.Equal(fresh.Value, now.Value);
                Assert.True(fresh.Cautions.SequenceEqual(now.Cautions));
            }
        }
    }
}
