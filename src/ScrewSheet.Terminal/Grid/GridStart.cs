using ScrewSheet.Terminal.Files;
using ScrewSheet.Terminal.Grid.Screen;
using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Terminal.Grid.Toolkit;
using ScrewSheet.Terminal.Grid.Work;
using ScrewSheet.Workbooks.Format;

namespace ScrewSheet.Terminal.Grid;

/// <summary>Opens the grid.</summary>
internal static class GridStart
{
    /// <summary>Has the toolkit and the code of the screen loaded on a thread of its own, while the program reads its arguments and its file.</summary>
    public static void WarmUp() => new Thread(() =>
    {
        Host.WarmUp();
        const string trial = "screwsheet 1\nsheet Trial\nwidths A 20\nA1 \"words\"\nA2 load [kN] = 1 kN ± 0.1 kN\nA3 twice [kN, 1 decimal] => load * 2 gives 2.0 kN\n";
        if (WorkbookText.Read(trial) is WorkbookRead read) Painter.Of(new GridState { Lexicon = new Lexicon(Composition.Library), Mode = new Browsing() }.With(Session.Open(read.Workbook, null, ReadOnlyMemory<byte>.Empty)));
    })
    { IsBackground = true }.Start();

    /// <summary>With a file, or on the start page.</summary>
    /// <exception cref="UserMistake">There is no terminal, or the grid was stopped by a signal or a mistake of its own; it says where changes that were not saved are.</exception>
    public static void Open(WorkbookFile? file)
    {
        GridSurroundings surroundings = new() { LibraryLater = Composition.Library, Shipped = Path.Combine(AppContext.BaseDirectory, "workbooks"), Remembered = Remembered.OfUser() };
        using GridProgram program = new(surroundings, file);
        Run(program);
    }

    /// <summary>Shows a program until the reader leaves or it is stopped.</summary>
    /// <exception cref="UserMistake">There is no terminal, or the grid was stopped by a signal or a mistake of its own; it says where changes that were not saved are.</exception>
    public static void Run(GridProgram program)
    {
        try
        {
            Host.Run(program);
        }
        catch (Exception mistake) when (mistake is not UserMistake)
        {
            string? kept = program.Rescue();
            Console.Error.WriteLine(mistake);
            const string stopped = "The grid stopped by a mistake of this program.";
            throw new UserMistake(kept is null ? $"{stopped} Nothing was unsaved." : Kept(stopped, kept));
        }
        if (program.Rescue() is { } path) throw new UserMistake(Kept("The grid was stopped from outside.", path));
    }

    /// <summary>What happened, and where the changes are.</summary>
    internal static string Kept(string what, string path) => $"{what} The changes that were not saved are in {FileTrouble.Quoted(path)}.";
}
