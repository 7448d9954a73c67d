using ScrewSheet.Mechanics.LeverArm;
using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;
using UnitsNet;
using Quantity = ScrewSheet.Quantities.Quantity;

namespace ScrewSheet.Mechanics;

/// <summary>Cone breakout of anchors in concrete: the forms the ice analogues come from, kept for comparison.</summary>
public static class ConcreteCones
{
    private const string Topic = "Surface cone (analogue)";
    private const string NotIce = "Ice: the coefficients belong to concrete and carry units.";
    private const string Depth = "embedment depth";
    private const double MostMillimetres = 10000, MostCoefficient = 1000;

    /// <summary>Cone breakout in concrete, in N: k·√f·h^1.5, the coefficient with its unit.</summary>
    /// <exception cref="DomainException">A value is not positive or absurd, or the coefficient has another dimension.</exception>
    [Callable(Topic, "What does a concrete cone carry by the codes' form?", Assumes = "One anchor far from edges, cracked or uncracked as the coefficient says.", NotFor = NotIce)]
    [Formula("coefficient*Sqrt(concreteStrength)*Pow(depth, 1.5)", Symbol = "N")]
    [Source("ACI 318-19, 17.6.2; EN 1992-4:2018, concrete cone", Standing.FromMemory)]
    [Example("ConcreteCone(7.7 MPa^0.5·mm^0.5, 20 MPa, 100 mm)", "34.43545 kN")]
    public static Force ConcreteCone(
        [Parameter("k", "MPa^0.5·mm^0.5", "coefficient of the code, with its unit; see ConeCoefficients", Above = 0, AtMost = MostCoefficient, UsualFrom = 7, UsualTo = 13)] Quantity coefficient,
        [Parameter("f_c", "MPa", "compressive strength of the concrete, cylinder", Above = 0, AtMost = Most.Megapascals, UsualFrom = 12, UsualTo = 60)] Pressure concreteStrength,
        [Parameter("h", "mm", Depth, Above = 0, AtMost = MostMillimetres, UsualFrom = 40, UsualTo = 600)] Length depth)
    {
        if (coefficient.Dimension != ConeCoefficients.Dimension) throw new DomainException("coefficient must carry its unit, such as MPa^0.5·mm^0.5 or psi^0.5·in^0.5.", nameof(coefficient));
        double k = Admit.Positive(coefficient.Si, MostCoefficient, new Scale("MPa^0.5·mm^0.5", ConeCoefficients.SiUnit), nameof(coefficient));
        double deep = Deep(depth);
        return Force.FromNewtons(k * Math.Sqrt(Strong(concreteStrength)) * deep * Math.Sqrt(deep));
    }

    /// <summary>Cone breakout of deep cast-in anchors (ACI), in N: 16·√f'c·h^(5/3) in lbf, psi and inches.</summary>
    /// <exception cref="DomainException">A value is not positive or absurd.</exception>
    [Callable(Topic, "What does a concrete cone of a deep cast-in anchor carry?", Assumes = "Cast-in headed anchor, 11 in to 25 in deep.", NotFor = NotIce)]
    [Formula("16*4.4482216152605*Sqrt(concreteStrength/6894.757293168362)*Pow(depth/0.0254, 5.0/3)", Symbol = "N")]
    [Source("ACI 318-19, 17.6.2", Standing.FromMemory)]
    [Example("ConcreteConeDeep(27.57903 MPa, 508 mm)", "663.3149 kN")]
    public static Force ConcreteConeDeep(
        [Parameter("f'c", "MPa", "compressive strength of the concrete, cylinder", Above = 0, AtMost = Most.Megapascals, UsualFrom = 12, UsualTo = 60)] Pressure concreteStrength,
        [Parameter("h", "mm", Depth, Above = 0, AtMost = MostMillimetres, UsualFrom = 279.4, UsualTo = 635)] Length depth) =>
        Force.FromNewtons(16 * 4.4482216152605 * Math.Sqrt(Strong(concreteStrength) / 6894.757293168362) * Math.Pow(Deep(depth) / 0.0254, 5.0 / 3));

    /// <summary>Factor for a near edge: 0.7 + 0.3·c/(1.5·h), at most 1.</summary>
    /// <exception cref="DomainException">A value is negative or absurd.</exception>
    [Callable(Topic, "How much does a near edge take from a concrete cone?", NotFor = NotIce)]
    [Formula("Min(1, 0.7 + 0.3*edgeDistance/(1.5*depth))", Symbol = "ψ_ed")]
    [Source("ACI 318-19, 17.6.2", Standing.FromMemory)]
    [Example("ConeEdgeFactor(60 mm, 50 mm)", "0.940000")]
    public static double ConeEdgeFactor(
        [Parameter("c", "mm", "distance to the nearest edge", AtLeast = 0, AtMost = Most.Millimetres)] Length edgeDistance,
        [Parameter("h", "mm", Depth, Above = 0, AtMost = MostMillimetres)] Length depth) =>
        Math.Min(1, 0.7 + (0.3 * Admit.Between(edgeDistance.Meters, 0, Most.Millimetres, Scale.Millimetre, nameof(edgeDistance)) / (1.5 * Deep(depth))));

