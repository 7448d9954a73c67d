namespace ScrewSheet.Mechanics.Falls;

/// <summary>The chapters of the catalogue that the fall and rope functions stand in.</summary>
internal static class Topics
{
    public const string Falls = "Fall factor and free fall";
    public const string Impact = "Impact force and rope";
    public const string Friction = "Friction and rope drag";
    public const string Belay = "Belay and clearance";
    public const string Tethers = "Tethers and absorbers";
    public const string ViscoElastic = "Visco-elastic rope";
    public const string Hauling = "Top rope, hauling, rappel";
}
