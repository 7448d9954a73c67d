using ScrewSheet.Mechanics.Anchors;
using ScrewSheet.Mechanics.Tests.LeverArm;
using static ScrewSheet.Mechanics.Tests.LeverArm.In;

namespace ScrewSheet.Mechanics.Tests.Anchors;

/// <summary>Questions asked in public that a function or its caution answers; numbered as in docs/pitfalls-anchors.md.</summary>
public sealed class AnchorPitfalls
{
    [Theory]
    [InlineData(60, 15)]
    [InlineData(90, 41)]
    [InlineData(120, 100)]
    public void Pitfall13_WhatAnAngleCostsOverHalfTheLoad(double angle, double percent) =>
        Assert.Equal(percent, 100 * ((EqualLegs.LegShare(Deg(angle)) / 0.5) - 1), 0);

    [Fact]
    public void Pitfall13_SixtyDegreesIsNoLimit_ButBeyond120EachLegCarriesMoreThanAll()
    {
        Assert.Equal("", DeclaredText.Cautions(nameof(EqualLegs.LegTension), KN(1), Deg(61)));
        Assert.Equal("", DeclaredText.Cautions(nameof(EqualLegs.LegTension), KN(1), Deg(120)));
        Assert.Contains("more than the whole load", DeclaredText.Cautions(nameof(EqualLegs.LegTension), KN(1), Deg(121)), StringComparison.Ordinal);
    }

    [Fact]
    public void Pitfall14_NarrowTiedLegsShareBadlyWhenThePullWanders()
    {
        double Unevenness(double included) => UnequalLegs.OffAxisLegs(KN(1), Deg(included), Deg(5)).First / UnequalLegs.OffAxisLegs(KN(1), Deg(included), Deg(5)).Second;
        Assert.True(Unevenness(15) > Unevenness(30) && Unevenness(30) > Unevenness(60));
        Assert.Contains("share badly", DeclaredText.Cautions(nameof(UnequalLegs.OffAxisLegs), KN(1), Deg(30), Deg(5)), StringComparison.Ordinal);
        Assert.Contains("share badly", DeclaredText.Cautions(nameof(EqualLegs.LegTension), KN(1), Deg(10)), StringComparison.Ordinal);
    }

    [Fact]
    public void Pitfall15_TheNameOfTheParameterSaysWhichAngleItIs()
    {
        string[] names = [.. DeclaredText.Callables.Where(method => method.DeclaringType == typeof(EqualLegs)).SelectMany(method => method.GetParameters())
            .Where(parameter => parameter.ParameterType == typeof(UnitsNet.Angle)).Select(parameter => parameter.Name!).Distinct().Order()];
        Assert.Equal(["fromHorizontal", "includedAngle"], names);
        Assert.NotEqual(EqualLegs.LegTension(KN(1), Deg(40)).Newtons, EqualLegs.LegTensionFromHorizontal(KN(1), Deg(40)).Newtons, 0);
    }

    [Fact]
    public void Pitfall16_ThreeLegsAreNotAThirdEach()
    {
        LegSharing tied = StiffnessSharing.ShareParallel(KN(9), Metres(0.3, 0.5, 0.8), Kilonewtons(100, 100, 100));
        Assert.Equal(1, tied.LargestLeg);
        Assert.True(tied.Largest > KN(4.5));
        Assert.True(SlidingRigs.SlidingThreeLegs(KN(9), Deg(30)) > KN(3));
        Assert.Equal(3, SlidingRigs.SlidingThreeLegs(KN(9), Deg(0)).Kilonewtons, 12);
    }

    [Fact]
    public void Pitfall17_ASlidingRigSharesPartlyAndExtends()
    {
        FrictionLegs legs = SlidingRigs.SlidingLegsWithFriction(KN(10), Deg(60), 0.25, Deg(120));
        Assert.True(legs.Heavier > 1.5 * legs.Lighter);
        Assert.Contains("extends when a leg fails", DeclaredText.Cautions(nameof(SlidingRigs.SlidingLegs), KN(10), Deg(60)), StringComparison.Ordinal);
        Assert.True(LegFailure.SlidingDrop(M(0.4), Deg(60)) > 8 * LegFailure.FixedLegDrop(M(0.4), Deg(60)));
    }

    [Fact]
    public void Pitfall18_AFlatLineOfRealCordHasAFiniteTensionAndItsAngleCloses()
    {
        LoadedLine line = TensionedLines.StretchedLine(KN(1), M(10), M(10), KN(100));
        Assert.Equal(2.347828, line.Tension.Kilonewtons, 5);
        Assert.True(line.IncludedAngle < Deg(170));
        Assert.True(TensionedLines.StretchedLine(KN(1), M(10), M(10), KN(1e6)).Tension > 20 * line.Tension);
        Assert.Equal("includedAngle must be less than 180 °; it is 180 °.", Assert.Throws<Quantities.Declarations.DomainException>(() => EqualLegs.LegTension(KN(1), Deg(180))).Message);
    }

    [Fact]
    public void CommonCause_IsAlwaysCautioned() => Assert.Contains("common cause", string.Join(" ",
        DeclaredText.Callables.Where(method => method.Name is nameof(LegFailure.AllLegsFail) or nameof(Redundancy.OneLegOut))
            .SelectMany(method => method.GetCustomAttributes(typeof(Quantities.Declarations.CautionWhenAttribute), false)).Cast<Quantities.Declarations.CautionWhenAttribute>()
            .Where(caution => caution.Condition == "true").Select(caution => caution.Sentence)), StringComparison.Ordinal);

    [Fact]
    public void ClosedFunctions_AllocateNothing()
    {
        UnitsNet.Force load = KN(8), off = KN(1);
        UnitsNet.Angle angle = Deg(60), swing = Deg(5);
        UnitsNet.Length outer = Mm(17), wall = Mm(1.5), arm = Mm(50), span = M(10), sag = M(0.4);
        UnitsNet.Pressure strength = MPa(500);
        void Once()
        {
            _ = EqualLegs.LegTension(load, angle);
            _ = UnequalLegs.OffAxisLegs(load, angle, swing).First;
            _ = TensionedLines.LineTension(load, span, sag);
            _ = Mechanics.LeverArm.SectionStrength.PlasticMoment(Mechanics.LeverArm.TubeSections.Tube(outer, wall).PlasticModulus, strength);
            _ = Mechanics.LeverArm.CombinedStresses.CombinedStress(off, load, Mechanics.LeverArm.Bending.BendingMoment(load, arm), outer, wall).Governing;
            _ = Mechanics.LeverArm.HingeLoads.HingeLoad(outer, wall, strength, arm, swing);
        }
        for (int warm = 0; warm < 50; warm++) Once();
        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int call = 0; call < 100; call++) Once();
        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }
}
