using ScrewSheet.Mechanics.LeverArm;
using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;

namespace ScrewSheet.Mechanics;

/// <summary>What the functions of an embedded body say of their common parameters, and the checks that go with them.</summary>
internal static class BodyText
{
    public const string Topic = "Embedded body";

    public const string Load = "transverse load; positive in the direction the body is pushed, as are deflection and contact pressure";
    public const string Arm = "lever arm: distance from the sound ice to the load line, 0 or more";
    public const string Stiffness = "foundation stiffness per unit length, k0 times the contact width";
    public const string Rigidity = "flexural rigidity of the body, E times I of its smallest section";
    public const string Depth = "depth below the face of the sound ice, 0 or more";
    public const string Length = "length embedded in sound ice";
    public const string Width = "contact width: the outer diameter of the body";
    public const string RigidityUnit = "N·m²";

    public const string BetaFormula = "Pow(foundationStiffness/(4*flexuralRigidity), 0.25)";

    public const string Elastic = "The ice is a bed of independent linear springs (Winkler); body straight, of one section, elastic.";
    public const string NotStrength = "A strength: ice under a loaded body crushes at a few kN, so this is stiffness and first crushing only.";

    public const string Hetenyi = "Hetenyi, Beams on Elastic Foundation, University of Michigan Press, 1946; re-derived and checked against a direct boundary-value solution";

    public static readonly Dimension RigidityDimension = Dimension.Of(3, 1, -2);

    public const double MostRigidity = 1e12, MostSubgrade = 1e15;

    private static readonly Scale RigidityScale = new(RigidityUnit, 1);

    /// <summary>The flexural rigidity in N·m², checked for dimension and range.</summary>
    public static double Rigid(Quantity flexuralRigidity)
    {
        if (flexuralRigidity.Dimension != RigidityDimension)
            throw new DomainException("flexuralRigidity must be in N·m²: an elastic modulus times a second moment of area.", nameof(flexuralRigidity));
        return Admit.Positive(flexuralRigidity.Si, MostRigidity, RigidityScale, nameof(flexuralRigidity));
    }

    /// <summary>The load in N, checked.</summary>
    public static double Newtons(UnitsNet.Force load) => Admit.Signed(load.Newtons, Most.Kilonewtons, Scale.Kilonewton, nameof(load));

    /// <summary>The foundation stiffness in N/m², checked.</summary>
    public static double Bed(UnitsNet.Pressure foundationStiffness) => Admit.Positive(foundationStiffness.Pascals, Most.Megapascals, Scale.Megapascal, nameof(foundationStiffness));

    /// <summary>The lever arm in m, checked.</summary>
    public static double LeverArm(UnitsNet.Length leverArm) => Admit.Between(leverArm.Meters, 0, Most.Millimetres, Scale.Millimetre, nameof(leverArm));

    /// <summary>The embedded length in m, checked.</summary>
    public static double Embedded(UnitsNet.Length embeddedLength) => Admit.Positive(embeddedLength.Meters, Most.Millimetres, Scale.Millimetre, nameof(embeddedLength));

    /// <summary>The contact width in m, checked.</summary>
    public static double Wide(UnitsNet.Length width) => Admit.Positive(width.Meters, Most.Millimetres, Scale.Millimetre, nameof(width));

    /// <summary>A depth in m, checked against the face and, where the body ends, its tip.</summary>
    public static double At(UnitsNet.Length depth, double embedded = double.PositiveInfinity)
    {
        double metres = Admit.Between(depth.Meters, 0, Most.Millimetres, Scale.Millimetre, nameof(depth));
        if (metres > embedded * (1 + 1e-12)) Require.AtMost(metres * 1000, embedded * 1000, "mm", nameof(depth));
        return Math.Min(metres, embedded);
    }
}
