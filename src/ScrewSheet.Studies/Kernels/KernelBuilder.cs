using System.Collections.Immutable;
using ScrewSheet.Engine;
using ScrewSheet.Studies.Scenarios;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Studies.Kernels;

/// <summary>Makes the kernel of one shown cell.</summary>
internal static class KernelBuilder
{
    /// <summary>The kernel, or null where an operation on the way has no form in one.</summary>
    /// <param name="cone">The cells on the way.</param>
    /// <param name="shown">The place of the shown cell in the cone.</param>
    /// <param name="inputs">The place of each varied given among the kernel's inputs; -1 for one that stays while the kernel runs.</param>
    /// <param name="now">The results of the cone's cells at a scenario: what stays is taken from it.</param>
    /// <param name="library">The library.</param>
    /// <param name="trials">Which formulas may stand for their function.</param>
    public static Kernel? Build(Cone cone, int shown, IReadOnlyList<int> inputs, IReadOnlyList<ConeResult> now, FunctionLibrary library, FunctionTrials trials)
    {
        LoopCode code = new();
        TreeEvaluation trees = new(library, cone.Workbook.Head.Units);
        KernelEmitter emitter = new(code, library, trees, trials);
        Dictionary<int, Emitted> cells = [];
        bool[] needed = Needed(cone, shown);
        try
        {
            for (int i = 0; i <= shown; i++)
            {
                if (!needed[i]) continue;
                ConeCell cell = cone.Cells[i];
                bool stays = !cone.Behind(i).Any(varied => inputs[varied] >= 0);
                BoundExpression? tree = cone.Known(i).Bound;
                if (stays ? now[i].Value is null : cell.Varied < 0 && tree is null) return null;
                foreach (string caution in stays ? now[i].Cautions : [.. cell.Cautions]) code.Caution(caution, null);
                cells[i] = stays ? Emitted.Of(now[i].Value!) : cell.Varied >= 0 ? Given(code, cell, inputs[cell.Varied]) : emitter.Cell(tree!, [.. cell.Inputs.Select(input => Read(input, cells))]);
            }
            if (cone.Known(shown).Bound is { Type: not (NumberType or QuantityType or TruthType) }) return null;
            emitter.Close();
            return new Kernel(code.Compile(cells[shown].Code), code.Cautions, code.Always, emitter.Operations);
        }
        catch (NoKernelException)
        {
            return null;
        }
    }

    private static Emitted Given(LoopCode code, ConeCell cell, int input)
    {
        System.Linq.Expressions.Expression value = code.Input(input);
        if (cell.Result.Cell.Content is Workbooks.Model.GivenContent { Within: { } limits })
        {
            code.Need(System.Linq.Expressions.Expression.GreaterThanOrEqual(value, System.Linq.Expressions.Expression.Constant(limits.FromSi)));
            code.Need(System.Linq.Expressions.Expression.LessThanOrEqual(value, System.Linq.Expressions.Expression.Constant(limits.ToSi)));
        }
        return new Emitted(value);
    }

    private static Emitted Read(ConeInput input, Dictionary<int, Emitted> cells)
    {
        if (input.Run is { } run)
        {
            if (run.Any(member => member.Cell >= 0)) throw new NoKernelException("A run of cells over varied values has no form in a kernel.");
            return Run(input.Reference, run);
        }
        if (input.Cell >= 0) return cells[input.Cell];
        return input.Constant is { } constant ? Emitted.Of(constant) : throw new NoKernelException("It reads a cell without a value.");
    }

    private static Emitted Run(CellReference reference, ImmutableArray<ConeInput> run)
    {
        if (run.Any(member => member.Constant is null)) throw new NoKernelException("It reads a cell without a value.");
        return Emitted.Of(RunSeries.Of(reference, run.Select(member => (member.Id, member.Constant!))));
    }

    private static bool[] Needed(Cone cone, int shown)
    {
        bool[] needed = new bool[shown + 1];
        needed[shown] = true;
        for (int i = shown; i >= 0; i--)
        {
            if (!needed[i]) continue;
            foreach (ConeInput member in cone.Cells[i].Inputs.SelectMany(input => input.Run ?? [input]))
                if (member.Cell >= 0) needed[member.Cell] = true;
        }
        return needed;
    }
}
