using ScrewSheet.Engine.Graph;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Engine;

/// <summary>The series a run or a column is, as cells read it: for studies that compute cells again with other values.</summary>
public static class RunSeries
{
    /// <summary>The series of these values, with the rows they stand in where cells would know them.</summary>
    /// <param name="reference">The run or column.</param>
    /// <param name="cells">Its cells from top to bottom, without empty ones and without the headings of a column; at least one, all of one kind.</param>
    /// <exception cref="ArgumentException">There is none, or they are of different kinds.</exception>
    public static CellValue Of(CellReference reference, IEnumerable<(CellId Id, CellValue Value)> cells)
    {
        ArgumentNullException.ThrowIfNull(cells);
        RunReading reading = new(reference, null);
        foreach ((CellId id, CellValue value) in cells)
            if (reading.Take(id, value, id.ToString) is { } fault) throw new ArgumentException(fault.Message, nameof(cells));
        return reading.IsEmpty ? throw new ArgumentException("A series has a value.", nameof(cells)) : reading.Value();
    }
}
