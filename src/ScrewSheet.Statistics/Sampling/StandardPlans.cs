using System.Collections.Frozen;
using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Statistics.Common;

namespace ScrewSheet.Statistics;

/// <summary>How searching an inspection is.</summary>
[SheetOption("inspection level of ISO 2859-1")]
public enum InspectionLevel
{
    /// <summary>General level I: fewer pieces.</summary>
    General1,

    /// <summary>General level II: the usual one.</summary>
    General2,

    /// <summary>General level III: more pieces.</summary>
    General3,

    /// <summary>Special level S-1: very few pieces, as for destructive tests.</summary>
    Special1,
}

/// <summary>A row of the standard's table, arrows followed.</summary>
/// <param name="Letter">The code letter.</param>
/// <param name="SampleSize">How many pieces are tested.</param>
/// <param name="AcceptanceNumber">The largest number of failing pieces with which the lot is accepted.</param>
/// <param name="Cautions">What the plan does not promise.</param>
[SheetRecord("A single-sampling plan of ISO 2859-1, normal inspection")]
public sealed record StandardPlan(
    [property: Member("", "", "code letter")] string Letter,
    [property: Member("n", "", "pieces tested")] double SampleSize,
    [property: Member("Ac", "", "failing pieces still accepted")] double AcceptanceNumber,
    IReadOnlyList<string> Cautions) : ICautioned;

/// <summary>Rows of ISO 2859-1 (the same scheme as MIL-STD-105E): single sampling, normal inspection.</summary>
public static class StandardPlans
{
    private static readonly double[] Qualities = [0.0065, 0.010, 0.015, 0.025, 0.040, 0.065];
    private static readonly int[] LotEnds = [8, 15, 25, 50, 90, 150, 280, 500, 1200, 3200, 10000, 35000];

    private static readonly FrozenDictionary<InspectionLevel, string> Letters = new Dictionary<InspectionLevel, string>
    {
        [InspectionLevel.General1] = "AABCCDEFGHJK",
        [InspectionLevel.General2] = "ABCDEFGHJKLM",
        [InspectionLevel.General3] = "BCDEFGHJKLMN",
        [InspectionLevel.Special1] = "AAAABBBBCCCC",
    }.ToFrozenDictionary();

    /// <summary>Sample size and acceptance number by letter, in the order of the qualities, arrows followed.</summary>
    private static readonly FrozenDictionary<char, (int N, int Ac)[]> Rows = new Dictionary<char, (int N, int Ac)[]>
    {
        ['B'] = [(20, 0), (13, 0), (8, 0), (5, 0), (3, 0), (2, 0)],
        ['C'] = [(20, 0), (13, 0), (8, 0), (5, 0), (3, 0), (8, 1)],
        ['D'] = [(20, 0), (13, 0), (8, 0), (5, 0), (13, 1), (8, 1)],
        ['E'] = [(20, 0), (13, 0), (8, 0), (20, 1), (13, 1), (13, 2)],
        ['F'] = [(20, 0), (13, 0), (32, 1), (20, 1), (20, 2), (20, 3)],
        ['G'] = [(20, 0), (50, 1), (32, 1), (32, 2), (32, 3), (32, 5)],
        ['H'] = [(80, 1), (50, 1), (50, 2), (50, 3), (50, 5), (50, 7)],
        ['J'] = [(80, 1), (80, 2), (80, 3), (80, 5), (80, 7), (80, 10)],
        ['K'] = [(125, 2), (125, 3), (125, 5), (125, 7), (125, 10), (125, 14)],
        ['L'] = [(200, 3), (200, 5), (200, 7), (200, 10), (200, 14), (200, 21)],
    }.ToFrozenDictionary();

    /// <summary>The code letter for a lot of 2 to 35,000.</summary>
    [Callable(Topics.Sampling, "Which code letter does the standard give a lot of this size?")]
    [NoFormula("a row of the standard's table 1")]
    [Source(Works.Iso2859, Standing.SecondHand)]
    [Example("SampleSizeLetter(120)", "F")]
    public static string SampleSizeLetter(
        [Parameter("N", "", Says.Lot, AtLeast = 2, AtMost = 35000)] double lotSize,
        [Parameter("level", "", "the inspection level")] InspectionLevel level = InspectionLevel.General2)
    {
        int lot = Values.Whole(lotSize, 2, nameof(lotSize));
        Require.AtMost(lot, 35000, "", nameof(lotSize));
        if (!Letters.TryGetValue(level, out string? letters)) throw new DomainException("level must be one of the inspection levels.", nameof(level));
        return letters[Array.FindIndex(LotEnds, end => lot <= end)].ToString();
    }

    /// <summary>The plan of the standard for normal inspection, for an AQL of 0.65, 1.0, 1.5, 2.5, 4.0 or 6.5 %; letters B to L.</summary>
    [Callable(Topics.Sampling, "Which single-sampling plan does the standard give (normal inspection)?", Assumes = "A series of lots from one maker, with the switching rules of the standard in use.",
        NotFor = "A lone lot, or safety-critical strength: an AQL of 1 % accepts lots in which one piece in a hundred is too weak.")]
    [NoFormula("rows of the standard's tables 1 and 2-A, arrows followed (an arrow changes n as well as Ac)")]
    [Source(Works.Iso2859, Standing.SecondHand)]
    [Example("StandardSamplingPlan(5000, 0.015).SampleSize", "200")]
    public static StandardPlan StandardSamplingPlan(
        [Parameter("N", "", Says.Lot, AtLeast = 2, AtMost = 35000)] double lotSize,
        [Parameter("AQL", "", "the acceptance quality limit, one of 0.65 %, 1 %, 1.5 %, 2.5 %, 4 % and 6.5 %", Above = 0, Below = 1)] double quality,
        [Parameter("level", "", "the inspection level")] InspectionLevel level = InspectionLevel.General2)
    {
        string letter = SampleSizeLetter(lotSize, level);
        Values.Share(quality, nameof(quality));
        int column = Array.FindIndex(Qualities, each => Math.Abs(each - quality) < 1e-9);
        if (column < 0) throw new DomainException("quality must be an AQL of the table: 0.65 %, 1 %, 1.5 %, 2.5 %, 4 % or 6.5 %.", nameof(quality));
        if (!Rows.TryGetValue(letter[0], out (int N, int Ac)[]? row))
            throw new DomainException($"The rows of code letter {letter} are not held here; they are for letters B to L.", nameof(lotSize));
        (int n, int ac) = row[column];
        bool all = n >= lotSize;
        return new StandardPlan(letter, all ? lotSize : n, ac, CautionList.Of(
            (all, "The plan asks for at least as many pieces as the lot holds: test them all. With destructive tests such a lot cannot be judged by this plan."),
            (true, "With destructive tests the tested pieces are gone: only the rest of the lot is accepted.")));
    }
}
