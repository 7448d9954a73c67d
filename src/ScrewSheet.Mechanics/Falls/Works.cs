namespace ScrewSheet.Mechanics.Falls;

/// <summary>The works that the fall and rope functions are taken from, as named in their sources.</summary>
internal static class Works
{
    public const string FallFactor = "encyclopedia article \"Fall factor\"";
    public const string Wexler = "A. Wexler, The Theory of Belaying, American Alpine Journal 1950";
    public const string Goldstone = "R. Goldstone, The standard equation for impact force";
    public const string ChocForce = "collaborative article \"La force de choc\", form with K S / (M g)";
    public const string Capstan = "Euler-Eytelwein; S. W. Attaway, The Mechanics of Friction in Rope Rescue, ITRS 1999, eq. (1) and the capstan law";
    public const string OpenStax = "P. P. Urone, R. Hinrichs et al., College Physics (OpenStax), 2012, section 5.2";
    public const string EnergyBalance = "energy balance of a linear rope";
}
