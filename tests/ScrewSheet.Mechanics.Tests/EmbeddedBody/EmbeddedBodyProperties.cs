using CsCheck;
using ScrewSheet.Quantities;
using UnitsNet;
using static ScrewSheet.Mechanics.Tests.EmbeddedBodyChecks;
using Quantity = ScrewSheet.Quantities.Quantity;

namespace ScrewSheet.Mechanics.Tests;

public sealed class EmbeddedBodyProperties
{
    private static readonly Gen<(double Arm, double Stiffness, double Rigidity)> Cases = Gen.Select(Gen.Double[0, 100], Gen.Double[100, 11000], Gen.Double[100, 1500]);

    private static Quantity Rigidity(double value) => Quantity.FromSi(value, Dimension.Of(3, 1, -2));

    private static bool Close(double a, double b, double relative) => Math.Abs(a - b) <= relative * Math.Max(Math.Abs(a), Math.Abs(b));

    [Fact]
    public void FiniteBody_MuchLongerThanItsCharacteristicLength_IsTheLongBody() =>
        Cases.Sample(c =>
        {
            double lambda = FoundationStiffness.CharacteristicLength(MPa(c.Stiffness), Rigidity(c.Rigidity)).Millimeters;
            BodyResponse finite = BodyUnderLoad.FiniteBody(Kilonewton, Mm(c.Arm), MPa(c.Stiffness), Rigidity(c.Rigidity), Mm(20 * lambda));
            BodyResponse endless = BodyUnderLoad.LongBody(Kilonewton, Mm(c.Arm), MPa(c.Stiffness), Rigidity(c.Rigidity));
            return Close(finite.HeadDeflection.Meters, endless.HeadDeflection.Meters, 1e-9) && Close(finite.HeadSlope.Radians, endless.HeadSlope.Radians, 1e-9)
                && Close(finite.MaxMoment.NewtonMeters, endless.MaxMoment.NewtonMeters, 1e-9) && Close(finite.MaxMomentDepth.Meters, endless.MaxMomentDepth.Meters, 1e-6)
                && Close(finite.PivotDepth.Meters, endless.PivotDepth.Meters, 1e-6) && Close(finite.LoadPointDeflection.Meters, endless.LoadPointDeflection.Meters, 1e-9);
        });

    [Fact]
    public void FiniteBody_OfAStiffShortBody_IsTheRigidBar() =>
        Cases.Sample(c =>
        {
            BodyResponse finite = BodyUnderLoad.FiniteBody(Kilonewton, Mm(c.Arm), MPa(c.Stiffness), Rigidity(c.Rigidity * 1e6), Mm(60));
            BodyResponse bar = BodyUnderLoad.RigidBody(Kilonewton, Mm(c.Arm), MPa(c.Stiffness), Mm(60));
            return Close(finite.HeadDeflection.Meters, bar.HeadDeflection.Meters, 1e-4) && Close(finite.TipDeflection.Meters, bar.TipDeflection.Meters, 1e-4)
                && Close(finite.MaxMoment.NewtonMeters, bar.MaxMoment.NewtonMeters, 1e-4) && Close(finite.PivotDepth.Meters, bar.PivotDepth.Meters, 1e-4)
                && Close(finite.MaxMomentDepth.Meters, bar.MaxMomentDepth.Meters, 1e-3);
        });

    [Fact]
    public void ContactPressureAlong_IntegratedOverTheBody_BalancesLoadAndMoment() =>
        Gen.Select(Cases, Gen.Double[40, 200]).Sample((c, length) =>
        {
            const int points = 2001;
            Series<Pressure> pressures = ContactPressures.ContactPressureAlong(Kilonewton, Mm(c.Arm), MPa(c.Stiffness), Rigidity(c.Rigidity), Mm(17), Mm(length), points);
            Series<Length> depths = ContactPressures.DepthsAlong(Mm(length), points);
            double force = 0, moment = 0, step = length / 1000 / (points - 1);
            for (int i = 0; i < points; i++)
            {
                double share = pressures.Si[i] * 0.017 * step / 3 * (i is 0 or points - 1 ? 1 : i % 2 == 1 ? 4 : 2);
                force += share;
                moment += share * (depths.Si[i] + (c.Arm / 1000));
            }
            return Math.Abs(force - 1000) < 1e-4 && Math.Abs(moment) < 1e-5;
        });

