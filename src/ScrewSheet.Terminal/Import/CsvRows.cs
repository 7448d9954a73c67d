using CsvHelper;

namespace ScrewSheet.Terminal.Import;

/// <summary>A row of a table as it stands in the file.</summary>
/// <param name="Line">The line it begins in, from 1.</param>
/// <param name="Fields">Its fields without blanks around them.</param>
/// <param name="IsMisquoted">True where something follows a closing quote, so that nobody knows what the field says.</param>
internal sealed record RawRow(int Line, string[] Fields, bool IsMisquoted)
{
    /// <summary>True where every field is empty, as at the end of a spreadsheet's export.</summary>
    public bool IsEmpty => Array.TrueForAll(Fields, text => text.Length == 0);
}

/// <summary>Splits text into rows and fields.</summary>
internal static class CsvRows
{
    private const string Blanks = " \t\r\n\f\u00A0\u202F\u001A\uFEFF";

    /// <summary>The rows that are not empty.</summary>
    /// <param name="text">The text.</param>
    /// <param name="separator">What stands between fields.</param>
    /// <param name="firstLine">The number of the text's first line.</param>
    /// <exception cref="UserMistake">A quote is not closed.</exception>
    public static IEnumerable<RawRow> Read(string text, char separator, int firstLine = 1)
    {
        CsvMalformedRecord? wrong = null;
        // a line that names a separator was read before this; one beneath it is a row like any other
        CsvReaderOptions plain = CsvReaderOptions.Default with { Separator = separator, DetectSeparatorHint = false, HasHeader = false, TrackLineNumbers = true, OnMalformedRecord = found => wrong = found };
        using CsvReader reader = CsvReader.FromText(text, plain);
        while (reader.Read())
        {
            int line = firstLine - 1 + (int)reader.LineNumber;
            if (wrong?.Reason == CsvMalformedReason.UnterminatedQuote) throw new UserMistake($"A quote that opens in line {line} is never closed. Close it, or take it out.");
            string[] fields = new string[reader.FieldCount];
            for (int i = 0; i < fields.Length; i++) fields[i] = Bare(reader.GetString(i));
            RawRow row = new(line, fields, wrong?.Reason == CsvMalformedReason.TextAfterClosingQuote);
            wrong = null;
            if (!row.IsEmpty) yield return row;
        }
    }

    private static string Bare(string field) => field.Length > 0 && (Blanks.Contains(field[0]) || Blanks.Contains(field[^1])) ? field.Trim([.. Blanks]) : field;
}
