namespace ScrewSheet.Mechanics.Falls;

/// <summary>Hard limits of the fall and rope functions: beyond them a value is a slip of the pen, not a fall. Constants, so that declarations and checks share them.</summary>
internal static class Limits
{
    public const double MassKilograms = 10_000;
    public const double LengthMetres = 10_000;
    public const double ForceKilonewtons = 1_000_000;
    public const double FallFactor = 1_000;
    public const double Friction = 2;
    public const double WrapDegrees = 3_600;
    public const double FrictionRatio = 1e6;
    public const double StiffnessKilonewtonsPerMetre = 1e12;
    public const double Strands = 10;
}
