using ScrewSheet.Quantities.Declarations;
using UnitsNet;
using static ScrewSheet.Mechanics.Belay.DynamicBelays;
using static ScrewSheet.Mechanics.Falls.FallFactors;
using static ScrewSheet.Mechanics.Falls.ImpactForces;
using static ScrewSheet.Mechanics.Falls.RopeModuli;
using static ScrewSheet.Mechanics.Friction.CarabinerFriction;
using static ScrewSheet.Mechanics.Friction.RopeDrags;
using static ScrewSheet.Mechanics.Friction.TopPieces;
using static ScrewSheet.Mechanics.Tests.Rope.RopeUnits;
using static ScrewSheet.Mechanics.Tethers.EnergyAbsorbers;
using static ScrewSheet.Mechanics.Tethers.SeriesSprings;

namespace ScrewSheet.Mechanics.Tests.Rope;

/// <summary>Bad input: each is refused in a sentence that names the parameter, the limit and the unit.</summary>
public sealed class FallRefusalTests
{
    public static TheoryData<string, Func<object>> Refusals => new()
    {
        { "mass must be greater than 0 kg; it is -80 kg.", () => ImpactForce(Kg(-80), KN(20), 1) },
        { "mass must be greater than 0 kg; it is 0 kg.", () => ImpactForce(default, KN(20), 1) },
        { "mass must be at most 10000 kg; it is 80000 kg.", () => ImpactForce(Mass.FromTonnes(80), KN(20), 1) },
        { "modulus must be greater than 0 kN; it is 0 kN.", () => ImpactForce(Kg(80), KN(0), 1) },
        { "modulus must be at most 1E+06 kN; it is 1E+12 kN.", () => ImpactForce(Kg(80), KN(1e12), 1) },
        { "fallFactor must be at least 0; it is -0.1.", () => ImpactForce(Kg(80), KN(20), -0.1) },
        { "fallFactor must be at least 0; it is not a finite number.", () => ImpactForce(Kg(80), KN(20), double.NaN) },
        { "fallFactor must be at most 1000; it is 100000.", () => ImpactForce(Kg(80), KN(20), 1e5) },
        { "ropeOut must be greater than 0 m; it is 0 m.", () => FallFactor(M(5), M(0)) },
        { "fall must be at least 0 m; it is -5 m.", () => FallFactor(M(-5), M(10)) },
        { "fall must be at most 10000 m; it is 1E+06 m.", () => FallFactor(M(1e6), M(10)) },
        { "relativeStretch must be at least 1E-06; it is 0.", () => ImpactForceFromStretch(Kg(80), 1, 0) },
        { "certifiedPeak must be greater than 1.56906 kN, twice the weight of the test mass; it is 1.5 kN.", () => RopeModulus(KN(1.5), Kg(80)) },
        { "testFallFactor must be greater than 0; it is 0.", () => RopeModulus(KN(9), Kg(80), 0) },
        { "upperMass must be greater than 150 kg; it is 50 kg.", () => StaticRopeModulus(Kg(150), Kg(50), 0.05) },
        { "wrap must be at most 3600 deg; it is 10313.2 deg.", () => FrictionRatio(0.13, Angle.FromRadians(180)) },
        { "wrap must be at least 0 deg; it is -1 deg.", () => FrictionRatio(0.13, Deg(-1)) },
        { "friction must be at most 2; it is 13.", () => FrictionRatio(13, Deg(180)) },
        { "openAngle must be at most 180 deg; it is 181 deg.", () => TopPieceResultant(KN(6), KN(4), Deg(181)) },
        { "frictionRatio must be at least 1; it is 0.666667.", () => TopPieceLoad(KN(6), 2.0 / 3) },
        { "strands must be greater than 0 m; it is 0 m.", () => EffectiveLength(Strands(5, 0), Bends(180), 0.1) },
        { "bends must be at most 3600 deg; it is 3700 deg.", () => EffectiveLength(Strands(5, 5), Bends(3700), 0.1) },
        { "strands must have at least 1 length; it is empty.", () => EffectiveLength(Strands(), Bends(), 0.1) },
        { "springs must have at least 1 spring rate; it is empty.", () => SpringsInSeries(Quantities.Series.Of<ForcePerLength>([])) },
        { "The fall is never stopped: the belay slips at 0.7 kN on the climber's side, and deviceLimit times frictionRatio must be greater than the weight of 0.784532 kN.", () => DynamicBelay(Kg(80), KN(20), M(10), M(20), KN(0.7)) },
        { "The fall is never stopped: tearForce must be greater than the weight of 0.980665 kN; it is 0.9 kN.", () => AbsorberTear(Kg(100), M(4), KN(0.9)) },
    };

    [Theory]
    [MemberData(nameof(Refusals), DisableDiscoveryEnumeration = true)]
    public void BadInput_IsRefusedInASentence(string sentence, Func<object> call) => Assert.Equal(sentence, Assert.Throws<DomainException>(call).Message);

    [Fact]
    public void ClosedFormFunctions_AllocateNothing()
    {
        Force mass() => ImpactForce(Kg(80), KN(20), 1);
        _ = (mass(), RopeModulus(KN(9), Kg(80)), FallFactor(M(4), M(2)), TopPieceLoad(KN(6), 1.5), DynamicBelay(Kg(80), KN(20), M(10), M(15), KN(3)), TetherForce(Kg(80), KN(24), M(2), M(2), KNm(200), KNm(60)));
        long before = GC.GetAllocatedBytesForCurrentThread();
        double sum = 0;
        for (int i = 1; i <= 1000; i++)
        {
            sum += ImpactForce(Kg(80 + i), KN(20), 1).Newtons + RopeModulus(KN(9), Kg(80)).Newtons + FallFactor(M(4), M(i)) + TopPieceLoad(KN(6), 1.5).Newtons;
            sum += DynamicBelay(Kg(80), KN(20), M(10), M(15), KN(3)).Slip.Meters + TetherForce(Kg(80), KN(24), M(2), M(2), KNm(200), KNm(60)).Newtons + FrictionRatio(0.13, Deg(180));
        }
        Assert.True(sum > 0);
        Assert.Equal(before, GC.GetAllocatedBytesForCurrentThread());
    }
}
