namespace ScrewSheet.Terminal.Import;

/// <summary>Whether a file writes 12.4 or 12,4.</summary>
/// <param name="Sign">The decimal sign.</param>
/// <param name="Found">The same where a number has decimals; else null.</param>
/// <param name="IsDoubtful">True where every decimal comma stands before exactly three digits.</param>
internal sealed record DecimalSigns(char Sign, char? Found, bool IsDoubtful)
{
    /// <summary>Looks at the columns whose heading names a unit; where there is none, at those in which every value looks like a number.</summary>
    /// <exception cref="UserMistake">Both signs are used.</exception>
    public static DecimalSigns Of(string file, Heading[] headings, RawRow[] rows, char separator, char? wish)
    {
        if (wish is { } said) return new DecimalSigns(said, said, false);
        int[] measured = [.. Enumerable.Range(0, headings.Length).Where(i => headings[i].IsNumber)];
        if (measured.Length == 0) measured = [.. Enumerable.Range(0, headings.Length).Where(i => rows.All(row => LooksLikeOne(row.Fields[i])))];
        RawRow? comma = null, point = null;
        bool doubtful = true;
        foreach (RawRow row in rows)
        {
            foreach (int i in measured)
            {
                char? sign = Numeral.DecimalSign(row.Fields[i]);
                if (sign == ',') comma ??= row;
                if (sign == '.') point ??= row;
                if (sign == ',' && row.Fields[i].Length - row.Fields[i].IndexOf(',', StringComparison.Ordinal) != 4) doubtful = false;
            }
        }
        if (comma is not null && point is not null)
            throw new UserMistake($"{file} writes decimals with a comma in line {comma.Line} and with a point in line {point.Line}. Make them one, or say --decimal comma or --decimal point.");
        char? found = comma is not null ? ',' : point is not null ? '.' : null;
        return new DecimalSigns(found ?? (separator == ',' ? '.' : ','), found, comma is not null && doubtful);
    }

    private static bool LooksLikeOne(string field) => field.Length == 0 || Numeral.Read(field, '.') is not null || Numeral.Read(field, ',') is not null;
}
