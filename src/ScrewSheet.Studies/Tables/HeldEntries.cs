using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Studies.Tables;

/// <summary>Counts what a table holds besides numbers. Safe for several threads.</summary>
/// <param name="most">The most it may hold; one is as large as a number.</param>
internal sealed class HeldEntries(long most)
{
    private const int OfEntry = 16, OfFault = 64;

    private long held;

    /// <summary>Takes the entries of a block in.</summary>
    /// <param name="values">Those that are no numbers.</param>
    /// <param name="faults">How many are in fault.</param>
    /// <exception cref="NoRoom">There is no room for them.</exception>
    public void Take(IEnumerable<CellValue> values, int faults)
    {
        long size = ((long)OfFault * faults) + values.Sum(SizeOf);
        if (size > 0 && Interlocked.Add(ref held, size) > most) throw new NoRoom();
    }

    private static long SizeOf(CellValue value) => OfEntry + (value is RecordValue ? OfFault : ValueSize.Of(value));
}

/// <summary>A table would hold too much; caught where the table is asked for.</summary>
internal sealed class NoRoom : Exception;
