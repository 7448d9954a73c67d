using UnitsNet;
using static ScrewSheet.Mechanics.Tests.PlacementChecks;

namespace ScrewSheet.Mechanics.Tests;

/// <summary>What the trade knows without a source: common practice.</summary>
[Trait("Standing", "common practice")]
public sealed class TradeFactTests
{
    private static PlacementAssessment Assess(ScrewPlacement placement) => Placements.AssessPlacement(placement, Kn(8));

    [Theory]
    [InlineData(30)]
    [InlineData(40)]
    [InlineData(50)]
    public void ATenCentimetreScrewThatLosesThreeToFive_ComesOutAsSoonAsItBendsWhereALongOneOnlyBends(double iceLost)
    {
        PlacementAssessment shortScrew = Assess(Worked(100, iceLost)), longScrew = Assess(Worked(220, iceLost));
        Assert.True(shortScrew.ComesOut.Resistance.Newtons <= 1.1 * shortScrew.HingeInIce.Force.Newtons);
        Assert.True(longScrew.ComesOut.Resistance.Newtons >= 2 * longScrew.HingeInIce.Force.Newtons);
    }

    [Fact]
    public void ALongerBody_IsNotStrongerInBending()
    {
        PlacementAssessment[] lengths = [.. new[] { 100.0, 130, 160, 190, 220 }.Select(length => Assess(Worked(length, 40)))];
        Assert.All(lengths, found => Assert.Equal(lengths[0].HingeInIce.Force.Newtons, found.HingeInIce.Force.Newtons, 1e-9));
        Assert.All(lengths, found => Assert.Equal(lengths[0].FirstYield.Force.Newtons, found.FirstYield.Force.Newtons, 1e-9));
        Assert.All(lengths, found => Assert.Equal(lengths[0].PlasticHinge.Force.Newtons, found.PlasticHinge.Force.Newtons, 1e-9));
    }

    [Fact]
    public void AfterYield_SteelCarriesMoreThanAluminium()
    {
        PlacementAssessment steel = Assess(First with { UltimateStrain = 0.20 });
        PlacementAssessment soft = Assess(Worked(130, 40, material: Materials.Aluminium6061T6) with { UltimateStrain = 0.08 });
        PlacementAssessment hard = Assess(Worked(130, 40, material: Materials.Aluminium7075T6) with { UltimateStrain = 0.08 });
        double AfterYield(PlacementAssessment found) => found.Tearing.Force / found.PlasticHinge.Force;
        Assert.True(AfterYield(steel) > AfterYield(soft) && AfterYield(steel) > AfterYield(hard));
        Assert.True(steel.Tearing.Force > hard.Tearing.Force && steel.Tearing.Force > soft.Tearing.Force);
    }

    [Theory]
    [InlineData(10, false)]
    [InlineData(15, false)]
    [InlineData(16, true)]
    [InlineData(-5, true)]
    public void ASetAngleOfTenToFifteenPositive_IsGoodPractice(double degrees, bool cautioned) =>
        Assert.Equal(cautioned, Assess(Worked(160, 40, degrees: degrees)).Cautions.Any(said => said.Contains("set angle", StringComparison.OrdinalIgnoreCase)));

    [Fact]
    public void APlacementThatLosesNoIce_IsRemindedOfThreeToFiveCentimetres() =>
        Assert.Contains("No ice is taken as lost; 30 to 50 mm of cone-out are common practice.", Assess(Worked(160, 0)).Cautions);

    [Fact]
    public void TheShortScrew_KeepsAboutHalfItsThread()
    {
        PlacementAssessment found = Assess(Worked(100, 40));
        Assert.InRange(found.EngagedThread.Millimeters / 90, 0.45, 0.6);
    }

    [Fact]
    public void TheRatingOfTheScrew_SaysNothingOfTheIce()
    {
        ScrewPlacement rated = Worked(100, 40) with { HangerRating = Force.FromKilonewtons(10) };
        Assert.True(Assess(rated).ComesOut.Resistance.Kilonewtons < 10);
    }

    /// <summary>Semmel and Stopper, DAV Panorama 2/2005 (summary): natural waterfall ice without voids, slow radial pull, 16 cm about 22.8 kN, 10 cm about 10 kN.</summary>
    [Theory]
    [InlineData(100, 10)]
    [InlineData(160, 22.8)]
    public void OurCapacities_LieBelowPullTestsInGoodIce(double length, double measured) =>
        Assert.True(Assess(Worked(length, 40)).ComesOut.Resistance.Kilonewtons < measured);
}
