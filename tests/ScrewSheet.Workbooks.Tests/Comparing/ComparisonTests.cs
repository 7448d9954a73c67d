using CsCheck;
using ScrewSheet.Workbooks.Comparing;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;
using ScrewSheet.Workbooks.Tests.Merging;

namespace ScrewSheet.Workbooks.Tests.Comparing;

/// <summary>What an author changed, told apart from what only moved. Results are left out here; the terminal's tests have them.</summary>
public sealed class ComparisonTests
{
    private const string Base = """
        screwsheet 1
        title Load

        function Torque M(Force f, Length l) => f * l

        sheet A "First"
        A1 "Peak"
        B1 peak [kN] = 8 kN ± 1 kN // measured
        A2 "Exposed"
        B2 exposed [mm] = 40 mm
        A3 "Moment"
        B3 moment => peak * B2 gives 320 N·m
        B4 half => B3 / 2
        B5 => Sum(Series(B1, B1))

        what-if D2
          vary B2: 10 mm, 20 mm
          show B3

        """;

    [Theory]
    [InlineData("8 kN ± 1 kN", "9 kN ± 1 kN", "A.B1 given: 8 kN ± 1 kN -> 9 kN ± 1 kN")]
    [InlineData("± 1 kN", "± 2 kN", "A.B1 given: 8 kN ± 1 kN -> 8 kN ± 2 kN")]
    [InlineData("peak * B2", "B2 * peak", "A.B3 expression: peak * B2 -> B2 * peak")]
    [InlineData("gives 320 N·m", "gives 321 N·m")]
    [InlineData("\"Exposed\"", "\"Out\"", "A.A2 note: \"Exposed\" -> \"Out\"")]
    [InlineData("// measured", "// read", "A.B1 remark: measured -> read")]
    [InlineData("exposed [mm]", "exposed [cm]", "A.B2 shown in: mm -> cm")]
    [InlineData("B3 moment", "B3 Torque moment", "A.B3 type:  -> Torque")]
    [InlineData("B4 half => B3 / 2\n", "", "A.B4 expression: half => B3 / 2 -> ")]
    [InlineData("B4 half => B3 / 2\n", "B4 half => B3 / 2\nC4 = 3\n", "A.C4 given:  -> = 3")]
    [InlineData("title Load", "title Fall", "title: Load -> Fall")]
    [InlineData("f * l", "l * f", "function: Torque M(Force f, Length l) => f * l -> Torque M(Force f, Length l) => l * f")]
    [InlineData("\"First\"", "\"Second\"", "A sheet: A \"First\" -> A \"Second\"")]
    [InlineData("20 mm\n", "30 mm\n", "A what-if: D2; vary B2: 10 mm, 20 mm; show B3 -> D2; vary B2: 10 mm, 30 mm; show B3")]
    [InlineData("A3 \"Moment\"", "// why\nA3 \"Moment\"", "A remark:  -> why")]
    [InlineData("A3 \"Moment\"", "A3 \"Moment\"\ncorrelate peak, exposed 0.5", "A line:  -> correlate peak, exposed 0.5")]
    public void EveryChangeOfTheAuthorIsNamed(string was, string now, params string[] expected) => Assert.Equal(expected, Said(Base, Base.Replace(was, now)));

    [Fact]
    public void AnInsertedRowIsAllThatChanges()
    {
        string late = Base.Replace("B5 => Sum(Series(B1, B1))", "B6 => Sum(Series(B1, B1))").Replace("B4 half => B3 / 2", "B5 half => B4 / 2").Replace("A3 \"Moment\"\nB3 moment => peak * B2", "A4 \"Moment\"\nB4 moment => peak * B3")
            .Replace("A2 \"Exposed\"\nB2 exposed", "A2 \"New\"\nA3 \"Exposed\"\nB3 exposed").Replace("what-if D2\n  vary B2", "what-if D3\n  vary B3").Replace("show B3", "show B4");
        Comparison comparison = Compare(Base, late);
        Assert.Equal(["A.A2 note:  -> \"New\""], Said(comparison));
        Assert.Equal(new MovedRows("A", 2, 5, 1), Assert.Single(comparison.Moved));
    }

    [Fact]
    public void AnExpressionThatReadsAnotherCellThanBeforeIsChangedThoughItsTextIsNot()
    {
        string late = Base.Replace("A2 \"Exposed\"\nB2 exposed", "A2 \"New\"\nB2 = 3 mm\nA3 \"Exposed\"\nB3 exposed").Replace("A3 \"Moment\"\nB3 moment", "A4 \"Moment\"\nB4 moment").Replace("B4 half", "B5 half").Replace("B5 => Sum", "B6 => Sum");
        Assert.Contains("A.B4 expression: peak * B2 -> peak * B2", Said(Base, late));
    }

