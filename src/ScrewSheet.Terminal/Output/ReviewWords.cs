using ScrewSheet.Workbooks.Reviewing;

namespace ScrewSheet.Terminal.Output;

/// <summary>What is said about reviews.</summary>
internal static class ReviewWords
{
    /// <summary>How much is reviewed: <c>1 of 2 reviewed.</c></summary>
    public static string Summary(ReviewTally tally) =>
        $"{(tally.Reviewed == 0 ? "None" : $"{tally.Reviewed}")} of {tally.Results} reviewed.{Broken(tally)}";

    /// <summary>How many marks no longer hold, after a blank; nothing where all do.</summary>
    public static string Broken(ReviewTally tally) => tally.Broken switch { 0 => "", 1 => " 1 review no longer holds.", _ => $" {tally.Broken} reviews no longer hold." };
}
