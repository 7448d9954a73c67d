namespace ScrewSheet.Workbooks.Results;

/// <summary>How much a value holds besides one number, in numbers: what budgets of memory count.</summary>
public static class ValueSize
{
    private const int CharactersOfNumber = 4;

    /// <summary>The values of a series, the characters of a text; none for a number, a truth, an option, and for a record, whose parts its reader must count.</summary>
    public static long Of(CellValue? value) => value switch
    {
        SeriesValue series => series.Value.Count,
        TextSeriesValue texts => texts.Value.Count,
        TextValue text => text.Value.Length / CharactersOfNumber,
        _ => 0,
    };
}
