using System.Collections.Immutable;
using MathNet.Numerics.Random;

namespace ScrewSheet.Studies.Uncertainty;

/// <summary>Random draws of all givens, block by block: each block has a stream of its own, so it is the same whichever thread draws it.</summary>
/// <remarks>xoshiro256** (D. Blackman and S. Vigna, Scrambled linear pseudorandom number generators, ACM Transactions on Mathematical Software 47, 2021), as Math.NET has it.</remarks>
internal sealed class Draws
{
    /// <summary>How many draws a block has.</summary>
    public const int Block = 8192;

    private readonly Distribution[] distributions;
    private readonly Correlations correlations;
    private readonly ulong seed;

    public Draws(ImmutableArray<UncertainGiven> givens, Correlations correlations, ulong seed)
    {
        distributions = [.. givens.Select(given => new Distribution(given))];
        (this.correlations, this.seed) = (correlations, seed);
    }

    /// <summary>The share of each given's distribution its bounds cut off.</summary>
    public IReadOnlyList<double> CutOff => [.. distributions.Select(distribution => distribution.CutOff)];

    /// <summary>Draws a block.</summary>
    /// <param name="purpose">Which of several independent sets of draws, from 0 to 7.</param>
    /// <param name="block">Which block of it.</param>
    /// <param name="into">One array for each given.</param>
    /// <param name="count">How many draws.</param>
    public void Fill(int purpose, long block, double[][] into, int count)
    {
        Xoshiro256StarStar stream = new(SeedOf(seed, (uint)((block << 3) | (uint)purpose)), false);
        if (correlations.IsPlain)
        {
            for (int i = 0; i < count; i++)
                for (int given = 0; given < distributions.Length; given++) into[given][i] = distributions[given].OfProbability(Open(stream));
            return;
        }
        Span<double> scores = stackalloc double[distributions.Length];
        for (int i = 0; i < count; i++)
        {
            for (int given = 0; given < distributions.Length; given++) scores[given] = Quantiles.Z(Open(stream));
            for (int given = 0; given < distributions.Length; given++)
            {
                double z = 0;
                for (int k = 0; k <= given; k++) z += correlations.Root[given, k] * scores[k];
                into[given][i] = distributions[given].OfScore(z);
            }
        }
    }

    /// <summary>Between 0 and 1, neither included.</summary>
    private static double Open(Xoshiro256StarStar stream) => stream.NextDouble() + (1.0 / (1UL << 54));

    /// <summary>
    /// Another seed for each block. The seed of the study chooses both a multiplier, which is odd so that no two blocks of a study share a stream, and what is added: were it
    /// only added or combined by exclusive or, studies with neighbouring seeds would draw the same blocks in another order.
    /// </summary>
    internal static int SeedOf(ulong seed, uint block)
    {
        unchecked
        {
            uint low = Mixed((uint)seed + 0x9E3779B9), high = Mixed((uint)(seed >> 32) ^ low);
            return (int)Mixed((block * (high | 1)) + Mixed(low ^ (high << 16)));
        }
    }

    /// <summary>The finishing steps of MurmurHash3 (A. Appleby); they can be undone.</summary>
    private static uint Mixed(uint x)
    {
        unchecked
        {
            x = (x ^ (x >> 16)) * 0x85EBCA6B;
            x = (x ^ (x >> 13)) * 0xC2B2AE35;
            return x ^ (x >> 16);
        }
    }
}
