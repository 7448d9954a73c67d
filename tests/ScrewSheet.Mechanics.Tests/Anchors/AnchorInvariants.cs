using CsCheck;
using ScrewSheet.Mechanics.Anchors;
using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;
using UnitsNet;
using static ScrewSheet.Mechanics.Tests.LeverArm.In;

namespace ScrewSheet.Mechanics.Tests.Anchors;

public sealed class AnchorInvariants
{
    private static readonly Gen<double> Load = Gen.Double[0.1, 50];

    [Fact]
    public void Share_IsHalfAtZeroAngleAndOneAt120Degrees()
    {
        Assert.Equal(0.5, EqualLegs.LegShare(Deg(0)));
        Assert.Equal(1, EqualLegs.LegShare(Deg(120)), 12);
    }

    [Fact]
    public void Share_GrowsWithTheAngle() => Gen.Select(Gen.Double[0, 178], Gen.Double[0.01, 1]).Sample((angle, more) => EqualLegs.LegShare(Deg(angle + more)) > EqualLegs.LegShare(Deg(angle)));

    [Fact]
    public void Share_HorizontalAndIncludedAngleAgreeWhenConverted() => Gen.Select(Load, Gen.Double[1, 90]).Sample((load, up) =>
        Close(EqualLegs.LegTensionFromHorizontal(KN(load), Deg(up)).Newtons, EqualLegs.LegTension(KN(load), EqualLegs.FromHorizontalToIncluded(Deg(up))).Newtons)
        && Close(EqualLegs.SlingFactor(Deg(up)) * EqualLegs.SlingCapacityFactor(Deg(up)), 1));

    [Fact]
    public void TwoLegs_HoldTheLoad() => Gen.Select(Load, Gen.Double[1, 100], Gen.Double[1, 75]).Sample((load, first, second) =>
    {
        LegPair legs = UnequalLegs.TwoLegs(KN(load), Deg(first), Deg(second));
        double a = first * Math.PI / 180, b = second * Math.PI / 180;
        return Close((legs.First.Newtons * Math.Cos(a)) + (legs.Second.Newtons * Math.Cos(b)), load * 1e3) && Math.Abs((legs.First.Newtons * Math.Sin(a)) - (legs.Second.Newtons * Math.Sin(b))) < 1e-6 * load * 1e3;
    });

    [Fact]
    public void TwoLegs_SwapWithTheirAngles_AndEqualOnesShareEvenly() => Gen.Select(Load, Gen.Double[1, 89], Gen.Double[1, 89]).Sample((load, first, second) =>
        UnequalLegs.TwoLegs(KN(load), Deg(first), Deg(second)).First.Equals(UnequalLegs.TwoLegs(KN(load), Deg(second), Deg(first)).Second, N(1e-6))
        && Close(UnequalLegs.TwoLegs(KN(load), Deg(first), Deg(first)).First.Newtons, EqualLegs.LegTension(KN(load), Deg(2 * first)).Newtons));

    [Fact]
    public void Bridle_IsTheTwoLegRuleInDistances() => Gen.Select(Load, Gen.Double[0.1, 5], Gen.Double[0.1, 5], Gen.Double[0.1, 5]).Sample((load, d1, d2, height) =>
    {
        LegPair bridle = UnequalLegs.BridleLegs(KN(load), M(d1), M(d2), M(height));
        LegPair angles = UnequalLegs.TwoLegs(KN(load), Angle.FromRadians(Math.Atan2(d1, height)), Angle.FromRadians(Math.Atan2(d2, height)));
        LegPair line = TensionedLines.LineTensions(KN(load), M(d1 + d2), M(d1), M(height));
        return Close(bridle.First.Newtons, angles.First.Newtons) && Close(bridle.Second.Newtons, angles.Second.Newtons) && Close(line.First.Newtons, angles.First.Newtons) && Close(line.Second.Newtons, angles.Second.Newtons);
    });

    [Fact]
    public void OffAxis_WithoutSwingIsAnEvenShare_AndTheNearLegNeverCarriesLess() => Gen.Select(Load, Gen.Double[1, 170], Gen.Double[0, 80]).Sample((load, included, swing) =>
    {
        LegPair still = UnequalLegs.OffAxisLegs(KN(load), Deg(included), Deg(0)), swung = UnequalLegs.OffAxisLegs(KN(load), Deg(included), Deg(swing));
        return Close(still.First.Newtons, EqualLegs.LegTension(KN(load), Deg(included)).Newtons) && Close(still.Second.Newtons, still.First.Newtons)
            && (included > 90 || swung.First >= swung.Second) && swung.Second >= Force.Zero;
    });

    [Fact]
    public void Line_SagSpanAndTensionAreOneRelation() => Gen.Select(Load, Gen.Double[1, 100], Gen.Double[0.05, 20]).Sample((load, span, sag) =>
    {
        Force tension = TensionedLines.LineTension(KN(load), M(span), M(sag));
        return Close(TensionedLines.LineSag(KN(load), M(span), tension).Meters, sag, 1e-7) && Close(TensionedLines.LineSpan(KN(load), tension, M(sag)).Meters, span, 1e-7)
            && Close(TensionedLines.LineTensions(KN(load), M(span), M(span / 2), M(sag)).First.Newtons, tension.Newtons);
    });

