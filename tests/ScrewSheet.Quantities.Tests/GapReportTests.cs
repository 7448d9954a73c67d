using ScrewSheet.Quantities.Units;
using UnitsNet;

namespace ScrewSheet.Quantities.Tests;

/// <summary>Products, quotients, powers and roots that users of the unit library have reported missing, and the trade's own.</summary>
public sealed class GapReportTests
{
    [Fact]
    public void PressureTimesLengthIsAForcePerLength()
    {
        ForcePerLength line = 2.MPa * 3.mm;
        Assert.Equal(6000, line.NewtonsPerMeter, 1e-9);
    }

    [Fact]
    public void MomentOfInertiaTimesTurningAccelerationReadsAsATorque()
    {
        Torque torque = MassMomentOfInertia.FromKilogramSquareMeters(2) * RotationalAcceleration.FromRadiansPerSecondSquared(3);
        Assert.Equal(6, torque.NewtonMeters, 1e-12);
    }

    [Fact]
    public void AreaTimesLengthTimesLengthReadsAsASecondMomentOfArea()
    {
        Area area = 2.m2;
        AreaMomentOfInertia second = area * 3.m * 3.m;
        Assert.Equal(18, second.MetersToTheFourth, 1e-12);
    }

    [Fact]
    public void AFormulaOverThreeQuantitiesNeedsNoNamedIntermediate()
    {
        // Euler's buckling load, pi² E I / L²
        Force critical = Math.PI * Math.PI * 210.GPa * 4.cm4 / (2.m * 2.m);
        Assert.Equal(Math.PI * Math.PI * 210e9 * 4e-8 / 4, critical.Newtons, 1e-6);
    }

    [Fact]
    public void TorqueOverVolumeIsAStress()
    {
        Pressure stress = 425.N_m / 1000.mm3;
        Assert.Equal(425, stress.Megapascals, 1e-9);
    }

    [Fact]
    public void TheRootOfASumOfSquaredForcesIsAForce()
    {
        Force f = 3.kN, g = 4.kN;
        Force resultant = Powers.Sqrt(f * f + g * g);
        Assert.Equal(5, resultant.Kilonewtons, 1e-12);
    }

    [Fact]
    public void TheRootOfAnAreaIsALength()
    {
        Length side = Powers.Sqrt(49.mm2);
        Assert.Equal(7, side.Millimeters, 1e-12);
    }

    [Fact]
    public void TheCubeRootOfAVolumeIsALength()
    {
        Length edge = Powers.Cbrt(27.cm3);
        Assert.Equal(3, edge.Centimeters, 1e-12);
    }

    [Fact]
    public void TheCubeRootOfAForceHasADimensionAndComesBack()
    {
        Quantity root = Powers.Root(27.N, 3);
        Assert.Equal(3, root.Si, 1e-12);
        Force back = root * root * root;
        Assert.Equal(27, back.Newtons, 1e-9);
    }

    [Fact]
    public void TheFourthPowerOfALengthIsASecondMomentOfArea()
    {
        AreaMomentOfInertia fourth = Powers.Pow(2.m, 4);
        Assert.Equal(16, fourth.MetersToTheFourth, 1e-12);
    }

    [Fact]
    public void ForceTimesLengthStaysTheLibrarysTorque() => Assert.IsType<Torque>(2.N * 3.m);

    [Fact]
    public void AnAngleInAProductIsANumber()
    {
        Length arc = 2.m * 0.5.rad;
        Assert.Equal(1, arc.Meters, 1e-12);
    }

    [Fact]
    public void OneOverATimeIsAFrequency()
    {
        Frequency rate = 1.0 / 4.s;
        Assert.Equal(0.25, rate.Hertz, 1e-12);
    }

    [Fact]
    public void ANameThatDoesNotFitIsRefused()
    {
        InvalidCastException thrown = Assert.Throws<InvalidCastException>(() => { Force wrong = 425.N_m / 1000.mm3; });
        Assert.Equal("a stress or pressure is not a force.", thrown.Message);
    }
}
