namespace ScrewSheet.Terminal.Import;

/// <summary>What stands between the fields of a file.</summary>
internal static class Separator
{
    /// <summary>How many rows are looked at, and how many to find the heading.</summary>
    private const int Sample = 60, Most = 1000;

    private static readonly (char Sign, string Name)[] Known = [(';', "semicolons"), ('\t', "tabs"), (',', "commas"), ('|', "upright strokes")];

    /// <summary>How a sentence names it.</summary>
    public static string Name(char separator) => Array.Find(Known, known => known.Sign == separator).Name;

    /// <summary>The sign that a first line such as <c>sep=;</c> names, or null.</summary>
    public static char? Said(string text)
    {
        int end = text.AsSpan().IndexOfAny('\r', '\n');
        string first = end < 0 ? text : text[..end];
        return first.Length == 5 && first.StartsWith("sep=", StringComparison.OrdinalIgnoreCase) && Array.Exists(Known, known => known.Sign == first[4]) ? first[4] : null;
    }

    /// <summary>What stands beneath the first line.</summary>
    public static string Beneath(string text)
    {
        int end = text.AsSpan().IndexOfAny('\r', '\n');
        if (end < 0) return "";
        return text[(end + (text.AsSpan(end).StartsWith("\r\n", StringComparison.Ordinal) ? 2 : 1))..];
    }

    /// <summary>The sign that splits the heading and most rows beneath it into as many fields; of equals the first.</summary>
    /// <param name="text">The text.</param>
    /// <param name="heading">The line of the heading, or null for the first that is not empty.</param>
    /// <param name="firstLine">The number of the text's first line.</param>
    public static char Find(string text, int? heading, int firstLine)
    {
        char best = Known[0].Sign;
        char? beneath = null;
        int most = 0;
        foreach ((char sign, _) in Known)
        {
            RawRow[] rows = [.. Sampled(text, sign, firstLine).SkipWhile(row => row.Line < heading).Take(Sample)];
            int fields = rows.Length == 0 ? 0 : rows[0].Fields.Length;
            int alike = fields < 2 ? 0 : 1 + rows.Skip(1).Count(row => row.Fields.Length == fields);
            if (alike > most) (best, most) = (sign, alike);
            if (fields == 1 && SplitBeneath(rows, sign)) beneath ??= sign;
        }
        return most == 0 && beneath is { } other ? other : best;
    }

    /// <summary>True where the first line is no heading of what follows: it is one field, most rows beneath are several, and not because of a decimal comma.</summary>
    private static bool SplitBeneath(RawRow[] rows, char sign) =>
        rows.Skip(1).Count(row => row.Fields.Length > 1 && !(sign == ',' && Numeral.Read(string.Join(',', row.Fields), ',') is not null)) * 2 >= rows.Length - 1 && rows.Length > 1;

    /// <summary>The rows as far as quotes can be told: with another sign a quote may seem open that is not.</summary>
    private static List<RawRow> Sampled(string text, char sign, int firstLine)
    {
        List<RawRow> rows = [];
        try
        {
            foreach (RawRow row in CsvRows.Read(text, sign, firstLine))
            {
                rows.Add(row);
                if (rows.Count == Most) break;
            }
        }
        catch (UserMistake)
        {
            return rows;
        }
        return rows;
    }
}
