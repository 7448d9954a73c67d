using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;
using UnitsNet;
using static ScrewSheet.Mechanics.Tests.EmbeddedBodyChecks;
using Quantity = ScrewSheet.Quantities.Quantity;

namespace ScrewSheet.Mechanics.Tests;

public sealed class EmbeddedBodyRefusals
{
    private static string Refusal(Action call) => Assert.Throws<DomainException>(call).Message;

    [Fact]
    public void BadInput_IsRefusedWithParameterLimitAndUnit()
    {
        Assert.Equal("leverArm must be at least 0 mm; it is -1 mm.", Refusal(() => BodyUnderLoad.LongBody(Kilonewton, Mm(-1), MPa(1000), TubeS)));
        Assert.Equal("foundationStiffness must be greater than 0 MPa; it is 0 MPa.", Refusal(() => BodyUnderLoad.LongBody(Kilonewton, Mm(1), MPa(0), TubeS)));
        Assert.Equal("embeddedLength must be greater than 0 mm; it is 0 mm.", Refusal(() => BodyUnderLoad.RigidBody(Kilonewton, Mm(1), MPa(1000), Mm(0))));
        Assert.Equal("depth must be at most 90 mm; it is 91 mm.", Refusal(() => FiniteBodyAtDepth.FiniteBodyMoment(Kilonewton, Mm(1), MPa(1000), TubeS, Mm(90), Mm(91))));
        Assert.Equal("depth must be at least 0 mm; it is -2 mm.", Refusal(() => LongBodyAtDepth.LongBodyShear(Kilonewton, Mm(1), MPa(1000), TubeS, Mm(-2))));
        Assert.Equal("points must be at least 2; it is 1.", Refusal(() => ContactPressures.DepthsAlong(Mm(90), 1)));
        Assert.Equal("poissonRatio must be less than 0.5; it is 0.5.", Refusal(() => FoundationStiffness.FoundationModulusVesic(MPa(9000), 0.5, Mm(17), TubeS)));
        Assert.Equal("plasticMoment must be greater than 0 N·m; it is 0 N·m.", Refusal(() => CrushingIce.LongBodyCrushing(MPa(10), Mm(17), Torque.Zero, Mm(40))));
    }

    [Fact]
    public void RigidityOfAnotherDimension_IsRefused() =>
        Assert.StartsWith("flexuralRigidity must be in N·m²", Refusal(() => BodyUnderLoad.LongBody(Kilonewton, Mm(1), MPa(1000), Quantity.FromSi(1, Dimension.Of(1, 1, -2)))), StringComparison.Ordinal);

    [Fact]
    public void NaN_IsRefused() => 
        Assert.Equal("poissonRatio must be at least 0; it is not a finite number.", Refusal(() => FoundationStiffness.FoundationModulusBiot(MPa(9000), double.NaN, Mm(17), TubeS)));

    [Fact]
    public void NoLoad_HasNoPlaceOfGreatestMoment() => Assert.Equal("load", Assert.Throws<DomainException>(() => BodyUnderLoad.FiniteBody(Force.Zero, Mm(1), MPa(1000), TubeS, Mm(90))).Parameter);

    [Fact]
    public void ABodyFarTooStiffForTheFiniteForm_IsSentToTheRigidBar() =>
        Assert.Contains("use RigidBody", Refusal(() => BodyUnderLoad.FiniteBody(Kilonewton, Mm(1), MPa(0.001), Quantity.FromSi(1e12, Dimension.Of(3, 1, -2)), Mm(90))), StringComparison.Ordinal);
}
