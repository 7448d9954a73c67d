using System.Collections.Immutable;
using ScrewSheet.Studies.Tests.Support;
using ScrewSheet.Studies.Uncertainty;

namespace ScrewSheet.Studies.Tests.Uncertainty;

/// <summary>Another seed is a second opinion: it must not draw what the first one drew, in whatever order.</summary>
public sealed class SeedTests
{
    private const int Streams = 1024;

    private static readonly ImmutableArray<ulong> Seeds =
        [.. Enumerable.Range(0, 40).Select(seed => (ulong)seed), 1UL << 16, 1UL << 31, 1UL << 32, (1UL << 32) + 1, 1UL << 33, 1UL << 63, ulong.MaxValue];

    [Fact]
    public void BlocksOfOneStudy_HaveStreamsOfTheirOwn() => Assert.All(Seeds, seed => Assert.Equal(Streams, StreamsOf(seed).Count));

    // of 1,024 among 2³² two seeds share one by chance in 4,100 pairs; three are out of the question
    [Fact]
    public void TwoSeeds_ShareNoStreams()
    {
        HashSet<int>[] streams = [.. Seeds.Select(StreamsOf)];
        for (int i = 0; i < streams.Length; i++)
            for (int j = 0; j < i; j++)
                Assert.True(streams[i].Count(streams[j].Contains) <= 2, $"seeds {Seeds[i]} and {Seeds[j]}");
    }

    [Fact]
    public void SeedsThatDifferInOneBit_GiveOtherEstimates()
    {
        double[] means = [.. Enumerable.Range(0, 12).Select(bit => Mean(7 ^ (1UL << bit))).Append(Mean(7))];
        Assert.Equal(means.Length, means.Select(mean => Math.Round(mean, 9)).Distinct().Count());
    }

    private static HashSet<int> StreamsOf(ulong seed) => [.. Enumerable.Range(0, Streams).Select(block => Draws.SeedOf(seed, (uint)block))];

    private static double Mean(ulong seed)
    {
        StudyBook sheet = StudyBook.Of("A1 a = 0 ± 1 k=1\nA2 y => a + 1");
        return sheet.Runner.Uncertainty(sheet.Calculation, new UncertaintyRequest { Cell = StudyBook.At("y"), Samples = 4 * Draws.Block, Seed = seed }).Answer!.MonteCarlo!.Mean;
    }
}
