using ScrewSheet.Quantities.Declarations;
using UnitsNet;

namespace ScrewSheet.Mechanics;

/// <summary>What a transverse load does to an embedded body.</summary>
[SheetRecord("what a transverse load does to an embedded body")]
public readonly record struct BodyResponse
{
    /// <summary>Deflection at the face of the sound ice.</summary>
    [Member("y_0", "mm", "deflection at the face of the sound ice, positive with the load")]
    public Length HeadDeflection { get; internal init; }

    /// <summary>Slope at the face of the sound ice.</summary>
    [Member("θ_0", "rad", "slope at the face of the sound ice, positive where the outer end leans with the load")]
    public Angle HeadSlope { get; internal init; }

    /// <summary>The greatest bending moment in the embedded part.</summary>
    [Member("M_max", "N·m", "greatest bending moment in the embedded part")]
    public Torque MaxMoment { get; internal init; }

    /// <summary>The depth of the greatest bending moment.</summary>
    [Member("x_m", "mm", "depth of the greatest moment below the face of the sound ice")]
    public Length MaxMomentDepth { get; internal init; }

    /// <summary>Deflection where the load is applied.</summary>
    [Member("y_top", "mm", "deflection of the point the load acts on, the bending of the lever arm included")]
    public Length LoadPointDeflection { get; internal init; }

    /// <summary>Deflection at the tip; zero for a semi-infinite body.</summary>
    [Member("y_L", "mm", "deflection of the tip: negative where it kicks back, 0 for a body without end")]
    public Length TipDeflection { get; internal init; }

    /// <summary>The depth where the deflection first changes sign.</summary>
    [Member("x_0", "mm", "depth where the deflection first changes sign: below it the body presses the other way")]
    public Length PivotDepth { get; internal init; }
}
