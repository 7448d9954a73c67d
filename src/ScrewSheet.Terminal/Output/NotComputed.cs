using System.Globalization;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Reviewing;

namespace ScrewSheet.Terminal.Output;

/// <summary>What stands in a workbook and is not printed here, or which this version does not compute: said, so that nobody takes silence for an answer.</summary>
internal static class NotComputed
{
    /// <summary>One sentence for each kind that is there.</summary>
    public static IEnumerable<string> Sentences(Workbook workbook)
    {
        int tables = workbook.Sheets.Sum(sheet => sheet.WhatIfs.Length);
        if (tables > 0) yield return $"{Count(tables, "what-if table")} not printed here; screwsheet what-if does.";
        int plots = workbook.Sheets.Sum(sheet => PlotText.Of(sheet).Length);
        if (plots > 0) yield return $"{Count(plots, "plot")} not drawn here; screwsheet handout does.";
        foreach (IGrouping<string, ReservedLine> kind in workbook.Reserved.Concat(workbook.Sheets.SelectMany(sheet => sheet.Reserved)).Where(line => line.Word is not ("correlate" or "plot" or "reviewed")).GroupBy(line => line.Word).OrderBy(kind => kind.Key, StringComparer.Ordinal))
            yield return $"{Count(kind.Count(), kind.Key + " line")} kept in the file, without effect in this version.";
        int loose = Reviews.Unattached(workbook);
        if (loose > 0) yield return $"{Count(loose, "reviewed line")} without effect: a mark stands directly above its cell.";
    }

    private static string Count(int number, string what) => string.Create(CultureInfo.InvariantCulture, $"{number} {what}{(number == 1 ? " is" : "s are")}");
}
