using ScrewSheet.Quantities.Declarations;
using UnitsNet;

namespace ScrewSheet.Mechanics;

/// <summary>Accessory cord by its standard rating, polyamide and HMPE alike: the rating asks for a strength, not for a fibre.</summary>
[SheetValues("accessory cords by their standard rating, polyamide and HMPE alike")]
public static class Cords
{
    private const string En564 = "EN 564, accessory cord: 0.2 d² kN, d in mm";
    private const string Meaning = "rated strength of one straight strand; knots and edges take from it";

    /// <summary>4 mm cord: 3.2 kN.</summary>
    [Member("F", "kN", "4 mm cord, " + Meaning)]
    [Source(En564, Standing.SecondHand)]
    public static Force Cord4 => Force.FromKilonewtons(3.2);

    /// <summary>5 mm cord: 5.0 kN.</summary>
    [Member("F", "kN", "5 mm cord, " + Meaning)]
    [Source(En564, Standing.SecondHand)]
    public static Force Cord5 => Force.FromKilonewtons(5.0);

    /// <summary>6 mm cord: 7.2 kN.</summary>
    [Member("F", "kN", "6 mm cord, " + Meaning)]
    [Source(En564, Standing.SecondHand)]
    public static Force Cord6 => Force.FromKilonewtons(7.2);

    /// <summary>7 mm cord: 9.8 kN.</summary>
    [Member("F", "kN", "7 mm cord, " + Meaning)]
    [Source(En564, Standing.SecondHand)]
    public static Force Cord7 => Force.FromKilonewtons(9.8);

    /// <summary>8 mm cord: 12.8 kN.</summary>
    [Member("F", "kN", "8 mm cord, " + Meaning)]
    [Source(En564, Standing.SecondHand)]
    public static Force Cord8 => Force.FromKilonewtons(12.8);

    /// <summary>Rated strength of accessory cord, in N: 0.2 d² kN with d in mm.</summary>
    /// <exception cref="DomainException">The diameter is not positive or absurd.</exception>
    [Callable("Materials", "What is a cord of this diameter rated for?", Assumes = "One straight strand, new; the rating is the same for polyamide and HMPE.",
        NotFor = "The strength of a knotted or worn cord, or of a cord over an edge of ice.")]
    [Formula("0.2e9*diameter*diameter", Symbol = "F")]
    [Source(En564, Standing.SecondHand)]
    [Example("CordRating(7 mm)", "9.80000 kN")]
    public static Force CordRating([Parameter("d", "mm", "nominal diameter", Above = 0, AtMost = 100, UsualFrom = 4, UsualTo = 8)] Length diameter)
    {
        double millimetres = Require.AtMost(Require.Above(diameter.Millimeters, 0, "mm", nameof(diameter)), 100, "mm", nameof(diameter));
        return Force.FromKilonewtons(0.2 * millimetres * millimetres);
    }
}