    [Fact]
    public void MomentAndShear_AtTheFace_AreThoseOfTheLoad() =>
        Cases.Sample(c =>
            Close(LongBodyAtDepth.LongBodyMoment(Kilonewton, Mm(c.Arm), MPa(c.Stiffness), Rigidity(c.Rigidity), Mm(0)).NewtonMeters, c.Arm, 1e-12)
            && Close(FiniteBodyAtDepth.FiniteBodyShear(Kilonewton, Mm(c.Arm), MPa(c.Stiffness), Rigidity(c.Rigidity), Mm(90), Mm(0)).Newtons, 1000, 1e-9)
            && Math.Abs(FiniteBodyAtDepth.FiniteBodyMoment(Kilonewton, Mm(c.Arm), MPa(c.Stiffness), Rigidity(c.Rigidity), Mm(90), Mm(90)).NewtonMeters) < 1e-9
            && Math.Abs(FiniteBodyAtDepth.FiniteBodyShear(Kilonewton, Mm(c.Arm), MPa(c.Stiffness), Rigidity(c.Rigidity), Mm(90), Mm(90)).Newtons) < 1e-6);

    [Fact]
    public void SlopeMomentAndShear_AreTheDerivativesOfTheDeflection() =>
        Gen.Select(Cases, Gen.Double[5, 85]).Sample((c, x) =>
        {
            const double h = 0.01;
            double Y(double at) => FiniteBodyAtDepth.FiniteBodyDeflection(Kilonewton, Mm(c.Arm), MPa(c.Stiffness), Rigidity(c.Rigidity), Mm(90), Mm(at)).Millimeters;
            double S(double at) => FiniteBodyAtDepth.FiniteBodySlope(Kilonewton, Mm(c.Arm), MPa(c.Stiffness), Rigidity(c.Rigidity), Mm(90), Mm(at)).Radians;
            double M(double at) => FiniteBodyAtDepth.FiniteBodyMoment(Kilonewton, Mm(c.Arm), MPa(c.Stiffness), Rigidity(c.Rigidity), Mm(90), Mm(at)).NewtonMeters;
            double v = FiniteBodyAtDepth.FiniteBodyShear(Kilonewton, Mm(c.Arm), MPa(c.Stiffness), Rigidity(c.Rigidity), Mm(90), Mm(x)).Newtons;
            return Math.Abs(S(x) + ((Y(x + h) - Y(x - h)) / (2 * h))) < 1e-6
                && Math.Abs(M(x) + (c.Rigidity * (S(x + h) - S(x - h)) / (2 * h / 1000))) < 1e-3
                && Math.Abs(v - ((M(x + h) - M(x - h)) / (2 * h / 1000))) < 1e-2;
        });

    [Fact]
    public void LongBody_TheGreatestMoment_ExceedsThatNearby() =>
        Gen.Select(Cases, Gen.Double[-8, 8]).Sample((c, off) =>
        {
            BodyResponse body = BodyUnderLoad.LongBody(Kilonewton, Mm(c.Arm), MPa(c.Stiffness), Rigidity(c.Rigidity));
            double beside = LongBodyAtDepth.LongBodyMoment(Kilonewton, Mm(c.Arm), MPa(c.Stiffness), Rigidity(c.Rigidity), Mm(Math.Max(0, body.MaxMomentDepth.Millimeters + off))).NewtonMeters;
            return beside <= body.MaxMoment.NewtonMeters * (1 + 1e-12);
        });

    [Fact]
    public void LongBody_WithTwiceTheLoad_AnswersTwiceAsMuch() =>
        Cases.Sample(c =>
        {
            BodyResponse once = BodyUnderLoad.LongBody(Kilonewton, Mm(c.Arm), MPa(c.Stiffness), Rigidity(c.Rigidity));
            BodyResponse twice = BodyUnderLoad.LongBody(2 * Kilonewton, Mm(c.Arm), MPa(c.Stiffness), Rigidity(c.Rigidity));
            return Close(twice.LoadPointDeflection.Meters, 2 * once.LoadPointDeflection.Meters, 1e-12) && Close(twice.MaxMoment.NewtonMeters, 2 * once.MaxMoment.NewtonMeters, 1e-12)
                && twice.MaxMomentDepth.Equals(once.MaxMomentDepth, Length.FromMillimeters(1e-9));
        });

