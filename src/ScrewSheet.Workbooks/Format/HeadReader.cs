using System.Collections.Immutable;
using System.Globalization;
using ScrewSheet.Quantities.Units;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Format;

/// <summary>Reads the lines before the first sheet.</summary>
internal sealed class HeadReader
{
    private readonly ImmutableArray<HeadLine>.Builder lines = ImmutableArray.CreateBuilder<HeadLine>();
    private readonly ImmutableArray<FunctionDefinition>.Builder functions = ImmutableArray.CreateBuilder<FunctionDefinition>();
    private readonly ImmutableArray<ReservedLine>.Builder reserved = ImmutableArray.CreateBuilder<ReservedLine>();
    private readonly Dictionary<string, int> seen = new(StringComparer.Ordinal);

    /// <summary>Words that stand before the first sheet.</summary>
    public static ImmutableArray<string> Words { get; } = ["title", "author", "date", "units", "seed", "results", "made", "function"];

    /// <summary>What the lines say so far.</summary>
    public Head Head { get; private set; } = new();

    /// <summary>The functions so far.</summary>
    public ImmutableArray<FunctionDefinition> Functions => functions.ToImmutable();

    /// <summary>The reserved lines so far.</summary>
    public ImmutableArray<ReservedLine> Reserved => reserved.ToImmutable();

    /// <summary>The lines so far.</summary>
    public ImmutableArray<HeadLine> Lines => lines.ToImmutable();

    /// <summary>Keeps a line without reading it.</summary>
    public void Keep(FileLine line) => lines.Add(new HeadLine(line, "", null));

    /// <summary>Reads a line that begins with a word.</summary>
    /// <returns>The fault, or null. An unknown word gives the fault of code 1003, which refuses the file.</returns>
    public Fault? Read(FileLine file, LineText line)
    {
        int start = line.SkipBlanks(0, line.Text.Length), end = line.WordEnd(start, line.Text.Length);
        string word = line.Piece(start, end);
        if (word is "correlate" or "reviewed")
        {
            if (reserved.Count >= FormatBudget.Studies) return FormatFaults.TooMany(line.At(start, end), FormatBudget.Studies, "correlated pairs");
            reserved.Add(BlockReader.Reserve(line, start, word).Reserved!);
            Keep(file);
            return BlockReader.FaultOf(line, start, word);
        }
        if (!Words.Contains(word)) return FormatFaults.HeadWord(line.At(start, end), NameRules.Harmless(word));
        FunctionDefinition? function = null;
        Fault? fault = word == "function" ? ReadFunction(line, end, out function) : ReadValue(line, start, end, word);
        lines.Add(new HeadLine(file, fault is null ? word : "", function));
        return fault;
    }

    private Fault? ReadFunction(LineText line, int start, out FunctionDefinition? function)
    {
        function = FunctionLine.Read(line, start, out Fault? fault);
        if (function is null) return fault;
        string name = function.Name;
        if (functions.FirstOrDefault(other => other.Name == name) is { } first)
        {
            fault = NameFaults.DoubledFunction(function.Place, name, first.Place.Line);
            function = null;
            return fault;
        }
        if (functions.Count >= FormatBudget.Functions) return FormatFaults.TooMany(function.Place, FormatBudget.Functions, "functions");
        functions.Add(function);
        return null;
    }

    private Fault? ReadValue(LineText line, int start, int wordEnd, string word)
    {
        int end = line.TrimEnd(wordEnd, line.Text.Length);
        string value = line.Piece(line.SkipBlanks(wordEnd, end), end);
        if (CellLine.LineFault(line) is { } control) return control;
        if (seen.TryGetValue(word, out int first)) return FormatFaults.HeadTwice(line.At(start, wordEnd), word, first);
        if (Set(word, value) is { } head) Head = head;
        else return FormatFaults.HeadValue(line.At(start, end), word, Expected(word));
        seen.Add(word, line.Number);
        return null;
    }

    private Head? Set(string word, string value) => word switch
    {
        "title" => Head with { Title = value },
        "author" => Head with { Author = value },
        "date" => Head with { Date = value },
        "units" when value is "SI" => Head with { Units = UnitSystem.SI },
        "units" when value is "US" => Head with { Units = UnitSystem.US },
        "seed" when ulong.TryParse(value, NumberStyles.None, CultureInfo.InvariantCulture, out ulong seed) => Head with { Seed = seed },
        "results" when value is "omitted" => Head with { ResultsOmitted = true },
        "made" when value.StartsWith("with ", StringComparison.Ordinal) && value.Length > 5 => Head with { MadeWith = value[5..].TrimStart(' ', '\t') },
        _ => null,
    };

    private static string Expected(string word) => word switch
    {
        "units" => "units SI or units US",
        "seed" => "seed and a whole number, like seed 7",
        "results" => "results omitted, or remove the line",
        _ => "made with and a version, like made with 0.3.0",
    };
}
