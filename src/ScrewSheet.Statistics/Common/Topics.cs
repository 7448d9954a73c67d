namespace ScrewSheet.Statistics.Common;

/// <summary>The chapters of the catalogue that this library fills.</summary>
internal static class Topics
{
    public const string Samples = "Test statistics";
    public const string Ratings = "Ratings from tests";
    public const string DistributionFree = "Limits without a distribution";
    public const string Weibull = "Weibull strength";
    public const string Comparisons = "Comparing designs";
    public const string Outliers = "Outliers and normality";
    public const string Regression = "Straight lines and curves through data";
    public const string Sampling = "Acceptance sampling";
    public const string Control = "Control charts and capability";
    public const string Interference = "Strength against load";
    public const string Records = "Rig records";
}
