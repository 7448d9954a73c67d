using System.Diagnostics;
using ScrewSheet.Terminal.Grid.Recovery;
using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Benchmarks.Grid;

/// <summary>What the journal costs while entries are typed into 10,000 rows of 50 columns: of the keyboard's time, until an entry is on the disk, and of room there.</summary>
internal static class JournalSpeed
{
    private const int Entries = 40;

    /// <summary>One entry after the other, each waited for.</summary>
    public static void Run()
    {
        string folder = Directory.CreateTempSubdirectory("screwsheet-journal-").FullName;
        byte[] file = LargeSheet.File();
        Session session = Session.Open(((WorkbookRead)WorkbookText.Read(file)).Workbook, null, file);
        Sample key = new(), disk = new(), room = new();
        using (JournalKeeper keeper = new(new Journals(folder), said => throw new InvalidOperationException(((Said)said).Text)))
        {
            for (int i = -2; i < Entries; i++)
            {
                Cell cell = ((EntryRead)CellText.ReadEntry($"{i + 5} mm", new CellAddress(60, i + 5))).Cell;
                session = session.Changed(session.Workbook.WithCell(session.SheetName, cell), "an entry");
                long before = Length(folder), began = Stopwatch.GetTimestamp();
                keeper.Note(session);
                double noted = Stopwatch.GetElapsedTime(began).TotalMilliseconds;
                if (!keeper.Settle(TimeSpan.FromMinutes(1))) throw new InvalidOperationException("The journal was not written.");
                if (i < 0) continue;
                key.Add(noted);
                disk.Add(Stopwatch.GetElapsedTime(began).TotalMilliseconds);
                room.Add(Length(folder) - before);
            }
        }
        Directory.Delete(folder, recursive: true);
        Report.Amount("journal-key", key.Quantile(0.95), "ms", $"{key.Quantile(0.95):F2} ms p95", "–", 1, "what the keyboard waits for");
        Report.Amount("journal-disk", disk.Median, "ms", $"{disk.Median:F0} ms median", "–", 1000, $"until the entry is on the disk, on a thread of its own; {room.Median:F0} bytes are added");
    }

    private static long Length(string folder) => Directory.GetFiles(folder).Sum(file => new FileInfo(file).Length);
}
