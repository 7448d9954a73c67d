using ScrewSheet.Engine.Tests.Support;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Engine.Tests.Graph;

/// <summary>A workbook of many cells is resolved on several threads: every row gives what it gives alone.</summary>
public sealed class ManyCellsTests
{
    private const int Rows = 300;

    [Fact]
    public void EveryRow_GivesWhatItGivesAlone()
    {
        Book all = Book.Of([.. Enumerable.Range(1, Rows).SelectMany(Row)]);
        for (int row = 1; row <= Rows; row += 37)
        {
            Book alone = Book.Of([.. Row(row)]);
            foreach ((_, CellResult expected) in alone.Calculation.Cells) Assert.Equal(Told(expected), Told(all.Calculation.Cells[expected.Id]));
        }
        all.Calculator.CheckInvariants();
    }

    [Fact]
    public void AnEditAfterwards_ReachesItsReaders()
    {
        Book book = Book.Of([.. Enumerable.Range(1, Rows).SelectMany(Row)]);
        book.Type("A7", "length7 = 9 mm");
        Assert.Equal("B7 C7 F7", book.Ran); // D7 adds an area and a length, which never runs
    }

    private static string[] Row(int row) =>
        [$"A{row} length{row} = {row} mm", $"B{row} => A{row} * A{row}", $"C{row} => length{row} + 1 mm", $"D{row} => B{row} + C{row}", $"E{row} => nothing{row} * 2", $"F{row} => Sum(Series(A{row}, A{row}))"];

    private static string Told(CellResult result) => $"{result.Id} {result.Outcome switch { Computed computed => computed.Value.ToString(), Faulted faulted => faulted.Fault.Message, _ => "" }} {string.Join(' ', result.References)}";
}
