using System.Collections.Immutable;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Format;

/// <summary>Gathers a line that starts a block, a what-if table or a reserved line, and the indented lines after it.</summary>
internal sealed class BlockReader
{
    private readonly ImmutableArray<PlacedText>.Builder vary = ImmutableArray.CreateBuilder<PlacedText>();
    private readonly ImmutableArray<PlacedText>.Builder show = ImmutableArray.CreateBuilder<PlacedText>();
    private readonly ImmutableArray<PlacedText>.Builder block = ImmutableArray.CreateBuilder<PlacedText>();
    private readonly WhatIfBlock? whatIf;
    private readonly ReservedLine? reserved;

    private BlockReader(WhatIfBlock? whatIf, ReservedLine? reserved)
    {
        this.whatIf = whatIf;
        this.reserved = reserved;
    }

    /// <summary>The what-if table as far as gathered, or null.</summary>
    public WhatIfBlock? WhatIf => whatIf is null ? null : whatIf with { Vary = vary.ToImmutable(), Show = show.ToImmutable() };

    /// <summary>The reserved line as far as gathered, or null.</summary>
    public ReservedLine? Reserved => reserved is null ? null : reserved with { Block = block.ToImmutable() };

    /// <summary>A reserved line of that word.</summary>
    public static BlockReader Reserve(LineText line, int start, string word) =>
        new(null, new ReservedLine(word, line.Text, [], line.At(start, line.TrimEnd(start, line.Text.Length))));

    /// <summary>What is wrong with the text of a reserved line; null where nothing is, or where this version does not read it.</summary>
    public static Fault? FaultOf(LineText line, int start, string word)
    {
        if (CellLine.LineFault(line) is { } whole) return whole;
        if (word == "reviewed") return Reviewing.ReviewLine.Read(line.Text) is null ? MergeFaults.Reviewed(line.At(start, line.TrimEnd(start, line.Text.Length))) : null;
        Fault? fault = null;
        if (word == "plot") PlotText.Read(line, start, out fault);
        if (word != "correlate") return fault;
        StudyText.ReadCorrelation(new PlacedText(line.Piece(start, line.Text.Length), line.At(start, line.Text.Length)), out fault);
        return fault;
    }

    /// <summary>Reads what follows the word <c>what-if</c>; null with a fault.</summary>
    public static BlockReader? StartWhatIf(LineText line, int start, out Fault? fault)
    {
        LineScan scan = LineScan.Of(line.Text, start);
        int end = line.TrimEnd(start, scan.Remark), anchor = line.SkipBlanks(start, end), anchorEnd = line.WordEnd(anchor, end);
        fault = CellLine.LineFault(line);
        string? title = SheetLine.ReadTitle(line, line.SkipBlanks(anchorEnd, end), end, out bool readable, out Fault? titleFault);
        fault ??= titleFault;
        if (CellAddress.TryParse(line.Span(anchor, anchorEnd), out CellAddress address) && readable && fault is null)
            return new BlockReader(new WhatIfBlock(address, title, [], [], line.At(anchor, anchorEnd)), null);
        fault ??= FormatFaults.WhatIfLine(line.At(anchor, end));
        return null;
    }

    /// <summary>Takes one indented line.</summary>
    /// <returns>The fault, or null.</returns>
    public Fault? Take(LineText line)
    {
        int start = line.SkipBlanks(0, line.Text.Length), end = line.TrimEnd(start, LineScan.Of(line.Text, start).Remark);
        if (start == end) return null;
        if (whatIf is null)
        {
            block.Add(new PlacedText(line.Piece(start, end), line.At(start, end)));
            return null;
        }
        if (vary.Count + show.Count >= FormatBudget.TableLines) return FormatFaults.TooManyTableLines(line.At(start, end));
        int wordEnd = line.WordEnd(start, end), rest = line.SkipBlanks(wordEnd, end);
        var target = line.Span(start, wordEnd) switch { "vary" => vary, "show" => show, _ => null };
        PlacedText text = new(line.Piece(rest, end), line.At(rest, end));
        target?.Add(text);
        return CellLine.LineFault(line) ?? (target is null ? FormatFaults.WhatIfInner(line.At(start, end)) : Read(text, ReferenceEquals(target, vary)));
    }

    private static Fault? Read(PlacedText text, bool isVary)
    {
        Fault? fault;
        if (isVary) StudyText.ReadVary(text, out fault);
        else StudyText.ReadShow(text, out fault);
        return fault;
    }
}
