using System.Diagnostics;
using ScrewSheet.Mechanics.Anchors;
using ScrewSheet.Mechanics.Falls;
using ScrewSheet.Mechanics.Friction;
using ScrewSheet.Mechanics.LeverArm;
using ScrewSheet.Mechanics.ViscoElastic;
using UnitsNet;

namespace ScrewSheet.Benchmarks;

/// <summary>What the library's checks cost beside the bare formula over the same types: least of interleaved rounds, since every disturbance only adds.</summary>
internal static class MechanicsCost
{
    private const int Rounds = 60, Calls = 20_000;

    // in coherent SI, as the engine hands them over: a value in another unit costs its conversion, whoever reads it
    private static readonly Mass Climber = Mass.FromKilograms(80);
    private static readonly Force Modulus = Force.FromNewtons(20_000), Load = Force.FromNewtons(8500);
    private static readonly Length Fall = Length.FromMeters(4.8), Out = Length.FromMeters(2.8), Arm = Length.FromMeters(0.05), Outer = Length.FromMeters(0.017), Wall = Length.FromMeters(0.0015);
    private static readonly Length Spacing = Length.FromMeters(0.4);
    private static readonly Angle Included = Angle.FromRadians(Math.PI / 3);
    private static readonly Torque Moment = Torque.FromNewtonMeters(96.6);
    private static readonly Volume Elastic = Volume.FromCubicMeters(260.5e-9);

    private static readonly (string Name, Func<double> Ours, Func<double> Theirs)[] Closed =
    [
        ("BendingMoment", Repeat(() => Bending.BendingMoment(Load, Arm).NewtonMeters), Repeat(() => HandWritten.BendingMoment(Load, Arm).NewtonMeters)),
        ("BendingStress", Repeat(() => Bending.BendingStress(Moment, Elastic).Pascals), Repeat(() => HandWritten.BendingStress(Moment, Elastic).Pascals)),
        ("ImpactForce", Repeat(() => ImpactForces.ImpactForce(Climber, Modulus, 1.7).Newtons), Repeat(() => HandWritten.ImpactForce(Climber, Modulus, 1.7).Newtons)),
        ("FallFactor", Repeat(() => FallFactors.FallFactor(Fall, Out)), Repeat(() => HandWritten.FallFactor(Fall, Out))),
        ("TopPieceLoad", Repeat(() => TopPieces.TopPieceLoad(Load, 1.5).Newtons), Repeat(() => HandWritten.TopPieceLoad(Load, 1.5).Newtons)),
        ("LegTension", Repeat(() => EqualLegs.LegTension(Load, Included).Newtons), Repeat(() => HandWritten.LegTension(Load, Included).Newtons)),
        ("SlidingDrop", Repeat(() => LegFailure.SlidingDrop(Spacing, Included).Meters), Repeat(() => HandWritten.SlidingDrop(Spacing, Included).Meters)),
        ("Tube.PlasticModulus", Repeat(() => TubeSections.Tube(Outer, Wall).PlasticModulus.CubicMeters), Repeat(() => HandWritten.PlasticModulus(Outer, Wall).CubicMeters)),
        ("Tube.SecondMoment", Repeat(() => TubeSections.Tube(Outer, Wall).SecondMoment.MetersToTheFourth), Repeat(() => HandWritten.SecondMoment(Outer, Wall).MetersToTheFourth)),
    ];

    public static void Run()
    {
        foreach (var (name, ours, theirs) in Closed) Compare($"mechanics {name}", ours, Calls, theirs, Calls, 1.5, "the bare formula");
        Func<double> impact = Closed.First(entry => entry.Name == "ImpactForce").Ours;
        Duration time = Duration.FromSeconds(0.05), slow = Duration.FromSeconds(1), middle = Duration.FromSeconds(0.1);
        Force spring = Force.FromKilonewtons(10), branch = Force.FromKilonewtons(14);
        const int few = Calls / 50;
        Peak("KelvinVoigtFall", Repeat(() => ViscoElasticRopes.KelvinVoigtFall(Climber, Modulus, time, Fall, Out).PeakForce.Newtons, few));
        Peak("MaxwellFall", Repeat(() => ViscoElasticRopes.MaxwellFall(Climber, Modulus, slow, Fall, Out).PeakForce.Newtons, few));
        Peak("StandardSolidFall", Repeat(() => ViscoElasticRopes.StandardSolidFall(Climber, spring, branch, middle, Fall, Out).PeakForce.Newtons, few));

        void Peak(string name, Func<double> ours) => Compare($"mechanics {name}", ours, few, impact, Calls, 100, "one closed impact force");
    }

    private static void Compare(string name, Func<double> ours, int ourCalls, Func<double> theirs, int theirCalls, double target, string against)
    {
        double least = double.MaxValue, leastTheirs = double.MaxValue;
        List<double> ratios = [];
        WarmUp(ours, theirs);
        for (int i = 0; i < Rounds; i++)
        {
            double a = Nanoseconds(ours, ourCalls), b = Nanoseconds(theirs, theirCalls);
            (least, leastTheirs) = (Math.Min(least, a), Math.Min(leastTheirs, b));
            ratios.Add(a / b);
        }
        long before = GC.GetAllocatedBytesForCurrentThread();
        ours();
        long bytes = GC.GetAllocatedBytesForCurrentThread() - before;
        bool closed = target < 100;
        if (closed && bytes > 100) throw new InvalidOperationException($"{name} allocates {bytes} bytes in {ourCalls} calls.");
        Report.Ratio(name, least / leastTheirs, $"{least:F1} ns", $"{leastTheirs:F1} ns ({against})", target,
            $"least of {Rounds}; median ratio {ratios.Order().ElementAt(Rounds / 2):G3}; {(closed ? "allocates nothing" : $"{bytes / ourCalls} bytes a call")}");
    }

    /// <summary>Until the code is compiled for good: the runtime waits for a pause of 100 ms in compiling before it does, so rounds cannot be counted here.</summary>
    private static void WarmUp(Func<double> ours, Func<double> theirs)
    {
        for (int pause = 0; pause < 4; pause++)
        {
            for (int i = 0; i < 20; i++) _ = ours() + theirs();
            Thread.Sleep(250);
        }
    }

    private static double Nanoseconds(Func<double> work, int calls)
    {
        long start = Stopwatch.GetTimestamp();
        work();
        return Stopwatch.GetElapsedTime(start).TotalNanoseconds / calls;
    }

    /// <summary>Many calls in one loop, added up so that none can be left out.</summary>
    private static Func<double> Repeat(Func<double> call, int times = Calls) => () =>
    {
        double sum = 0;
        for (int i = 0; i < times; i++) sum += call();
        return sum;
    };
}
