using CsCheck;
using static ScrewSheet.Mechanics.Tests.EmbeddedBodyChecks;

namespace ScrewSheet.Mechanics.Tests;

public sealed class RigidBodyTests
{
    private static readonly Gen<(double Arm, double Length)> Cases = Gen.Select(Gen.Double[0, 100], Gen.Double[20, 200]);

    [Fact]
    public void AtPivotAndTip_DeflectionAndMomentAreThoseOfTheRecord() =>
        Cases.Sample((arm, length) =>
        {
            BodyResponse bar = BodyUnderLoad.RigidBody(Kilonewton, Mm(arm), MPa(1000), Mm(length));
            double At(double x) => RigidBodyAtDepth.RigidBodyDeflection(Kilonewton, Mm(arm), MPa(1000), Mm(length), Mm(x)).Millimeters;
            double Moment(double x) => RigidBodyAtDepth.RigidBodyMoment(Kilonewton, Mm(arm), Mm(length), Mm(x)).NewtonMeters;
            return Math.Abs(At(bar.PivotDepth.Millimeters)) < 1e-12 && Math.Abs(At(length) - bar.TipDeflection.Millimeters) < 1e-12
                && Math.Abs(Moment(0) - arm) < 1e-9 && Math.Abs(Moment(length)) < 1e-9
                && Math.Abs(Moment(bar.MaxMomentDepth.Millimeters) - bar.MaxMoment.NewtonMeters) < 1e-9;
        });

    [Fact]
    public void TheGreatestMoment_ExceedsThatAtAnyDepth() =>
        Gen.Select(Cases, Gen.Double[0, 1]).Sample((c, share) =>
            RigidBodyAtDepth.RigidBodyMoment(Kilonewton, Mm(c.Arm), Mm(c.Length), Mm(c.Length * share)).NewtonMeters
            <= BodyUnderLoad.RigidBody(Kilonewton, Mm(c.Arm), MPa(1000), Mm(c.Length)).MaxMoment.NewtonMeters * (1 + 1e-12));
}
