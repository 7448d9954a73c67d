using System.Globalization;
using ScrewSheet.Mechanics.Falls;
using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;
using UnitsNet;

namespace ScrewSheet.Mechanics.Friction;

/// <summary>The rope's way from climber to belayer over its pieces, summed up in SI. Tensions are as parts of the climber's.</summary>
/// <param name="Length">All strands, in m.</param>
/// <param name="EffectiveLength">Each strand times its tension, in m.</param>
/// <param name="EnergyLength">Each strand times the square of its tension, in m.</param>
/// <param name="TotalRatio">Climber-side over belayer-side tension.</param>
/// <param name="TopPieceFactor">Load on the first piece over the climber's tension; 0 for a rope without pieces.</param>
internal readonly record struct RopeCourse(double Length, double EffectiveLength, double EnergyLength, double TotalRatio, double TopPieceFactor)
{
    /// <summary>Checks and sums.</summary>
    public static RopeCourse Over(Series<Length> strands, Series<Angle> bends, double friction)
    {
        ArgumentNullException.ThrowIfNull(strands);
        ArgumentNullException.ThrowIfNull(bends);
        if (strands.Count == 0) throw new DomainException("strands must have at least 1 length; it is empty.", nameof(strands));
        if (bends.Count != strands.Count - 1) throw WrongCount(strands.Count, bends.Count);
        double mu = Inputs.Number(friction, 0, Limits.Friction);
        double length = 0, effective = 0, energy = 0, tension = 1, wraps = 0;
        for (int i = 0; i < strands.Count; i++)
        {
            if (i > 0)
            {
                wraps += Inputs.Angle(bends[i - 1], Limits.WrapDegrees, nameof(bends));
                Require.AtMost(wraps * 180 / Math.PI, Limits.WrapDegrees, "deg", nameof(bends));
                tension = Math.Exp(-mu * wraps);
            }
            double strand = Inputs.RopeLength(strands[i], nameof(strands));
            length += strand;
            effective += strand * tension;
            energy += strand * tension * tension;
        }
        double top = bends.Count == 0 ? 0 : TopPieces.Resultant(1, Math.Exp(-mu * bends.Si[0]), Math.PI - bends.Si[0]);
        return new RopeCourse(length, effective, energy, 1 / tension, top);
    }

    private static DomainException WrongCount(int strands, int bends) => new(string.Create(CultureInfo.InvariantCulture,
        $"bends must have one angle fewer than there are strands, {strands - 1} for {strands} strands; it has {bends}."), nameof(bends));
}
