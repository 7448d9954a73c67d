using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Editing;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Tests.Format;

public sealed class ColumnLineTests
{
    private const string File =
        """
        screwsheet 1
        units SI

        sheet Tests
        column A specimen // numbers of the house
        widths A 20, B 9
          column  B   force  [kN]   // as read
        A1 "No"
        B1 "Force [kN]"
        A2 = "S-1"
        B2 = 12.4 kN
        A3 = "S-2"
        B3 = 13 kN
        D1 => Sum(force) / 2
        column D half
        // the end

        sheet Other
        A1 => Sum(Tests.force) + Tests.B2
        """;

    private static Workbook Read(string text = File) => Text.Read(text);

    [Fact]
    public void ColumnsAreReadWhereverTheirLinesStand()
    {
        Sheet sheet = Read().Sheets[0];
        Assert.Equal("1 specimen, 2 force kN, 4 half", string.Join(", ", sheet.Columns.Select(column => $"{column.Column} {column.Name} {column.Unit?.Symbol}".TrimEnd())));
        Assert.Equal(new Place(7, 11, 1), sheet.Column("force")!.Place);
        Assert.True(sheet.Knows("force"));
        Assert.False(sheet.Knows("B"));
        Assert.Empty(sheet.Reserved);
        Assert.Empty(Text.Faults(Read()));
        Assert.Equal(File, Text.Write(Read()));
    }

    [Fact]
    public void EditedCellsLeaveColumnLinesAlone()
    {
        Workbook edited = Read().WithCell("Tests", Text.Cell("B3 = 14 kN")).WithoutCell("Tests", new CellAddress(1, 1)).WithCell("Tests", Text.Cell("B4 = 9 kN"));
        Assert.Equal(File.Replace("B3 = 13 kN", "B3 = 14 kN\nB4 = 9 kN", StringComparison.Ordinal).Replace("A1 \"No\"\n", "", StringComparison.Ordinal), Text.Write(edited));
        Assert.Equal(3, Read(Text.Write(edited)).Sheets[0].Columns.Length);
    }

    [Fact]
    public void ACellOfTheSameName_PutsBothInFault()
    {
        Workbook clash = Read("screwsheet 1\nsheet A\ncolumn B force\nC1 force = 3\nC2 => force\n");
        Assert.Empty(clash.Sheets[0].Columns);
        Assert.Equal(["The name force is also given to C1 in line 4. Rename one of the two.", "The name force is also given to column B in line 3. Rename one of the two."], Text.Faults(clash).Select(fault => fault.Sentence));
        Workbook mended = clash.WithCell("A", Text.Cell("C1 load = 3"));
        Assert.Empty(Text.Faults(mended));
        Assert.Single(mended.Sheets[0].Columns);
        Workbook broken = mended.WithCell("A", Text.Cell("C1 force = 3"));
        Assert.Equal(2, Text.Faults(broken).Count);
        Assert.Single(broken.WithoutCell("A", new CellAddress(3, 1)).Sheets[0].Columns);
    }

    [Fact]
    public void InsertedAndRemovedColumnsTakeTheirLinesAlong()
    {
        string inserted = Text.Write(RowsAndColumns.InsertColumns(Read(), "Tests", 2, 1));
        Assert.Contains("  column  C   force  [kN]   // as read\n", inserted, StringComparison.Ordinal);
        Assert.Contains("column A specimen // numbers of the house\n", inserted, StringComparison.Ordinal);
        Assert.Contains("E1 => Sum(force) / 2\ncolumn E half\n", inserted, StringComparison.Ordinal);
        string removed = Text.Write(RowsAndColumns.RemoveColumns(Read(), "Tests", 1, 1));
        Assert.Contains("  column  A   force  [kN]   // as read\n", removed, StringComparison.Ordinal);
        Assert.DoesNotContain("specimen", removed, StringComparison.Ordinal);
    }

    [Fact]
    public void RowsComeAndGoWithoutTouchingColumnLines()
    {
        Workbook emptied = RowsAndColumns.RemoveRows(Read(), "Tests", 1, 3);
        Assert.Equal(3, emptied.Sheets[0].Columns.Length);
        Assert.Equal(3, RowsAndColumns.InsertRows(Read(), "Tests", 1, 5).Sheets[0].Columns.Length);
        Assert.Equal(3, RowsAndColumns.InsertRows(emptied, "Tests", 1, 5).Sheets[0].Columns.Length);
    }

