using System.Collections.Immutable;
using ScrewSheet.Quantities.Formatting;

namespace ScrewSheet.Workbooks.Model;

/// <summary>The line a cell was read from or written to, and the lines between the cell before it and this one.</summary>
/// <remarks>It remembers what the line said, so that a cell changed with a <c>with</c> expression is seen not to match its line any more.</remarks>
internal sealed class CellSource
{
    private readonly string? declaredType, name, remark;
    private readonly DisplayFormat? format;
    private readonly CellContent content;

    private CellSource(FileLine line, ImmutableArray<FileLine> leading, Cell said)
    {
        Line = line;
        Leading = leading;
        (declaredType, name, format, content, remark) = (said.DeclaredType, said.Name, said.Format, said.Content, said.Remark);
    }

    private CellSource(CellSource other, ImmutableArray<FileLine> leading)
    {
        Line = other.Line;
        Leading = leading;
        (declaredType, name, format, content, remark) = (other.declaredType, other.name, other.format, other.content, other.remark);
    }

    /// <summary>The cell's own line.</summary>
    public FileLine Line { get; }

    /// <summary>Lines without a cell above it: blank ones, remarks, what-if blocks, lines in fault.</summary>
    public ImmutableArray<FileLine> Leading { get; }

    /// <summary>True while the cell says what the line says.</summary>
    public bool Says(Cell cell) =>
        Equals(content, cell.Content) && name == cell.Name && declaredType == cell.DeclaredType && remark == cell.Remark && Equals(format, cell.Format);

    /// <summary>The same line with other lines above it.</summary>
    public CellSource With(ImmutableArray<FileLine> leading) => new(this, leading);

    /// <summary>The cell with that line behind it.</summary>
    public static Cell Attach(Cell cell, FileLine line, ImmutableArray<FileLine> leading) => cell with { Source = new(new CellSource(line, leading, cell)) };
}

/// <summary>The lines of a sheet that belong to no cell.</summary>
/// <param name="Opening">The sheet line and what follows to the last widths line.</param>
/// <param name="Trailing">What follows the last cell.</param>
/// <param name="Said">The sheet as those lines describe it.</param>
/// <param name="DoubledAddresses">Addresses with a second line somewhere among the lines without a cell.</param>
internal sealed record SheetSource(ImmutableArray<FileLine> Opening, ImmutableArray<FileLine> Trailing, SheetHeading Said, ImmutableHashSet<CellAddress> DoubledAddresses);

/// <summary>What the opening lines of a sheet say.</summary>
/// <param name="Name">The name.</param>
/// <param name="Title">The title, or null.</param>
/// <param name="Widths">The column widths.</param>
internal sealed record SheetHeading(string Name, string? Title, ImmutableDictionary<int, int> Widths)
{
    /// <summary>What the sheet says now.</summary>
    public static SheetHeading Of(Sheet sheet) => new(sheet.Name, sheet.Title, sheet.Widths);
}

/// <summary>What a file holds besides its sheets.</summary>
/// <param name="HasMark">True for a byte-order mark.</param>
/// <param name="NewLine">How a new line ends: as the file's first does.</param>
/// <param name="HeadLines">The lines before the first sheet.</param>
/// <param name="Head">The head as those lines describe it.</param>
/// <param name="Functions">The functions as those lines describe them.</param>
internal sealed record WorkbookSource(bool HasMark, LineEnd NewLine, ImmutableArray<HeadLine> HeadLines, Head Head, ImmutableArray<FunctionDefinition> Functions);