    /// <summary>Factor for a load beside the anchor's axis: 1/(1 + e/(1.5·h)).</summary>
    /// <exception cref="DomainException">A value is negative or absurd.</exception>
    [Callable(Topic, "How much does an eccentric load take from a concrete cone?", NotFor = NotIce)]
    [Formula("1/(1 + eccentricity/(1.5*depth))", Symbol = "ψ_ec")]
    [Source("ACI 318-19, 17.6.2", Standing.FromMemory)]
    [Example("ConeEccentricityFactor(10 mm, 50 mm)", "0.8823529")]
    public static double ConeEccentricityFactor(
        [Parameter("e", "mm", "distance of the load from the axis", AtLeast = 0, AtMost = Most.Millimetres)] Length eccentricity,
        [Parameter("h", "mm", Depth, Above = 0, AtMost = MostMillimetres)] Length depth) =>
        1 / (1 + (Admit.Between(eccentricity.Meters, 0, Most.Millimetres, Scale.Millimetre, nameof(eccentricity)) / (1.5 * Deep(depth))));

    private static double Strong(Pressure concreteStrength) => Admit.Positive(concreteStrength.Pascals, Most.Megapascals, Scale.Megapascal, nameof(concreteStrength));

    private static double Deep(Length depth) => Admit.Positive(depth.Meters, MostMillimetres, Scale.Millimetre, nameof(depth));
}

/// <summary>The coefficients of the concrete codes, each with its unit: a bare 24 or 10 means nothing.</summary>
[SheetValues("coefficients of concrete cone breakout, with their units")]
public static class ConeCoefficients
{
    private const string Aci = "ACI 318-19, 17.6.2";
    private const string En = "EN 1992-4:2018";

    /// <summary>One MPa^0.5·mm^0.5 in coherent SI.</summary>
    internal static readonly double SiUnit = Math.Sqrt(1e6 * 1e-3);

    private static readonly double UsUnit = Math.Sqrt(6894.757293168362 * 0.0254);

    internal static Dimension Dimension { get; } = Dimension.Of(0, 1, -2).Power(1, 2)!.Value;

    /// <summary>Cast-in anchors, US customary: 24 psi^0.5·in^0.5.</summary>
    [Member("k_c", "psi^0.5·in^0.5", "cast-in anchors, from the US customary text")]
    [Source(Aci, Standing.FromMemory)]
    public static Quantity AciCastInUs => Quantity.FromSi(24 * UsUnit, Dimension);

    /// <summary>Post-installed anchors, US customary: 17 psi^0.5·in^0.5.</summary>
    [Member("k_c", "psi^0.5·in^0.5", "post-installed anchors, from the US customary text")]
    [Source(Aci, Standing.FromMemory)]
    public static Quantity AciPostInstalledUs => Quantity.FromSi(17 * UsUnit, Dimension);

    /// <summary>Cast-in anchors, SI text: 10 MPa^0.5·mm^0.5.</summary>
    [Member("k_c", "MPa^0.5·mm^0.5", "cast-in anchors, from the SI text")]
    [Source(Aci, Standing.FromMemory)]
    public static Quantity AciCastIn => Quantity.FromSi(10 * SiUnit, Dimension);

    /// <summary>Post-installed anchors, SI text: 7 MPa^0.5·mm^0.5.</summary>
    [Member("k_c", "MPa^0.5·mm^0.5", "post-installed anchors, from the SI text")]
    [Source(Aci, Standing.FromMemory)]
    public static Quantity AciPostInstalled => Quantity.FromSi(7 * SiUnit, Dimension);

    /// <summary>Post-installed anchors in cracked concrete: 7.7 MPa^0.5·mm^0.5.</summary>
    [Member("k_1", "MPa^0.5·mm^0.5", "post-installed anchors, cracked concrete")]
    [Source(En, Standing.FromMemory)]
    public static Quantity EnCracked => Quantity.FromSi(7.7 * SiUnit, Dimension);

    /// <summary>Post-installed anchors in uncracked concrete: 11.0 MPa^0.5·mm^0.5.</summary>
    [Member("k_1", "MPa^0.5·mm^0.5", "post-installed anchors, uncracked concrete")]
    [Source(En, Standing.FromMemory)]
    public static Quantity EnUncracked => Quantity.FromSi(11 * SiUnit, Dimension);

    /// <summary>Headed anchors in cracked concrete: 8.9 MPa^0.5·mm^0.5.</summary>
    [Member("k_1", "MPa^0.5·mm^0.5", "headed anchors, cracked concrete")]
    [Source(En, Standing.FromMemory)]
    public static Quantity EnHeadedCracked => Quantity.FromSi(8.9 * SiUnit, Dimension);

    /// <summary>Headed anchors in uncracked concrete: 12.7 MPa^0.5·mm^0.5.</summary>
    [Member("k_1", "MPa^0.5·mm^0.5", "headed anchors, uncracked concrete")]
    [Source(En, Standing.FromMemory)]
    public static Quantity EnHeadedUncracked => Quantity.FromSi(12.7 * SiUnit, Dimension);
}
