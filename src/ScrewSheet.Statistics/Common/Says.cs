namespace ScrewSheet.Statistics.Common;

/// <summary>What parameters mean, in the same words wherever they occur.</summary>
internal static class Says
{
    public const string Sample = "the test results, one value a specimen, all of one kind";
    public const string Count = "how many specimens were tested";
    public const string Content = "the share of the population that the limit is to leave on its good side, 0 to 1";
    public const string Confidence = "how sure the statement is to be, 0 to 1";
    public const string Fraction = "the share of the population that breaks below the value, 0 to 1";
    public const string Deviation = "the standard deviation, with divisor n - 1 where it comes from a sample";
    public const string Censored = "for each value 1 where the specimen was taken off unbroken at it, 0 where it broke there";
    public const string Groups = "for each value the number of its group, such as 1 for the first design and 2 for the second";
    public const string Shape = "the Weibull shape: the larger, the less scatter";
    public const string Scale = "the characteristic strength: 63.2 % break below it";
    public const string PlanSize = "how many pieces of the lot are tested";
    public const string PlanNumber = "the largest number of failing pieces with which the lot is still accepted";
    public const string Defective = "the share of failing pieces in the process, 0 to 1 (an AQL of 1.5 % is 0.015)";
    public const string Lot = "how many pieces the lot holds";
    public const string X = "the values along the abscissa, one a reading";
    public const string Y = "the values measured there, one a reading";
}
