using System.Globalization;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Terminal.Output;

/// <summary>What stands in a workbook and is not printed here, or which this version does not compute: said, so that nobody takes silence for an answer.</summary>
internal static class NotComputed
{
    /// <summary>One sentence for each kind that is there.</summary>
    public static IEnumerable<string> Sentences(Workbook workbook)
    {
        int tables = workbook.Sheets.Sum(sheet => sheet.WhatIfs.Length);
        if (tables > 0) yield return $"{Count(tables, "what-if table")} not printed here; screwsheet what-if does.";
        foreach (IGrouping<string, ReservedLine> kind in workbook.Reserved.Concat(workbook.Sheets.SelectMany(sheet => sheet.Reserved)).Where(line => line.Word != "correlate").GroupBy(line => line.Word).OrderBy(kind => kind.Key, StringComparer.Ordinal))
            yield return $"{Count(kind.Count(), kind.Key + " line")} kept in the file, without effect in this version.";
    }

    private static string Count(int number, string what) => string.Create(CultureInfo.InvariantCulture, $"{number} {what}{(number == 1 ? " is" : "s are")}");
}
