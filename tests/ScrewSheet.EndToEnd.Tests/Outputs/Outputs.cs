using System.Globalization;
using System.Text.Json;
using ScrewSheet.Terminal;

namespace ScrewSheet.EveryOutput;

/// <summary>Puts what the program makes of a workbook into a folder, a file for each command line.</summary>
internal sealed class Outputs(string folder)
{
    private const int Shown = 3;
    private readonly ICalculator calculator = Composition.Calculator();
    private string? before;

    /// <summary>All outputs of one workbook.</summary>
    public void Make(string workbook)
    {
        string name = Path.GetFileNameWithoutExtension(workbook);
        foreach (string format in (string[])["text", "json", "csv"])
        {
            Print(name, "run", workbook, "--format", format);
            Print(name, "what-if", workbook, "--format", format);
        }
        Print(name, "check", workbook);
        foreach (string ending in (string[])["html", "md", "xlsx"]) Write(name, ending, [ending == "xlsx" ? "export" : "handout", workbook]);
        Write(name + "-blanks", "html", ["handout", workbook, "--blanks", "--us"]);
        (List<Item> givens, List<Item> results, string[] sheets) = Read(workbook);
        foreach (string sheet in sheets) Write($"{name}-{sheet}", "csv", ["export", workbook, "--sheet", sheet]);
        Study(name, workbook, givens, results);
        if (before is not null)
        {
            foreach (string format in (string[])["text", "md", "json"]) Print(name, "diff", before, workbook, "--format", format);
            Write(name + "-merged", "screwsheet", ["merge", before, before, workbook]);
        }
        before = workbook;
    }

    // enough scenarios and draws for several blocks, so that several threads take part
    private void Study(string name, string workbook, List<Item> givens, List<Item> results)
    {
        if (givens.Count == 0 || results.Count == 0) return;
        string shown = string.Join(", ", results.TakeLast(Shown).Select(result => result.Name));
        Item given = givens[0], result = results[^1];
        string vary = string.Create(CultureInfo.InvariantCulture, $"{given.Name}: {given.Value:R} {given.Unit} to {given.Value * 1.02:R} {given.Unit} over 3000 steps");
        Print(name, "what-if", workbook, "--vary", vary, "--show", shown, "--format", "csv");
        Print(name, "uncertainty", workbook, "--cell", result.Name, "--samples", "20000", "--format", "json");
        foreach (Item by in givens.Take(2))
            Print(name, "solve", workbook, "--cell", result.Name, "--by", by.Name, "--equals", string.Create(CultureInfo.InvariantCulture, $"{result.Value * 1.01:R} {result.Unit}"));
    }

    private void Print(string name, params string[] arguments)
    {
        using StreamWriter output = new(Next(name, arguments, "out")) { NewLine = "\n" }, error = new(Next(name, arguments, "err")) { NewLine = "\n" };
        int status = Run(arguments, output, error);
        output.Write($"ends with {status}\n");
    }

    private void Write(string name, string ending, string[] arguments)
    {
        string path = Path.Combine(folder, $"{name}.{ending}");
        using StringWriter said = new();
        string[] all = [.. arguments, "-o", path];
        Run(all, said, said);
        using StreamWriter output = new(Next(name, arguments, "said"));
        output.Write(said.ToString().Replace(folder, "", StringComparison.Ordinal));
    }

    private int Run(string[] arguments, TextWriter output, TextWriter error) => ScrewSheet.Terminal.Program.Run(arguments, new Shell { Output = output, Error = error, Calculator = () => calculator });

    private string Next(string name, string[] arguments, string what) =>
        Path.Combine(folder, string.Join('_', arguments.Skip(1).Select(Path.GetFileName).Prepend(arguments[0]).Prepend(name)).Replace(' ', '-').Replace('/', '-').Replace(':', '-') + "." + what);

    private (List<Item> Givens, List<Item> Results, string[] Sheets) Read(string workbook)
    {
        using StringWriter json = new();
        Run(["run", workbook, "--format", "json"], json, TextWriter.Null);
        using JsonDocument document = JsonDocument.Parse(json.ToString());
        JsonElement[] sheets = [.. document.RootElement.GetProperty("sheets").EnumerateArray().Select(sheet => sheet.Clone())];
        var cells = sheets.SelectMany(sheet => sheet.GetProperty("cells").EnumerateArray().Where(IsFigure).Select(cell => (
            Kind: cell.GetProperty("kind").GetString(),
            Item: new Item($"{sheet.GetProperty("name").GetString()}.{cell.GetProperty("name").GetString()}", cell.GetProperty("value").GetDouble(), cell.GetProperty("unit").GetString() ?? ""))));
        ILookup<string?, Item> kinds = cells.ToLookup(cell => cell.Kind, cell => cell.Item);
        return ([.. kinds["given"]], [.. kinds["result"]], [.. sheets.Select(sheet => sheet.GetProperty("name").GetString()!)]);
    }

    private static bool IsFigure(JsonElement cell) => cell.GetProperty("name").ValueKind == JsonValueKind.String && cell.GetProperty("value").ValueKind == JsonValueKind.Number && cell.GetProperty("value").GetDouble() != 0;

    private sealed record Item(string Name, double Value, string Unit);
}
