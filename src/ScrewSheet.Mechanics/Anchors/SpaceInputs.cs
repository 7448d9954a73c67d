using ScrewSheet.Mechanics.LeverArm;
using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;
using UnitsNet;

namespace ScrewSheet.Mechanics.Anchors;

/// <summary>Reads legs in space from their series, with the checks their declarations promise.</summary>
internal static class SpaceInputs
{
    /// <summary>From the master point to each anchor.</summary>
    public static Vector[] Anchors(Series<Length> x, Series<Length> y, Series<Length> z, int least)
    {
        int count = LegInputs.Count(x, nameof(x), least);
        LegInputs.Same(y, nameof(y), count);
        LegInputs.Same(z, nameof(z), count);
        Vector[] anchors = new Vector[count];
        for (int leg = 0; leg < count; leg++)
        {
            anchors[leg] = new Vector(Coordinate(x, leg, nameof(x)), Coordinate(y, leg, nameof(y)), Coordinate(z, leg, nameof(z)));
            if (anchors[leg].Length <= 0) throw new DomainException("x, y and z must not all be 0 m for one leg: it has no length.", nameof(x));
        }
        return anchors;
    }

    /// <summary>EA/L of each leg in N/m.</summary>
    public static double[] Springs(Vector[] anchors, Series<Force> stiffness)
    {
        LegInputs.Same(stiffness, nameof(stiffness), anchors.Length);
        return [.. stiffness.Si.Select((ea, leg) => Admit.Positive(ea, Most.AxialKilonewtons, Scale.Kilonewton, nameof(stiffness)) / anchors[leg].Length)];
    }

    /// <summary>The pull in N.</summary>
    public static Vector Pull(Force pullX, Force pullY, Force pullZ) => new(
        Admit.Signed(pullX.Newtons, Most.Kilonewtons, Scale.Kilonewton, nameof(pullX)),
        Admit.Signed(pullY.Newtons, Most.Kilonewtons, Scale.Kilonewton, nameof(pullY)),
        Admit.Signed(pullZ.Newtons, Most.Kilonewtons, Scale.Kilonewton, nameof(pullZ)));

    private static double Coordinate(Series<Length> values, int leg, string name) => Admit.Signed(values.Si[leg], Most.Metres, Scale.Metre, name);
}
