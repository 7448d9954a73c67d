using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Format;

/// <summary>What became of a file. A closed family.</summary>
public abstract record ReadResult
{
    private protected ReadResult() { }
}

/// <summary>It is a workbook; lines of it may be in fault.</summary>
/// <param name="Workbook">The workbook.</param>
public sealed record WorkbookRead(Workbook Workbook) : ReadResult;

/// <summary>It is none that this program reads, and must not be written over.</summary>
/// <param name="Fault">Why: wrong first line, a later version, an unknown word before the first sheet, not UTF-8, too large.</param>
public sealed record Refusal(Fault Fault) : ReadResult;