    [Fact]
    public void LongBody_InUsUnits_GivesTheSameAnswer()
    {
        BodyResponse si = BodyUnderLoad.LongBody(Force.FromNewtons(4448.2216152605), Mm(50.8), MPa(6894.757293168), TubeS);
        BodyResponse us = BodyUnderLoad.LongBody(Force.FromPoundsForce(1000), Length.FromInches(2), Pressure.FromPoundsForcePerSquareInch(1e6), TubeS);
        Assert.Equal(si.MaxMoment.NewtonMeters, us.MaxMoment.NewtonMeters, 1e-9 * si.MaxMoment.NewtonMeters);
    }

    [Fact]
    public void LongBodyCrushing_InEverStrongerIce_TendsToTheHingeAtTheFace() =>
        Gen.Select(Gen.Double[10, 100], Gen.Double[50, 400]).Sample((arm, moment) =>
        {
            double limit = moment / (arm / 1000), below = 0;
            foreach (double strength in new[] { 1e1, 1e2, 1e3, 1e4, 1e5 })
            {
                double load = CrushingIce.LongBodyCrushing(MPa(strength), Mm(17), Torque.FromNewtonMeters(moment), Mm(arm)).Newtons;
                if (load <= below || load >= limit) return false;
                below = load;
            }
            return Close(below, limit, 0.005);
        });

    [Fact]
    public void Crushing_IsStrongerWithStrongerIceAndWeakerWithALongerArm() =>
        Gen.Select(Gen.Double[5, 25], Gen.Double[0, 100], Gen.Double[30, 200], Gen.Double[1.01, 3]).Sample((ice, arm, length, more) =>
        {
            Torque hinge = Torque.FromNewtonMeters(187);
            double turns = CrushingIce.ShortBodyCrushing(MPa(ice), Mm(17), Mm(length), Mm(arm)).Newtons, bends = CrushingIce.LongBodyCrushing(MPa(ice), Mm(17), hinge, Mm(arm)).Newtons;
            return CrushingIce.ShortBodyCrushing(MPa(ice * more), Mm(17), Mm(length), Mm(arm)).Newtons > turns
                && CrushingIce.ShortBodyCrushing(MPa(ice), Mm(17), Mm(length * more), Mm(arm)).Newtons > turns
                && CrushingIce.ShortBodyCrushing(MPa(ice), Mm(17), Mm(length), Mm((arm + 1) * more)).Newtons < turns
                && CrushingIce.LongBodyCrushing(MPa(ice * more), Mm(17), hinge, Mm(arm)).Newtons > bends
                && CrushingIce.LongBodyCrushing(MPa(ice), Mm(17), hinge, Mm((arm + 1) * more)).Newtons < bends;
        });

    [Fact]
    public void CrushingHingeDepth_TimesTheBearingForce_IsTheLoad() =>
        Gen.Select(Gen.Double[5, 25], Gen.Double[0, 100]).Sample((ice, arm) =>
            Close(CrushingIce.CrushingHingeDepth(MPa(ice), Mm(17), Torque.FromNewtonMeters(187), Mm(arm)).Meters * ice * 1e6 * 0.017,
                CrushingIce.LongBodyCrushing(MPa(ice), Mm(17), Torque.FromNewtonMeters(187), Mm(arm)).Newtons, 1e-12));

    [Theory]
    [InlineData(20, LengthClass.Rigid)]
    [InlineData(60, LengthClass.Finite)]
    [InlineData(120, LengthClass.SemiInfinite)]
    public void EmbeddedLengthClass_ByLength_FollowsTheLimits(double millimetres, LengthClass expected) =>
        Assert.Equal(expected, FoundationStiffness.EmbeddedLengthClass(Mm(millimetres), FoundationStiffness.CharacteristicLength(MPa(1000), TubeS)));

    [Fact]
    public void PastThreeCharacteristicLengths_MoreLengthHardlyChangesTheMoment()
    {
        Length three = 3 * FoundationStiffness.CharacteristicLength(MPa(1000), TubeS);
        double now = BodyUnderLoad.FiniteBody(Kilonewton, Mm(50), MPa(1000), TubeS, three).MaxMoment.NewtonMeters;
        double twice = BodyUnderLoad.FiniteBody(Kilonewton, Mm(50), MPa(1000), TubeS, 2 * three).MaxMoment.NewtonMeters;
        Assert.Equal(now, twice, 0.001 * now);
    }
}
