using ScrewSheet.Engine;
using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Terminal.Grid.Work;

/// <summary>
/// Calculates versions and lines tried out in between, and tells the calculator which cells can differ from one to the next, so that it need not look at the others.
/// </summary>
/// <remarks>Invariant: where <see cref="basis"/> is set, the calculator's last workbook is that version, with the cell of <see cref="trial"/> added where that is set.</remarks>
internal sealed class Trials
{
    /// <summary>Where a typed line is tried out: nobody reads this cell, so trying runs nothing else.</summary>
    public static readonly CellAddress Scratch = new(CellAddress.LastColumn, CellAddress.LastRow);

    private Workbook? basis;
    private (CellId At, Workbook With)? trial;

    /// <summary>After a calculation that did not come to its end, nothing is known.</summary>
    public void Forget() => (basis, trial) = (null, null);

    /// <summary>The results of a version.</summary>
    public Calculation Calculate(Calculator calculator, Calculate version, CancellationToken token)
    {
        bool known = version.Only is not null && basis is not null && ReferenceEquals(basis, version.Since);
        Calculation calculation = known ? calculator.Calculate(version.Workbook, Changed(version.Only!.Value), token) : calculator.Calculate(version.Workbook, token);
        (basis, trial) = (version.Workbook, null);
        return calculation;
    }

    /// <summary>The results with the typed cell added to the version it is typed into.</summary>
    public Calculation Try(Calculator calculator, TryOut line, Cell typed, CancellationToken token)
    {
        CellId at = new(line.At.Sheet, Scratch);
        Cell cell = typed with { Address = Scratch, Name = typed.DeclaredType is null ? null : "scratch_line" };
        bool known = ReferenceEquals(basis, line.Workbook);
        // put in place of the cell tried before, which costs less than to find its place again
        Workbook with = known && trial is { } before && before.At == at ? before.With.WithCell(at.Sheet, cell) : line.Workbook.WithCell(at.Sheet, cell);
        Calculation calculation = known ? calculator.Calculate(with, Changed(at), token) : calculator.Calculate(with, token);
        (basis, trial) = (line.Workbook, (at, with));
        return calculation;
    }

    private CellId[] Changed(CellId cell) => trial is { } before && before.At != cell ? [cell, before.At] : [cell];
}
