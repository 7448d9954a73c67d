using ClosedXML.Excel;
using ScrewSheet.Engine;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Benchmarks;

/// <summary>Reads a file of 10,000 formulas and works them all out, against the spreadsheet library doing the same with the same formulas. Warm; medians of interleaved runs.</summary>
internal static class OpenWorkbook
{
    private const int Repeats = 9;

    public static void Run()
    {
        byte[] file = TenThousand.File(), spreadsheet = Spreadsheet();
        Calculator kept = new(Library.Shipped);
        Sample fresh = new(), known = new(), read = new(), their = new();
        Sample first = new();
        first.Time(() => new Calculator(Library.Shipped).Calculate(TenThousand.Read(file)));
        for (int i = 0; i < Repeats + 3; i++)
        {
            bool warm = i >= 3;
            Sample none = new();
            // another workbook between, so that nothing but bound shapes is left of the last one
            kept.Calculate(TenThousand.Read("screwsheet 1\nsheet Other\nA1 = 1 m\n"u8.ToArray()));
            Sample.Settle();
            (warm ? known : none).Time(() => kept.Calculate(TenThousand.Read(file)));
            Sample.Settle();
            (warm ? fresh : none).Time(() => new Calculator(Library.Shipped).Calculate(TenThousand.Read(file)));
            Sample.Settle();
            (warm ? read : none).Time(() => TenThousand.Read(file));
            Sample.Settle();
            (warm ? their : none).Time(() => Theirs(spreadsheet));
        }
        CheckAgreement(file, spreadsheet);
        Report.Ratio("open", fresh.Median / their.Median, $"{fresh.Median:F0} ms", $"{their.Median:F0} ms", 0.2,
            $"a new calculator that binds all 200 shapes; medians of {Repeats}; least {fresh.Least:F0} / {their.Least:F0} ms = {fresh.Least / their.Least:G3}");
        Report.Note($"open with a calculator that knows the shapes from an earlier workbook: {known.Median:F0} ms = {known.Median / their.Median:G3}; reading alone {read.Median:F0} ms; the very first in the process, library and compiler cold, {first.Median:F0} ms");
    }

    private static byte[] Spreadsheet()
    {
        using XLWorkbook workbook = new();
        IXLWorksheet sheet = workbook.AddWorksheet("Work");
        for (int row = 1; row <= TenThousand.Rows; row++)
        {
            for (int column = 1; column < TenThousand.FirstResult; column++) sheet.Cell(row, column).Value = TenThousand.Given(column, row);
            for (int shape = 0; shape < TenThousand.Shapes; shape++) sheet.Cell(row, TenThousand.FirstResult + shape).FormulaA1 = TenThousand.Formula(shape, row);
        }
        using MemoryStream stream = new();
        workbook.SaveAs(stream, new SaveOptions { EvaluateFormulasBeforeSaving = false, ValidatePackage = false });
        return stream.ToArray();
    }

    private static double[] Theirs(byte[] file)
    {
        using MemoryStream stream = new(file);
        using XLWorkbook workbook = new(stream);
        IXLWorksheet sheet = workbook.Worksheet(1);
        double[] values = new double[TenThousand.Rows * TenThousand.Shapes];
        for (int row = 1; row <= TenThousand.Rows; row++)
            for (int shape = 0; shape < TenThousand.Shapes; shape++)
                values[((row - 1) * TenThousand.Shapes) + shape] = (double)sheet.Cell(row, TenThousand.FirstResult + shape).Value;
        return values;
    }

    /// <summary>Both must have done the same work: every value agrees.</summary>
    private static void CheckAgreement(byte[] file, byte[] spreadsheet)
    {
        Calculation ours = new Calculator(Library.Shipped).Calculate(TenThousand.Read(file));
        double[] theirs = Theirs(spreadsheet);
        for (int i = 0; i < theirs.Length; i++)
        {
            CellId id = new("Work", new CellAddress(TenThousand.FirstResult + (i % TenThousand.Shapes), (i / TenThousand.Shapes) + 1));
            double our = ours.Cells[id].Value is QuantityValue value ? value.Si * 1000 : double.NaN;
            if (!(Math.Abs(our - theirs[i]) <= 1e-9 * Math.Max(1, Math.Abs(theirs[i])))) throw new InvalidOperationException($"{id}: ours is {our} mm, theirs {theirs[i]}; {ours.Cells[id].Fault}");
        }
    }
}
