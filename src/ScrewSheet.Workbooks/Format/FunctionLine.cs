using System.Collections.Immutable;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Format;

/// <summary>Reads and writes the author's functions: <c>function Torque HingeMoment(Force f, Length arm) => f * arm</c>.</summary>
internal static class FunctionLine
{
    /// <summary>Reads what follows the word <c>function</c>.</summary>
    public static FunctionDefinition? Read(LineText line, int start, out Fault? fault)
    {
        LineScan scan = LineScan.Of(line.Text, start);
        int end = line.TrimEnd(start, scan.Remark), arrow = scan.Sign;
        fault = CellLine.LineFault(line) ?? (scan.OpenQuote >= 0 ? FormatFaults.OpenQuote(line.At(scan.OpenQuote, scan.OpenQuote + 1)) : null);
        if (fault is not null) return null;
        bool arrowed = arrow >= 0 && arrow + 1 < end && line.Text[arrow + 1] == '>';
        int body = arrowed ? line.SkipBlanks(arrow + 2, end) : end;
        FunctionDefinition? read = body < end ? Signature(line, start, line.TrimEnd(start, arrow), out fault) : null;
        if (read is null) fault ??= FormatFaults.FunctionLine(line.At(start, end));
        return read is null ? null : read with { Body = line.Piece(body, end), BodyColumn = body + 1 };
    }

    /// <summary>The canonical line.</summary>
    public static string Write(FunctionDefinition function)
    {
        string parameters = string.Join(", ", function.Parameters.Select(parameter => $"{parameter.Type} {parameter.Name}"));
        return $"function {function.ReturnType} {function.Name}({parameters}) => {CellTextWriter.OneLine(function.Body)}";
    }

    private static FunctionDefinition? Signature(LineText line, int start, int end, out Fault? fault)
    {
        fault = null;
        start = line.SkipBlanks(start, end);
        int open = line.Span(start, Math.Max(start, end)).IndexOf('(');
        if (open < 0 || line.Text[end - 1] != ')') return null;
        open += start;
        int typeEnd = line.WordEnd(start, open), name = line.SkipBlanks(typeEnd, open), nameEnd = line.TrimEnd(name, open);
        if (name >= nameEnd || line.WordEnd(name, nameEnd) < nameEnd) return null;
        fault = CellHead.TypeFault(line, start, typeEnd) ?? NameRules.Capital(line, name, nameEnd, "function");
        ImmutableArray<(string, string)> parameters = [];
        if (fault is not null || !TryParameters(line, open + 1, end - 1, out parameters, out fault)) return null;
        return new FunctionDefinition(line.Piece(start, typeEnd), line.Piece(name, nameEnd), parameters, "", 0, line.At(name, nameEnd));
    }

    private static bool TryParameters(LineText line, int start, int end, out ImmutableArray<(string Type, string Name)> parameters, out Fault? fault)
    {
        var read = ImmutableArray.CreateBuilder<(string, string)>();
        parameters = [];
        fault = null;
        for (int at = start; line.SkipBlanks(start, end) < end && at <= end;)
        {
            int comma = line.Text.IndexOf(',', at, end - at) is >= 0 and var found ? found : end;
            int type = line.SkipBlanks(at, comma), typeEnd = line.WordEnd(type, comma), name = line.SkipBlanks(typeEnd, comma), nameEnd = line.TrimEnd(name, comma);
            if (name >= nameEnd) return false;
            fault = CellHead.TypeFault(line, type, typeEnd) ?? NameRules.Cell(line, name, nameEnd);
            if (fault is not null) return false;
            if (read.Count >= FormatBudget.Parameters) fault = FormatFaults.TooManyParameters(line.At(type, nameEnd));
            if (fault is not null) return false;
            read.Add((line.Piece(type, typeEnd), line.Piece(name, nameEnd)));
            at = comma + 1;
        }
        parameters = read.DrainToImmutable();
        return true;
    }
}
