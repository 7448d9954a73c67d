using UnitsNet;

namespace ScrewSheet.Benchmarks;

/// <summary>The bare formulas as somebody with UnitsNet at hand would write them: the same types in and out, no limits checked.</summary>
internal static class HandWritten
{
    private const double Gravity = 9.80665;

    public static Torque BendingMoment(Force transverse, Length arm) => transverse * arm;

    public static Force ImpactForce(Mass mass, Force modulus, double fallFactor)
    {
        double weight = mass.Kilograms * Gravity;
        return Force.FromNewtons(weight * (1 + Math.Sqrt(1 + (2 * modulus.Newtons * fallFactor / weight))));
    }

    public static Force LegTension(Force load, Angle included) => load / (2 * Math.Cos(included.Radians / 2));

    public static Length SlidingDrop(Length spacing, Angle included)
    {
        double half = spacing.Meters / 2, leg = half / Math.Sin(included.Radians / 2);
        return Length.FromMeters((2 * leg) - (half / Math.Tan(included.Radians / 2)));
    }

    public static double FallFactor(Length fall, Length ropeOut) => fall / ropeOut;

    public static Force TopPieceLoad(Force climber, double ratio) => climber * (1 + (1 / ratio));

    public static Pressure BendingStress(Torque moment, Volume modulus) => Pressure.FromPascals(moment.NewtonMeters / modulus.CubicMeters);

    public static Volume PlasticModulus(Length outer, Length wall)
    {
        double d = outer.Meters, bore = d - (2 * wall.Meters);
        return Volume.FromCubicMeters(((d * d * d) - (bore * bore * bore)) / 6);
    }

    public static AreaMomentOfInertia SecondMoment(Length outer, Length wall)
    {
        double d = outer.Meters, bore = d - (2 * wall.Meters);
        return AreaMomentOfInertia.FromMetersToTheFourth(Math.PI / 64 * ((d * d * d * d) - (bore * bore * bore * bore)));
    }
}
