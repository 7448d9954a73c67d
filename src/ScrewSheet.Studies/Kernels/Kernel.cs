namespace ScrewSheet.Studies.Kernels;

/// <summary>One loop over scenarios, from values of varied givens to one shown result, all in coherent SI.</summary>
/// <param name="inputs">The values of each varied given, one array each.</param>
/// <param name="output">The results; a check is 1 or 0; NaN where there is a fault.</param>
/// <param name="faults">0, or where in the kernel the fault arose; must be zero on entry.</param>
/// <param name="tally">Counts cautions.</param>
/// <param name="from">The first scenario.</param>
/// <param name="to">The scenario after the last.</param>
internal delegate void KernelLoop(double[][] inputs, double[] output, int[] faults, CautionTally tally, int from, int to);

/// <summary>A compiled kernel.</summary>
/// <param name="Run">The loop.</param>
/// <param name="Cautions">The sentences of the bits of a mask, in order.</param>
/// <param name="Always">The bits of the cautions every scenario without a fault has; the loop does not count them.</param>
/// <param name="Operations">How many operations are left in the loop.</param>
internal sealed record Kernel(KernelLoop Run, IReadOnlyList<string> Cautions, long Always, int Operations);

/// <summary>Counts in how many scenarios each caution applied.</summary>
internal sealed class CautionTally
{
    private readonly long[] counts = new long[64];

    /// <summary>How often, by bit.</summary>
    public IReadOnlyList<long> Counts => counts;

    /// <summary>One scenario with these cautions; called by kernels.</summary>
    public void Add(long mask)
    {
        for (int bit = 0; mask != 0; bit++, mask = (long)((ulong)mask >> 1))
            if ((mask & 1) != 0) counts[bit]++;
    }
}

/// <summary>Says that an operation has no form in a kernel; the study is then done cell by cell.</summary>
internal sealed class NoKernelException(string reason) : Exception(reason);
