using ScrewSheet.Mechanics.LeverArm;
using UnitsNet;
using static ScrewSheet.Mechanics.Tests.LeverArm.In;

namespace ScrewSheet.Mechanics.Tests.LeverArm;

/// <summary>Questions asked in public that a function or its caution answers; numbered as in docs/pitfalls-anchors.md.</summary>
public sealed class LeverArmPitfalls
{
    [Fact]
    public void Pitfall01_AHangerAboveTheTipIsCautioned_AndTheConventionIsSpelledOut()
    {
        foreach (string function in new[] { nameof(SetAngles.AxialLoad), nameof(SetAngles.TransverseLoad) })
        {
            Assert.Contains("hanger above the tip", DeclaredText.Cautions(function, KN(10), Deg(-10)), StringComparison.Ordinal);
            Assert.Equal("", DeclaredText.Cautions(function, KN(10), Deg(0)));
            Assert.Equal("", DeclaredText.Cautions(function, KN(10), Deg(15)));
        }
        Assert.Contains("positive when the hanger end is lower than the tip", Meaning(nameof(SetAngles.AxialLoad), "setAngle"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(10, 0.17)]
    [InlineData(15, 0.26)]
    public void Pitfall02_APositiveSetAnglePullsOnlyItsSine(double degrees, double part) =>
        Assert.Equal(part, SetAngles.AxialLoad(KN(1), Deg(degrees)).Kilonewtons, 2);

    [Theory]
    [InlineData(30)]
    [InlineData(60)]
    public void Pitfall03_SteeperThanFifteenDegreesIsCautioned(double degrees)
    {
        Assert.Contains("above 15°", DeclaredText.Cautions(nameof(SetAngles.AxialLoad), KN(10), Deg(degrees)), StringComparison.Ordinal);
        Assert.Contains("above 15°", DeclaredText.Cautions(nameof(SetAngles.PullComponents), KN(10), Deg(degrees), Deg(0)), StringComparison.Ordinal);
    }

    [Fact]
    public void Pitfall04_NoLengthOfTheBodyEntersWhatItsArmHolds() =>
        Assert.DoesNotContain(DeclaredText.Callables.Single(method => method.Name == nameof(HingeLoads.HingeLoad)).GetParameters(), parameter => parameter.Name!.Contains("length", StringComparison.OrdinalIgnoreCase));

    [Fact]
    public void Pitfall08_ATieOffAtTheIceShortensTheProtrusionButNotTheIceLost()
    {
        Length hanger = Bending.LeverArm(Mm(30), Mm(40), Mm(10)), tied = Bending.LeverArm(Mm(0), Mm(40), Mm(0));
        Assert.Equal(80, hanger.Millimeters, 9);
        Assert.Equal(40, tied.Millimeters, 9);
    }

    [Fact]
    public void Pitfall09_SteelRisesFurtherAfterTheHingeThanAluminiumOfTheSamePeak()
    {
        double Rise(double strain) => HingeLoads.FoldOverLoad(Nm(186.9341), KN(37.77053), Mm(50), HingeLoads.RotationCapacity(Mm(17), strain, Mm(17))) / HingeLoads.FoldOverLoad(Nm(186.9341), KN(37.77053), Mm(50), Deg(0));
        Assert.True(Rise(0.20) > Rise(0.08));
        Assert.Contains("not its peak load alone", DeclaredText.Cautions(nameof(HingeLoads.RotationCapacity), Mm(17), 0.2, Mm(17)), StringComparison.Ordinal);
    }

    [Fact]
    public void Pitfall19_ElasticModuliDoNotSubtract()
    {
        TubeSection tube = TubeSections.Tube(Mm(17), Mm(1.5)), thin = TubeSections.Tube(Mm(1000), Mm(1e-3));
        Assert.Equal(18.25, 100 * (1 - (Wrong(tube) / tube.ElasticModulus.CubicMillimeters)), 2);
        Assert.Equal(25, 100 * (1 - (Wrong(thin) / thin.ElasticModulus.CubicMillimeters)), 3);
        static double Wrong(TubeSection tube) => Math.PI / 32 * (Math.Pow(tube.OuterDiameter.Millimeters, 3) - Math.Pow(tube.Bore.Millimeters, 3));
    }

    [Fact]
    public void Pitfall20_PlasticModuliDoSubtract() => Assert.Equal((17.0 * 17 * 17 / 6) - (14.0 * 14 * 14 / 6), TubeSections.Tube(Mm(17), Mm(1.5)).PlasticModulus.CubicMillimeters, 9);

    [Fact]
    public void Pitfall21_AnAngleCarriesItsUnit()
    {
        Assert.Equal(0.258819, SetAngles.AxialLoad(N(1), Deg(15)).Newtons, 6);
        Assert.Equal(0.650288, Math.Sin(15), 6); // what a bare number read as radians would have given
        Assert.All(DeclaredText.Callables.SelectMany(method => method.GetParameters()).Where(parameter => parameter.Name!.EndsWith("Angle", StringComparison.Ordinal)),
            parameter => Assert.Equal(typeof(Angle), parameter.ParameterType));
    }

    [Fact]
    public void Pitfall22_PoissonsRatioIsSquared_NotXored() =>
        Assert.Equal(1 / Math.Sqrt(3 * (1 - 0.09)), WallBuckling.WallBucklingStress(GPa(1), 0.3, Mm(100), Mm(100)).Gigapascals, 12);

    [Fact]
    public void Pitfall23_NewtonMillimetresAndKsiGiveTheSameStressAndMoment()
    {
        Assert.Equal(Bending.BendingStress(Nm(96.59258), Mm3(260.4808)).Pascals, Bending.BendingStress(Torque.FromNewtonMillimeters(96592.58), Mm3(260.4808)).Pascals, 3);
        Assert.Equal(SectionStrength.PlasticMoment(Mm3(361.5), MPa(75 * Ksi)).NewtonMeters, SectionStrength.PlasticMoment(Mm3(361.5), Pressure.FromKilopoundsForcePerSquareInch(75)).NewtonMeters, 6);
    }

    [Fact]
    public void CodeRule_WhereItIsSlightlyUnsafe_IsCautioned()
    {
        Assert.Contains("a little more than the exact", DeclaredText.Cautions(nameof(MomentInteraction.CodeMomentFactor), 0.8), StringComparison.Ordinal);
        Assert.Equal("", DeclaredText.Cautions(nameof(MomentInteraction.CodeMomentFactor), 0.3));
    }

    [Fact]
    public void ShortArm_IsCautionedInHingeLoad()
    {
        Assert.Contains("HingeLoadWithShear", DeclaredText.Cautions(nameof(HingeLoads.HingeLoad), Mm(17), Mm(1.5), MPa(517), Mm(26.9), Deg(10)), StringComparison.Ordinal);
        Assert.Equal("", DeclaredText.Cautions(nameof(HingeLoads.HingeLoad), Mm(17), Mm(1.5), MPa(517), Mm(27), Deg(10)));
    }

    [Fact]
    public void SlenderTube_IsToldNotToUseThePlasticMoment()
    {
        Assert.Contains("do not use the plastic moment", DeclaredText.Cautions(nameof(SectionClasses.SteelTubeClass), Mm(60), Mm(1), MPa(355)), StringComparison.Ordinal);
        Assert.Equal("", DeclaredText.Cautions(nameof(SectionClasses.SteelTubeClass), Mm(17), Mm(1.5), MPa(355)));
    }

    private static string Meaning(string function, string parameter) =>
        ((Quantities.Declarations.ParameterAttribute)DeclaredText.Callables.Single(method => method.Name == function).GetParameters().Single(p => p.Name == parameter)
            .GetCustomAttributes(typeof(Quantities.Declarations.ParameterAttribute), false).Single()).Meaning;
}