    [Fact]
    public void AColumnThatMovesAsAWholeTakesItsLineAlong()
    {
        Workbook whole = Relocation.Apply(Read(), (id, _) => id.Sheet == "Tests" && id.Address.Column == 2 ? id with { Address = id.Address with { Column = 6 } } : id);
        Assert.Equal(6, whole.Sheets[0].Column("force")!.Column);
        Workbook part = Relocation.Apply(Read(), (id, _) => id is { Sheet: "Tests", Address: { Column: 2, Row: 3 } } ? id with { Address = new CellAddress(6, 3) } : id);
        Assert.Equal(2, part.Sheets[0].Column("force")!.Column);
    }

    [Fact]
    public void AColumnIsRenamedInItsLineAndWhereverItIsNamed()
    {
        Workbook renamed = Renaming.Column(Read(), "Tests", "force", "load", out Fault? fault);
        Assert.Null(fault);
        string text = Text.Write(renamed);
        Assert.Equal(File.Replace("column  B   force", "column  B   load", StringComparison.Ordinal).Replace("Sum(force)", "Sum(load)", StringComparison.Ordinal).Replace("Tests.force", "Tests.load", StringComparison.Ordinal), text);
        Renaming.Column(Read(), "Tests", "force", "half", out fault);
        Assert.Equal("half is a name on Tests already. Rename one of the two.", fault!.Sentence);
        Renaming.Column(Read(), "Tests", "force", "Load", out fault);
        Assert.Equal("The name of a cell begins with a small letter, Load does not. Write load.", fault!.Sentence);
        Renaming.Cell(Read(), new CellId("Tests", new CellAddress(4, 1)), "force", out fault);
        Assert.Equal("force is the name of a column of Tests already. Rename one of the two.", fault!.Sentence);
    }

    [Fact]
    public void RenamingASheetAndMovingCellsKeepsColumnsNamed()
    {
        Assert.Contains("A1 => Sum(Pulls.force) + Pulls.B2", Text.Write(Renaming.Sheet(Read(), "Tests", "Pulls", out _)), StringComparison.Ordinal);
        Workbook moved = Relocation.Apply(Read(), (id, _) => id is { Sheet: "Tests", Address: { Column: 4, Row: 1 } } ? new CellId("Other", new CellAddress(2, 2)) : id);
        Assert.Contains("B2 => Sum(Tests.force) / 2", Text.Write(moved), StringComparison.Ordinal);
        Assert.Equal("Sum(Tests.force)", ReferenceShift.Copied("Sum(force)", Read(), "Tests", "Other", 0, 0));
    }
}

public sealed class CellNameTests
{
    [Theory]
    [InlineData("Force", "force")]
    [InlineData("Peak force", "peakForce")]
    [InlineData("Specimen No.", "specimenNo")]
    [InlineData("F_max", "f_max")]
    [InlineData("FMax", "fMax")]
    [InlineData("USA", "usa")]
    [InlineData("T1", "t_1")]
    [InlineData("float", "float_")]
    [InlineData("1st crack", "no1stCrack")]
    [InlineData("_x", "no_x")]
    [InlineData("Δl", "deltaL")]
    [InlineData("σ", "σ")]
    [InlineData("µ", "μ")]
    [InlineData("Prüfkörper", "prüfkörper")]
    [InlineData("cafe\u0301", "cafe")]
    [InlineData("力", "otherwise")]
    [InlineData("", "otherwise")]
    [InlineData("%", "otherwise")]
    [InlineData("a-very-long-heading-that-goes-on-and-on-and-on-and-on", "aVeryLongHeadingThatGoesOnAndOnAndOnAndO")]
    public void From_Words_IsANameNearThem(string words, string name)
    {
        Assert.Equal(name, CellName.From(words, "otherwise", _ => false));
        Assert.Empty(Text.Faults(Text.Read($"screwsheet 1\nsheet A\nB1 {name} = 3\n")));
    }

    [Fact]
    public void From_ANameThatIsTaken_IsNumbered() => Assert.Equal("force_3", CellName.From("Force", "x", name => name is "force" or "force_2"));
}
