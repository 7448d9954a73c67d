namespace ScrewSheet.Terminal.Import;

/// <summary>What the user says about a file that its bytes may not tell.</summary>
/// <param name="HeadingLine">The line the heading stands in, or null for the first that is not empty.</param>
/// <param name="First">The first row that is taken, counted from 1 beneath the heading.</param>
/// <param name="Last">The last row that is taken, or null.</param>
/// <param name="DecimalSign">Comma or point, or null.</param>
internal sealed record ImportWishes(int? HeadingLine = null, int First = 1, int? Last = null, char? DecimalSign = null);

/// <summary>A column of a table.</summary>
/// <param name="Heading">Its heading.</param>
/// <param name="Name">Its name.</param>
/// <param name="IsNumber">True where its values are numbers or quantities, false for texts.</param>
/// <param name="Remark">What the user should know about how it was read, or null.</param>
internal sealed record TableColumn(Heading Heading, string Name, bool IsNumber, string? Remark);

/// <summary>A row of a table.</summary>
/// <param name="Line">The line it came from.</param>
/// <param name="Values">Numerals and texts, one for each column; empty where the field was.</param>
/// <param name="Problem">Why it could not be read, or null.</param>
internal sealed record TableRow(int Line, string[] Values, string? Problem);

/// <summary>A table read from a file.</summary>
internal sealed record ImportedTable
{
    /// <summary>Its columns.</summary>
    public required IReadOnlyList<TableColumn> Columns { get; init; }

    /// <summary>Its rows in order, unreadable ones too.</summary>
    public required IReadOnlyList<TableRow> Rows { get; init; }

    /// <summary>Lines above the heading that hold something, as they read.</summary>
    public required IReadOnlyList<string> Preamble { get; init; }

    /// <summary>What stands between fields.</summary>
    public required char Separator { get; init; }

    /// <summary>What stands before decimals; null where no number has any.</summary>
    public char? DecimalSign { get; init; }

    /// <summary>True where each comma is followed by three digits, so that it might group them.</summary>
    public bool IsDoubtful { get; init; }

    /// <summary>The rows that could not be read.</summary>
    public IEnumerable<TableRow> Bad => Rows.Where(row => row.Problem is not null);
}
