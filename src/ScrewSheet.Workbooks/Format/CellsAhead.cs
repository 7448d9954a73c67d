using System.Collections.Concurrent;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Format;

/// <summary>The lines of a long file that look like cells, read on all processors before the file is put together: what a cell's line says depends on no other line.</summary>
internal sealed class CellsAhead
{
    private const int WorthIt = 1000, Together = 512;

    private readonly CellReading[] readings;

    private CellsAhead(CellReading[] readings) => this.readings = readings;

    /// <summary>Reads them; nothing ahead for a short file.</summary>
    public static CellsAhead Of(List<FileLine> lines)
    {
        if (lines.Count < WorthIt) return new CellsAhead([]);
        CellReading[] readings = new CellReading[lines.Count];
        Parallel.ForEach(Partitioner.Create(1, lines.Count, Together), range =>
        {
            for (int i = range.Item1; i < range.Item2; i++)
                if (IsLikely(lines[i].Text)) readings[i] = CellLine.Read(new LineText(lines[i].Text, i + 1));
        });
        return new CellsAhead(readings);
    }

    /// <summary>What a line says, read ahead or now.</summary>
    public CellReading Read(LineText line) => line.Number <= readings.Length && readings[line.Number - 1] is { Cell: not null } ahead ? ahead : CellLine.Read(line);

    private static bool IsLikely(string line) => line.Length > 3 && char.IsAsciiLetterUpper(line[0]) && char.IsAsciiLetterOrDigit(line[1]);
}
