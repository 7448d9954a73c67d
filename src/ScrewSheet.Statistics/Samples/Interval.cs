using ScrewSheet.Quantities.Declarations;

namespace ScrewSheet.Statistics;

/// <summary>A two-sided confidence interval.</summary>
/// <typeparam name="T">The kind of its ends.</typeparam>
/// <param name="Lower">Lower end.</param>
/// <param name="Upper">Upper end.</param>
/// <param name="Confidence">How often intervals made so cover the true value, 0 to 1.</param>
[SheetRecord("A two-sided confidence interval")]
public sealed record Interval<T>(
    [property: Member("", "", "lower end")] T Lower,
    [property: Member("", "", "upper end")] T Upper,
    [property: Member("C", "", "confidence, 0 to 1")] double Confidence) where T : struct;