    [Fact]
    public void Line_TensionUpToHalfTheLoad_IsRefused() =>
        Assert.Equal("tension must be greater than 0.5 kN; it is 0.5 kN.", Assert.Throws<DomainException>(() => TensionedLines.LineSag(KN(1), M(10), KN(0.5))).Message);

    [Fact]
    public void StretchedLine_BalancesLoadAndStretch() => Gen.Select(Load, Gen.Double[1, 50], Gen.Double[0.9, 1.2], Gen.Double[20, 5000]).Sample((load, span, part, stiffness) =>
    {
        LoadedLine line = TensionedLines.StretchedLine(KN(load), M(span), M(span * part), KN(stiffness));
        double length = 2 * Math.Sqrt(Math.Pow(span / 2, 2) + Math.Pow(line.Sag.Meters, 2));
        return Math.Abs(line.Tension.Kilonewtons - (stiffness * ((length / (span * part)) - 1))) < 1e-6 * stiffness
            && Close(TensionedLines.LineTension(KN(load), M(span), line.Sag).Newtons, line.Tension.Newtons) && Close(EqualLegs.LegTension(KN(load), line.IncludedAngle).Newtons, line.Tension.Newtons, 1e-6);
    });

    [Fact]
    public void Sliding_WithoutFrictionBothLegsPullAlike_AndWithItTheyStillHoldTheLoad() => Gen.Select(Load, Gen.Double[0, 170], Gen.Double[0, 1], Gen.Double[0, 360]).Sample((load, included, friction, wrap) =>
    {
        FrictionLegs free = SlidingRigs.SlidingLegsWithFriction(KN(load), Deg(included), 0, Deg(wrap)), held = SlidingRigs.SlidingLegsWithFriction(KN(load), Deg(included), friction, Deg(wrap));
        double a = held.Heavier.Newtons, b = held.Lighter.Newtons;
        return Close(free.Heavier.Newtons, EqualLegs.LegTension(KN(load), Deg(included)).Newtons) && Close(free.Lighter.Newtons, free.Heavier.Newtons)
            && Close(Math.Sqrt((a * a) + (b * b) + (2 * a * b * Math.Cos(included * Math.PI / 180))), load * 1e3) && a >= b;
    });

    [Fact]
    public void SlidingLine_OfTwoOrThreeLegsIsTheClosedRule() => Gen.Select(Load, Gen.Double[0, 85], Gen.Double[-180, 180]).Sample((load, side, turn) =>
        Close(SlidingRigs.SlidingLine(KN(load), Degrees(turn - side, turn, turn + side)).Newtons, SlidingRigs.SlidingThreeLegs(KN(load), Deg(side)).Newtons)
        && Close(SlidingRigs.SlidingLine(KN(load), Degrees(turn - side, turn + side)).Newtons, SlidingRigs.SlidingLegs(KN(load), Deg(2 * side)).Newtons));

    [Fact]
    public void SlidingLine_OfLegsThatCancel_IsRefused() =>
        Assert.StartsWith("legs must not cancel", Assert.Throws<DomainException>(() => SlidingRigs.SlidingLine(KN(1), Degrees(0, 180))).Message, StringComparison.Ordinal);

    [Fact]
    public void Drop_OfKnottedLegsLiesBetweenTiedAndSliding() => Gen.Select(Gen.Double[0.05, 3], Gen.Double[1, 170], Gen.Double[0, 3]).Sample((spacing, angle, knot) =>
    {
        double tied = LegFailure.FixedLegDrop(M(spacing), Deg(angle)).Meters, limited = LegFailure.LimiterDrop(M(spacing), Deg(angle), M(knot)).Meters, sliding = LegFailure.SlidingDrop(M(spacing), Deg(angle)).Meters;
        return tied <= limited && limited <= sliding && limited <= tied + knot + 1e-12 && Close(LegFailure.LimiterDrop(M(spacing), Deg(angle), M(0)).Meters, tied);
    });

    [Fact]
    public void Shock_WithoutDropIsTwiceTheWeight_AndGrowsWithDropAndStiffness() => Gen.Select(Gen.Double[1, 200], Gen.Double[1, 500], Gen.Double[0, 2], Gen.Double[0.01, 1]).Sample((mass, stiffness, drop, more) =>
    {
        double At(double k, double x) => LegFailure.ShockBound(Mass.FromKilograms(mass), KNm(k), M(x)).Newtons;
        double peak = At(stiffness, drop), stretch = peak / (stiffness * 1e3);
        return Close(At(stiffness, 0), 2 * mass * 9.80665) && At(stiffness, drop + more) > peak && (drop < 1e-6 || At(stiffness * 2, drop) > peak)
            && Close(mass * 9.80665 * (drop + stretch), 0.5 * stiffness * 1e3 * stretch * stretch, 1e-9); // energy balance
    });

    [Fact]
    public void AllLegsFail_IsTheProduct() => Assert.Equal(0.0002, LegFailure.AllLegsFail(Series.OfNumbers([0.01, 0.02])), 15);
}
