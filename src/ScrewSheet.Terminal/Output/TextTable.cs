namespace ScrewSheet.Terminal.Output;

/// <summary>Rows of figures below each other: the first columns to the left, the others to the right.</summary>
internal static class TextTable
{
    private const string Gap = "  ";

    /// <summary>The lines; every row has as many cells as the first.</summary>
    /// <param name="rows">The rows.</param>
    /// <param name="left">Which columns stand to the left.</param>
    public static IReadOnlyList<string> Lines(IReadOnlyList<IReadOnlyList<string>> rows, params IReadOnlyCollection<int> left)
    {
        if (rows.Count == 0) return [];
        int[] widths = [.. Enumerable.Range(0, rows[0].Count).Select(column => rows.Max(row => DisplayWidth.Of(row[column])))];
        return [.. rows.Select(row => string.Join(Gap, row.Select((cell, column) => left.Contains(column) ? DisplayWidth.PadRight(cell, widths[column]) : DisplayWidth.PadLeft(cell, widths[column]))).TrimEnd())];
    }
}