    [Fact]
    public void ChangedRowsWithoutNamesOrNotesAreKnownByTheirOtherGivens()
    {
        string before = "screwsheet 1\nsheet A\nA1 = 1 mm\nB1 = 10 mm\nC1 => A1 + B1\nA2 = 2 mm\nB2 = 20 mm\nC2 => A2 + B2\n";
        string after = "screwsheet 1\nsheet A\nA2 = 5 mm\nB2 = 10 mm\nC2 => A2 + B2\nA3 = 6 mm\nB3 = 20 mm\nC3 => A3 + B3\n";
        Assert.Equal(["A.A2 given: 1 mm -> 5 mm", "A.A3 given: 2 mm -> 6 mm"], Said(before, after));
    }

    [Fact]
    public void ARenamedCellDoesNotChangeWhoReadsIt() =>
        Assert.Equal(["A.B1 name: peak -> load"], Said(Base, Base.Replace("B1 peak", "B1 load").Replace("peak * B2", "load * B2")));

    [Fact]
    public void ARenamedSheetIsTheSameSheet() => Assert.Equal(["Z sheet: A \"First\" -> Z \"First\""], Said(Base, Base.Replace("sheet A", "sheet Z")));

    [Fact]
    public void ACellThatWentElsewhereIsKnownByItsName() => Assert.Equal(["A.D9 place: A.B2 -> A.D9"], Said(Base, Base.Replace("B2 exposed [mm] = 40 mm", "D9 exposed [mm] = 40 mm").Replace("peak * B2", "peak * D9").Replace("vary B2", "vary D9")));

    [Fact]
    public void ASheetThatIsNewOrGoneIsNamedWithItsCells() =>
        Assert.Equal(["B sheet:  -> B", "B.A1 given:  -> = 3"], Said(Base, Base + "\nsheet B\nA1 = 3\n").Order(StringComparer.Ordinal));

    [Fact]
    public void AReviewIsNamed() => Assert.Equal(["A.B4 review:  -> KM 2026-11-25 0123"], Said(Base, Base.Replace("B4 half", "reviewed KM 2026-11-25 0123456789abcdef\nB4 half")));

    [Fact]
    public void AVersionAndItselfDoNotDiffer() => Draft.Any.Sample(draft => Assert.True(Compare(draft.Text, draft.Text).IsEmpty));

    [Fact]
    public void RowsThatWereInsertedOrRemovedAreAllThatIsNewOrGone() => Gen.Select(Draft.Any, Gen.Int[0, 10000]).Sample((draft, seed) =>
    {
        Draft changed = draft.Changed(seed, null, 1);
        Comparison comparison = Compare(draft.Text, changed.Text);
        HashSet<int> before = [.. draft.Rows.Select(row => row.Id)], after = [.. changed.Rows.Select(row => row.Id)];
        Assert.Equal(after.Except(before).Count(), comparison.Cells.Count(cell => cell.Before is null && cell.After!.Value.Address.Column == 1) + Replaced(comparison));
        Assert.Equal(before.Except(after).Count(), comparison.Cells.Count(cell => cell.After is null && cell.Before!.Value.Address.Column == 1) + Replaced(comparison));
        Assert.Empty(comparison.Cells.Where(cell => cell.Changes.Any(change => change.What == "place")));
    });

    /// <summary>A row in the place of another reads as that one changed.</summary>
    private static int Replaced(Comparison comparison) => comparison.Cells.Count(cell => cell is { Before: not null, After.Address.Column: 1 });

    private static string[] Said(string before, string after) => Said(Compare(before, after));

    private static string[] Said(Comparison comparison) =>
    [
        .. comparison.Lines.Select(line => $"{(line.Sheet is null ? "" : line.Sheet + " ")}{line.Change.What}: {line.Change.Before} -> {line.Change.After}"),
        .. comparison.Cells.SelectMany(cell => cell.Changes.Select(change => $"{cell.After ?? cell.Before} {change.What}: {change.Before} -> {change.After}")),
    ];

    private static Comparison Compare(string before, string after) => Comparison.Of(Uncalculated(before), Uncalculated(after));

    private static Calculation Uncalculated(string text)
    {
        Workbook workbook = Text.Read(text);
        return new Calculation(workbook, CellResults.Of(workbook.Sheets.SelectMany(sheet => sheet.CellsInOrder.Select(cell => new CellResult { Id = new CellId(sheet.Name, cell.Address), Cell = cell }))), []);
    }
}
