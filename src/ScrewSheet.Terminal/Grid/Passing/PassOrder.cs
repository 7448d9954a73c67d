using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Terminal.Grid.Passing;

/// <summary>What a file is made from that a workbook is passed on as.</summary>
/// <param name="Calculator">The library, and what does studies.</param>
/// <param name="Calculation">The workbook as it is on the screen, calculated.</param>
/// <param name="Sheet">The sheet the reader is on.</param>
/// <param name="Path">Where it is written to.</param>
/// <param name="Progress">Told what share is done.</param>
/// <param name="Stop">Stops it.</param>
internal sealed record PassOrder(ICalculator Calculator, Calculation Calculation, string Sheet, string Path, IProgress<double> Progress, CancellationToken Stop);

/// <summary>Makes the bytes of a file, and what is to be said about it besides where it is, or nothing.</summary>
/// <exception cref="UserMistake">It cannot be made.</exception>
/// <exception cref="OperationCanceledException">It was stopped.</exception>
internal delegate (byte[] Bytes, string Said) PassMaking(PassOrder order);
