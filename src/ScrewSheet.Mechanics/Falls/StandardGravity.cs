namespace ScrewSheet.Mechanics.Falls;

/// <summary>Standard gravity, exact by definition; textbooks use 9.80 or 9.81, which explains differences up to 0.07 %.</summary>
internal static class StandardGravity
{
    public const double MetresPerSecondSquared = 9.80665;
}
