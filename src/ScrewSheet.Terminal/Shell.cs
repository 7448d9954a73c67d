using ScrewSheet.Terminal.Files;
using ScrewSheet.Terminal.Grid;
using ScrewSheet.Terminal.Output;

namespace ScrewSheet.Terminal;

/// <summary>What a command may touch besides the files it is given.</summary>
internal sealed record Shell
{
    /// <summary>Results.</summary>
    public required TextWriter Output { get; init; }

    /// <summary>Messages.</summary>
    public required TextWriter Error { get; init; }

    /// <summary>Columns of the terminal; 20 at least.</summary>
    public int Width { get; init; } = 80;

    /// <summary>True where results may be coloured; no meaning hangs on it.</summary>
    public bool Colour { get; init; }

    /// <summary>The folder with the shipped workbooks.</summary>
    public string Shipped { get; init; } = Path.Combine(AppContext.BaseDirectory, "workbooks");

    /// <summary>Stops a long command.</summary>
    public CancellationToken Stop { get; init; }

    /// <summary>Makes the calculator; it costs time, so only a command that calculates asks for it.</summary>
    public required Func<ICalculator> Calculator { get; init; }

    /// <summary>Opens the grid with a file or without; null where only commands run.</summary>
    public Action<WorkbookFile?>? Grid { get; init; }

    /// <summary>Says a sentence on the error stream, harmless wherever its words come from.</summary>
    public void Say(string sentence) => Error.Write($"screwsheet: {PlainText.Of(sentence)}\n");

    /// <summary>The shell of this process: its streams, the width of its terminal or of <c>COLUMNS</c>, no colour where <c>NO_COLOR</c> is set or no terminal listens.</summary>
    public static Shell OfProcess(TextWriter output, TextWriter error, Func<ICalculator> calculator) => new()
    {
        Output = output,
        Error = error,
        Calculator = calculator,
        Grid = GridStart.Open,
        Width = ColumnsOfTerminal(),
        Colour = !Console.IsOutputRedirected && string.IsNullOrEmpty(Environment.GetEnvironmentVariable("NO_COLOR")) && Environment.GetEnvironmentVariable("TERM") != "dumb",
    };

    private static int ColumnsOfTerminal()
    {
        if (int.TryParse(Environment.GetEnvironmentVariable("COLUMNS"), out int columns) && columns > 0) return Math.Clamp(columns, 20, 1000);
        if (Console.IsOutputRedirected) return 80;
        try
        {
            return Console.WindowWidth is > 0 and int width ? Math.Clamp(width, 20, 1000) : 80;
        }
        catch (IOException)
        {
            return 80;
        }
    }
}
