namespace ScrewSheet.Workbooks.Format;

/// <summary>How much a file may hold of everything that stands in it many times; with the cells and bytes of <see cref="WorkbookReader"/> and <see cref="FileText"/> all that a file can grow by.</summary>
internal static class FormatBudget
{
    /// <summary>The characters of a line. A line of widths for every column of a sheet is a little shorter.</summary>
    public const int LineLength = 262_144;

    /// <summary>The lines of a file: each cell may have a remark of its own above it.</summary>
    public const int Lines = 1_000_000;

    /// <summary>The lines of a file that cannot be read; with more it is no workbook that somebody wrote.</summary>
    public const int BrokenLines = 10_000;

    /// <summary>The sheets of a workbook.</summary>
    public const int Sheets = 500;

    /// <summary>The author's functions of a workbook.</summary>
    public const int Functions = 1000;

    /// <summary>The parameters of one of the author's functions.</summary>
    public const int Parameters = 64;

    /// <summary>The what-if tables, plots and correlated pairs of a workbook, each.</summary>
    public const int Studies = 1000;

    /// <summary>The indented lines of a what-if table.</summary>
    public const int TableLines = 64;

    /// <summary>The results a what-if table shows.</summary>
    public const int Shown = 256;

    /// <summary>The characters of a name.</summary>
    public const int NameLength = 255;
}
