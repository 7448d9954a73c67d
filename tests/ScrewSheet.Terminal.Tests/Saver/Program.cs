using System.Globalization;
using System.Text;
using ScrewSheet.Saver;
using ScrewSheet.Terminal;
using ScrewSheet.Terminal.Files;
using ScrewSheet.Terminal.Grid.Recovery;
using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;

// saves without end and says each number once it is on the disk: "save FILE FROM" a file in the place of the one before, "journal FOLDER whole|added" entries into a journal, "once FILE" a single time
string place = args[1];
// where nobody kills it, it ends by itself
long end = Environment.TickCount64 + 60_000;
switch (args[0])
{
    case "save":
        // two of them may save the same file: whoever finds it changed takes it as it is then
        for (int number = int.Parse(args[2], CultureInfo.InvariantCulture); Environment.TickCount64 < end; number++)
        {
            try
            {
                SafeWrite.Replace(place, BoundedRead.All(place), Text(number));
                Say($"{number}");
            }
            catch (UserMistake mistake)
            {
                Say(mistake.Message);
            }
        }
        return 1;

    case "journal":
        using (JournalKeeper keeper = new(new Journals(place, small: args[2] == "added" ? 0 : Journals.SmallText), _ => { }))
        {
            Session session = Session.Open(NewWorkbook.Empty("killed"), null, ReadOnlyMemory<byte>.Empty);
            for (int number = 1; Environment.TickCount64 < end; number++)
            {
                session = session.Changed(session.Workbook.WithCell("Sheet", new Cell { Address = new CellAddress(1, number), Content = new NoteContent($"entry {number}") }), "an entry");
                keeper.Note(session);
                if (!keeper.Settle(TimeSpan.FromSeconds(60))) return 1;
                Say($"{number}");
            }
        }
        return 1;

    default:
        try
        {
            if (File.Exists(place)) SafeWrite.Replace(place, BoundedRead.All(place), Text(1));
            else SafeWrite.Create(place, Text(1));
            return 0;
        }
        catch (UserMistake mistake)
        {
            Console.Error.WriteLine(mistake.Message);
            return 2;
        }
}

static void Say(string line)
{
    using Stream output = Console.OpenStandardOutput();
    output.Write(Encoding.UTF8.GetBytes(line + "\n"));
}

static byte[] Text(int number) => Encoding.UTF8.GetBytes(NumberedText.Of(number));
