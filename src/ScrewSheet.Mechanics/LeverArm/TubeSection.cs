using ScrewSheet.Quantities.Declarations;
using UnitsNet;

namespace ScrewSheet.Mechanics.LeverArm;

/// <summary>The cross-section of a tube with a concentric bore; made by <see cref="TubeSections"/>. All values are those of the section that carries load, the root of a thread included.</summary>
[SheetRecord("the cross-section of a tube: what it has against pull, bending, torsion and shear")]
[Source("EN 10210-2 and EN 10219-2, section properties of circular hollow sections", Standing.SecondHand)]
public readonly record struct TubeSection
{
    private readonly double outer, bore, contact;

    internal TubeSection(double outer, double bore, double contact)
    {
        this.outer = outer;
        this.bore = bore;
        this.contact = contact;
    }

    /// <summary>Outer diameter of the load-carrying section; at a thread the root diameter.</summary>
    [Member("D", "mm", "outer diameter of the load-carrying section; at a thread the root diameter")]
    public Length OuterDiameter => Length.FromMeters(outer);

    /// <summary>Wall thickness, half the difference of outer diameter and bore.</summary>
    [Member("t", "mm", "wall thickness")]
    public Length Wall => Length.FromMeters((outer - bore) / 2);

    /// <summary>Diameter of the bore, 0 for a solid bar.</summary>
    [Member("d", "mm", "diameter of the bore")]
    public Length Bore => Length.FromMeters(bore);

    /// <summary>Diameter that bears on the ice: the crest of a thread, else the outer diameter.</summary>
    [Member("D_t", "mm", "diameter that bears on the ice: the crest of the thread, else the outer diameter")]
    public Length ContactDiameter => Length.FromMeters(contact);

    /// <summary>Radius of the middle of the wall.</summary>
    [Member("R", "mm", "radius of the middle of the wall")]
    public Length MeanRadius => Length.FromMeters((outer + bore) / 4);

    /// <summary>Area of the metal, π/4 (D² − d²).</summary>
    [Member("A", "mm²", "area of the metal")]
    public Area Area => Area.FromSquareMeters(AreaSi);

    /// <summary>Second moment of area about a diameter, π/64 (D⁴ − d⁴).</summary>
    [Member("I", "mm⁴", "second moment of area about a diameter")]
    public AreaMomentOfInertia SecondMoment => AreaMomentOfInertia.FromMetersToTheFourth(SecondMomentSi);

    /// <summary>Elastic section modulus, 2 I / D.</summary>
    [Member("W_el", "mm³", "elastic section modulus")]
    public Volume ElasticModulus => Volume.FromCubicMeters(ElasticModulusSi);

    /// <summary>Plastic section modulus, (D³ − d³)/6.</summary>
    [Member("W_pl", "mm³", "plastic section modulus")]
    public Volume PlasticModulus => Volume.FromCubicMeters(PlasticModulusSi);

    /// <summary>Torsion constant, 2 I.</summary>
    [Member("I_t", "mm⁴", "torsion constant")]
    public AreaMomentOfInertia TorsionConstant => AreaMomentOfInertia.FromMetersToTheFourth(2 * SecondMomentSi);

    /// <summary>Torsional section modulus, 2 W_el.</summary>
    [Member("W_t", "mm³", "torsional section modulus")]
    public Volume TorsionModulus => Volume.FromCubicMeters(2 * ElasticModulusSi);

    /// <summary>Area that carries shear in the plastic state, 2 A / π.</summary>
    [Member("A_v", "mm²", "area that carries shear in the plastic state")]
    [Source("EN 1993-1-1:2005, 6.2.6(3)", Standing.FromMemory)]
    public Area ShearArea => Area.FromSquareMeters(ShearAreaSi);

    /// <summary>Radius of gyration, √(I/A).</summary>
    [Member("i", "mm", "radius of gyration")]
    public Length RadiusOfGyration => Length.FromMeters(Math.Sqrt((outer * outer) + (bore * bore)) / 4);

    /// <summary>W_pl / W_el: 4/π for a thin wall up to 16/(3 π) for a solid bar.</summary>
    [Member("", "", "plastic over elastic section modulus: 1.273 for a thin wall up to 1.698 for a solid bar")]
    public double ShapeFactor => outer > 0 ? PlasticModulusSi / ElasticModulusSi : 0;

    internal double AreaSi => Math.PI / 4 * (outer - bore) * (outer + bore);

    internal double SecondMomentSi => AreaSi * ((outer * outer) + (bore * bore)) / 16;

    internal double ElasticModulusSi => outer > 0 ? 2 * SecondMomentSi / outer : 0;

    internal double PlasticModulusSi => (outer - bore) * ((outer * outer) + (outer * bore) + (bore * bore)) / 6;

    internal double ShearAreaSi => 2 * AreaSi / Math.PI;
}
