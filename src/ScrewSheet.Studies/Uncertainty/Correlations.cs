using System.Collections.Immutable;
using ScrewSheet.Studies.Faults;
using ScrewSheet.Studies.Scenarios;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Studies.Uncertainty;

/// <summary>How the uncertainties of givens go together.</summary>
internal sealed class Correlations
{
    private Correlations(double[,] matrix, double[,] root, bool isPlain) => (Matrix, Root, IsPlain) = (matrix, root, isPlain);

    /// <summary>The correlation coefficients.</summary>
    public double[,] Matrix { get; }

    /// <summary>A lower triangle whose product with its transpose is <see cref="Matrix"/>.</summary>
    public double[,] Root { get; }

    /// <summary>True where no two givens are correlated.</summary>
    public bool IsPlain { get; }

    /// <summary>What the workbook's <c>correlate</c> lines say about these givens; null with a fault.</summary>
    public static Correlations? Of(Workbook workbook, ImmutableArray<UncertainGiven> givens, out Fault? fault)
    {
        int n = givens.Length;
        double[,] matrix = new double[n, n];
        for (int i = 0; i < n; i++) matrix[i, i] = 1;
        HashSet<(int, int)> seen = [];
        foreach (ReservedLine line in workbook.Reserved.Concat(workbook.Sheets.SelectMany(sheet => sheet.Reserved)).Where(line => line.Word == "correlate"))
        {
            fault = Take(workbook, givens, line, matrix, seen);
            if (fault is not null) return null;
        }
        double[,]? root = RootOf(matrix, n);
        fault = root is null ? StudyFaults.Contradiction() : null;
        return root is null ? null : new Correlations(matrix, root, seen.Count == 0);
    }

    private static Fault? Take(Workbook workbook, ImmutableArray<UncertainGiven> givens, ReservedLine line, double[,] matrix, HashSet<(int, int)> seen)
    {
        PlacedText text = new(line.Text.TrimStart(' ', '\t'), line.Place);
        if (StudyText.ReadCorrelation(text, out Fault? fault) is not { } read) return fault;
        int[] places = new int[2];
        foreach (var (name, i) in new[] { read.First, read.Second }.Select((name, i) => (name, i)))
        {
            if (CellNaming.Find(workbook, name, null, out fault) is not { } id) return fault;
            if (workbook.Find(id.Sheet)!.Cells[id.Address].Content is not GivenContent { Tolerance: not null }) return StudyFaults.CorrelatedWithout(name.Text, CellNaming.PlaceOf(name));
            places[i] = givens.IndexOf(givens.FirstOrDefault(given => given.Cell == id)!);
        }
        (int a, int b) = (Math.Min(places[0], places[1]), Math.Max(places[0], places[1]));
        // a given the study does not need may be correlated with anything
        if (a < 0) return null;
        if (a == b || !seen.Add((a, b))) return StudyFaults.CorrelatedTwice(read.First.Text, read.Second.Text, CellNaming.PlaceOf(read.Second));
        matrix[a, b] = matrix[b, a] = read.Coefficient;
        return null;
    }

    /// <summary>Cholesky's root; a coefficient of one leaves a zero on the diagonal, which is allowed. Null where no givens can go together like that.</summary>
    private static double[,]? RootOf(double[,] matrix, int n)
    {
        const double slack = 1e-12;
        double[,] root = new double[n, n];
        for (int i = 0; i < n; i++)
        {
            for (int j = 0; j <= i; j++)
            {
                double sum = matrix[i, j];
                for (int k = 0; k < j; k++) sum -= root[i, k] * root[j, k];
                if (i == j && sum < -slack) return null;
                if (i == j) root[i, j] = Math.Sqrt(Math.Max(0, sum));
                else if (root[j, j] > Math.Sqrt(slack)) root[i, j] = sum / root[j, j];
                else if (Math.Abs(sum) > Math.Sqrt(slack)) return null;
            }
        }
        return root;
    }
}
