using UnitsNet;
using Quantity = ScrewSheet.Quantities.Quantity;

namespace ScrewSheet.Mechanics.Tests;

/// <summary>Closed formulas allocate nothing, so that a table of a million of them does not wait for the collector.</summary>
public sealed class ClosedFormAllocationTests
{
    private static readonly Force Load = Force.FromKilonewtons(1);
    private static readonly Length Arm = Length.FromMillimeters(40), Deep = Length.FromMillimeters(20), Body = Length.FromMillimeters(90), Wide = Length.FromMillimeters(17);
    private static readonly Pressure Stiff = Pressure.FromMegapascals(1000), Weak = Pressure.FromMegapascals(1.1);
    private static readonly Quantity Rigidity = EmbeddedBodyChecks.TubeS;
    private static readonly Torque Hinge = Torque.FromNewtonMeters(187);
    private static readonly Angle Set = Angle.FromDegrees(10);

    public static TheoryData<string> Names => [.. Calls.Keys];

    private static readonly Dictionary<string, Func<double>> Calls = new()
    {
        ["Max"] = () => Comparison.Max(Load, Load).Newtons,
        ["Clamp"] = () => Comparison.Clamp(Arm, Deep, Body).Meters,
        ["Round"] = () => Comparison.Round(Arm, Deep).Meters,
        ["Near"] = () => Comparison.Near(Rigidity, Rigidity, Rigidity) ? 1 : 0,
        ["Sin"] = () => Angles.Sin(Set),
        ["Weight"] = () => WorkAndWeight.Weight(Mass.FromKilograms(80)).Newtons,
        ["LongBody"] = () => BodyUnderLoad.LongBody(Load, Arm, Stiff, Rigidity).MaxMoment.NewtonMeters,
        ["RigidBody"] = () => BodyUnderLoad.RigidBody(Load, Arm, Stiff, Body).MaxMoment.NewtonMeters,
        ["FiniteBodyMoment"] = () => FiniteBodyAtDepth.FiniteBodyMoment(Load, Arm, Stiff, Rigidity, Body, Deep).NewtonMeters,
        ["LongBodyCrushing"] = () => CrushingIce.LongBodyCrushing(Stiff, Wide, Hinge, Arm).Newtons,
        ["ShortBodyCrushing"] = () => CrushingIce.ShortBodyCrushing(Stiff, Wide, Body, Arm).Newtons,
        ["FoundationModulusVesic"] = () => FoundationStiffness.FoundationModulusVesic(Stiff, 0.325, Wide, Rigidity).Pascals,
        ["ThreadPullOut"] = () => ThreadPullOuts.ThreadPullOut(Wide, Body, Weak).Newtons,
        ["ThreadLimit"] = () => ThreadPullOuts.ThreadLimit(Load, Set).Acts ? 1 : 0,
        ["DrilledThread"] = () => DrilledThreads.DrilledThread(Body, Set).Depth.Meters,
        ["HillAverage"] = () => ElasticAggregates.HillAverage(IceValues.C11, IceValues.C12, IceValues.C13, IceValues.C33, IceValues.C44).PoissonRatio,
        ["IceFractureAnalogue"] = () => ConeBreakout.IceFractureAnalogue(IceValues.FractureToughnessLow, Arm).Newtons,
        ["CordRating"] = () => Cords.CordRating(Length.FromMillimeters(7)).Newtons,
    };

    [Theory]
    [MemberData(nameof(Names))]
    public void AClosedForm_AllocatesNothing(string name)
    {
        Func<double> call = Calls[name];
        for (int i = 0; i < 200; i++) call();
        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int i = 0; i < 1000; i++) call();
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 100);
    }
}
