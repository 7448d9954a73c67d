using ScrewSheet.Terminal.Files;
using ScrewSheet.Terminal.Grid.Screen;
using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Terminal.Grid.Work;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Terminal.Tests.Grid;

/// <summary>A reader at the grid: presses keys, looks at the screen. No terminal takes part.</summary>
internal sealed class Walk : IDisposable
{
    public static FunctionLibrary Library { get; } = Composition.Library();

    private readonly string folder = Directory.CreateTempSubdirectory("screwsheet-grid-").FullName;

    private readonly FunctionLibrary own;

    public Walk(string? text = null, int width = 80, int height = 24, bool cautionsRead = true, FunctionLibrary? library = null)
    {
        own = library ?? Library;
        Remembered = new Remembered(At("state"));
        if (cautionsRead) Remembered.ReadCautions();
        Directory.CreateDirectory(At("shipped"));
        File.WriteAllText(At("shipped/drop.screwsheet"), Book.Text);
        if (text is not null) File.WriteAllText(At("book.screwsheet"), text);
        Program = Start(text is null ? null : At("book.screwsheet"));
        Program.Handle(new Resize(width, height));
        Program.Copied += copied => Clipboard = copied;
        Settle();
    }

    public GridProgram Program { get; private set; }

    public Remembered Remembered { get; }

    /// <summary>Where the next program saves.</summary>
    public IDisk Disk { get; set; } = new Disk();

    public string? Clipboard { get; private set; }

    public GridState State => Program.State;

    public Workbook Workbook => State.Open.Workbook;

    public string Screen => Painter.Of(State).ToString();

    public string At(string name) => Path.Combine(folder, name);

    public string Saved => File.ReadAllText(At("book.screwsheet"));

    public GridProgram Start(string? file) => new(new GridSurroundings { Library = own, Shipped = At("shipped"), Remembered = Remembered, Disk = Disk }, file is null ? null : WorkbookFile.Read(file));

    /// <summary>The program ends without the reader having left, as when it is killed once the journal is written; then it begins anew.</summary>
    public Walk Again(bool withFile = true)
    {
        Settle().Program.Dispose();
        Program = Start(withFile ? At("book.screwsheet") : null);
        Program.Handle(new Resize(State.Width, State.Height));
        return Settle();
    }

    public Walk Press(params KeyName[] keys)
    {
        foreach (KeyName key in keys) Program.Handle(new Press(key));
        return this;
    }

    public Walk Ctrl(char letter)
    {
        Program.Handle(new Press(KeyName.Text, letter.ToString(), Ctrl: true));
        return this;
    }

    public Walk Shift(KeyName key, int times = 1)
    {
        for (int i = 0; i < times; i++) Program.Handle(new Press(key, Shift: true));
        return this;
    }

    public Walk Type(string text)
    {
        foreach (System.Text.Rune rune in text.EnumerateRunes()) Program.Handle(new Press(KeyName.Text, rune.ToString()));
        return this;
    }

    /// <summary>Types a line into the cell under the cursor.</summary>
    public Walk Enter(string line) => Type(line).Press(KeyName.Enter);

    /// <summary>Goes to a cell by its name or address.</summary>
    public Walk Go(string place) => Ctrl('g').Type(place).Press(KeyName.Enter);

    /// <summary>Space and a letter.</summary>
    public Walk Command(char letter) => Type(" ").Type(letter.ToString());

    public Walk Settle()
    {
        Program.SettleStudies(TimeSpan.FromSeconds(60));
        return this;
    }

    /// <summary>The text of a cell as it is typed.</summary>
    public string? Entry(string address)
    {
        Assert.True(CellAddress.TryParse(address, out CellAddress at));
        return State.Open.Sheet.Cells.GetValueOrDefault(at) is { } cell ? Workbooks.Format.CellText.WriteEntry(cell) : null;
    }

    /// <summary>What a cell shows.</summary>
    public string Face(string address)
    {
        Assert.True(CellAddress.TryParse(address, out CellAddress at));
        CellFace face = CellFace.Of(State.Open, new CellId(State.Open.SheetName, at), State.Open.Sheet.Cells[at]);
        return $"{face.Mark}{face.Text} {face.Unit}".TrimEnd();
    }

    public void Dispose()
    {
        Program.Dispose();
        Directory.Delete(folder, recursive: true);
    }
}

/// <summary>A workbook to walk through.</summary>
internal static class Book
{
    public const string Text =
        """
        screwsheet 1
        title A walk
        units SI

        sheet Fall "What the fall leaves"
        widths A 30

        A2 "Peak force at the hanger"
        B2 peak [kN] = 8.5 kN ± 0.5 kN // from the fall sheet
        A3 "Exposed length"
        B3 exposed [mm] = 40 mm ± 10 mm rectangular within 0 mm to 120 mm
        A4 "Moment"
        B4 Torque moment [N·m, 1 decimal] => peak * exposed
        B5 strong => moment < 500 N·m
        B6 broken => peak + exposed
        B7 => broken * 2
        B8 weak => moment < 100 N·m gives holds

        sheet Other
        A1 twice [kN] => Fall.peak * 2
        A2 => Fall.B4 / Fall.B3

        """;
}
