using ScrewSheet.Engine.Binding;
using ScrewSheet.Terminal;

namespace ScrewSheet.SafetyReader;

/// <summary>
/// Opens every workbook of a folder in one process, as the program would, for whoever watches its system calls.
/// <c>FOLDER</c> computes, prints, compares and exports them; <c>FOLDER --without-gate</c> only shows the lines of <c>expressions.txt</c> to the compiler,
/// with nothing in between; <c>--plant KIND</c> afterwards does what a hostile cell would like to do, so that the watcher is known to see it.
/// </summary>
internal static class Program
{
    private static readonly Lazy<ICalculator> Calculator = new(Composition.Calculator);

    private static int Main(string[] args)
    {
        string folder = args[0];
        if (args.Contains("--without-gate")) BindOnly(File.ReadAllLines(Path.Combine(folder, "expressions.txt")));
        else foreach (string book in Directory.GetFiles(folder, "*.screwsheet").Order(StringComparer.Ordinal)) Open(book);
        int plant = Array.IndexOf(args, "--plant");
        if (plant >= 0) Planted.Do(args[plant + 1], folder);
        return 0;
    }

    private static void Open(string book)
    {
        string outputs = Path.ChangeExtension(book, null);
        string[][] lines =
        [
            ["run", book], ["check", book], ["what-if", book], ["diff", book, book], ["solve", book, "--cell", "S.moment", "--equals", "300 N·m", "--by", "S.peak"],
            ["uncertainty", book, "--cell", "S.moment", "--samples", "10000"], ["export", book, "-o", outputs + ".csv"], ["export", book, "-o", outputs + ".xlsx"], ["handout", book, "-o", outputs + ".html"],
        ];
        bool onlyHead = Path.GetFileName(book).StartsWith("head-", StringComparison.Ordinal);
        using StringWriter output = new(), error = new();
        foreach (string[] line in onlyHead ? lines[..2] : lines)
            Terminal.Program.Run(line, new Shell { Output = output, Error = error, Calculator = () => Calculator.Value });
        if (output.GetStringBuilder().Length + error.GetStringBuilder().Length == 0) throw new InvalidOperationException($"{book} was not opened.");
    }

    private static void BindOnly(string[] expressions)
    {
        CompilerDoor door = new(Composition.Library());
        foreach (string expression in expressions)
        {
            ResolvedExpression raw = new()
            {
                Text = expression, Tokens = [], References = [], ReferencePlaces = [], Code = expression, Literals = [], Pieces = [], Map = [], Calls = [], Parameters = [],
            };
            _ = door.Bind([(raw, [])], []);
        }
    }
}
