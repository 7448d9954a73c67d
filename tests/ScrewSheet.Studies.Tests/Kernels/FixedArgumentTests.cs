using ScrewSheet.Studies.Tables;
using ScrewSheet.Studies.Tests.Support;

namespace ScrewSheet.Studies.Tests.Kernels;

/// <summary>An argument that stays the same in every scenario may be beyond its limits too, by itself or by another cell.</summary>
public sealed class FixedArgumentTests
{
    [Theory]
    [InlineData("FallFactor(u, -0.25 * 59 mm)", "u: 0 mm to 80 mm step 16 mm")]
    [InlineData("FallFactor(u, far)", "u: 0 mm to 80 mm step 16 mm")]
    [InlineData("Math.Min(FallFactor(u - 70 mm, far), 3)", "u: 0 mm to 80 mm step 16 mm")]
    [InlineData("FallFactor(far, u)", "u: 16 mm to 80 mm step 16 mm")]
    [InlineData("ImpactForce(heavy, 20 kN, u / 40 mm)", "u: 16 mm to 80 mm step 16 mm")]
    [InlineData("LegTension(pull, u / 40 mm * 200 °)", "u: 16 mm to 80 mm step 16 mm")]
    [InlineData("LegTension(pull * (u / 40 mm), 200 °)", "u: 16 mm to 80 mm step 16 mm")]
    [InlineData("LegTension(pull * (u / 40 mm), 60 °)", "u: 16 mm to 80 mm step 16 mm")]
    [InlineData("BenardRank(half, 10) * (u / 40 mm)", "u: 16 mm to 80 mm step 16 mm")]
    [InlineData("BenardRank(3 * (u / 16 mm), half)", "u: 16 mm to 80 mm step 16 mm")]
    [InlineData("u > 40 mm ? FallFactor(u, far) : 1", "u: 16 mm to 80 mm step 16 mm")]
    [InlineData("u > 40 mm && FallFactor(u, far) > 1", "u: 16 mm to 80 mm step 16 mm")]
    public void BeyondItsLimits_IsAFaultInEveryEntryThatReachesIt(string expression, string vary)
    {
        StudyBook sheet = StudyBook.Of("A1 u = 40 mm", "A2 far = -2 m", "A3 heavy = -80 kg", "A4 pull = 1 kN", "A5 half = 2.5", $"B1 c => {expression}");
        sheet.IsWhatOpeningGives(sheet.Made("c", StudyMethod.Kernel, vary));
    }
}
