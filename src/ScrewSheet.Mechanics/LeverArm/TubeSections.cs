using ScrewSheet.Quantities.Declarations;
using UnitsNet;

namespace ScrewSheet.Mechanics.LeverArm;

/// <summary>Tube sections from the dimensions a caliper gives.</summary>
public static class TubeSections
{
    private const string Topic = "Lever arm";
    private const string En10210 = "EN 10210-2 and EN 10219-2, section properties of circular hollow sections";

    /// <summary>The section of a tube from outer diameter and wall, both above 0 mm, wall at most half the diameter; EN 10210-2.</summary>
    /// <exception cref="DomainException">A dimension is not above 0 mm, is absurd, or the wall is thicker than the radius.</exception>
    [Callable(Topic, "Section properties of a tube from its outer diameter and wall.", Assumes = "The bore is concentric and there is no thread; for a threaded body use TubeAtThreadRoot.",
        NotFor = "A tube with slots, flats or a crimped end.")]
    [Let("D", "outerDiameter", "m")]
    [Let("d", "outerDiameter - 2*wall", "m")]
    [Needs("2*wall <= outerDiameter")]
    [Formula("pi/4*(Pow(D, 2) - Pow(d, 2))", Symbol = "A", Member = "Area")]
    [Formula("pi/64*(Pow(D, 4) - Pow(d, 4))", Symbol = "I", Member = "SecondMoment")]
    [Formula("pi/32*(Pow(D, 4) - Pow(d, 4))/D", Symbol = "W_el", Member = "ElasticModulus")]
    [Formula("(Pow(D, 3) - Pow(d, 3))/6", Symbol = "W_pl", Member = "PlasticModulus")]
    [Formula("pi/32*(Pow(D, 4) - Pow(d, 4))", Symbol = "I_t", Member = "TorsionConstant")]
    [Formula("pi/16*(Pow(D, 4) - Pow(d, 4))/D", Symbol = "W_t", Member = "TorsionModulus")]
    [Formula("(Pow(D, 2) - Pow(d, 2))/2", Symbol = "A_v", Member = "ShearArea")]
    [Formula("Sqrt(Pow(D, 2) + Pow(d, 2))/4", Symbol = "i", Member = "RadiusOfGyration")]
    [Formula("16/(3*pi)*(Pow(D, 4) - D*Pow(d, 3))/(Pow(D, 4) - Pow(d, 4))", Member = "ShapeFactor")]
    [Formula("D", Symbol = "D", Member = "OuterDiameter")]
    [Formula("(D - d)/2", Symbol = "t", Member = "Wall")]
    [Formula("d", Symbol = "d", Member = "Bore")]
    [Formula("(D + d)/4", Symbol = "R", Member = "MeanRadius")]
    [Formula("D", Symbol = "D_t", Member = "ContactDiameter")]
    [Example("Tube(17 mm, 1.5 mm).PlasticModulus", "361.5000 mm³")]
    [Example("Tube(48.3 mm, 3.2 mm).SecondMoment", "115856.5 mm⁴")]
    [Source(En10210, Standing.SecondHand)]
    public static TubeSection Tube(
        [Parameter("D", "mm", "outer diameter", Above = 0, AtMost = Most.Millimetres, UsualFrom = 5, UsualTo = 200)] Length outerDiameter,
        [Parameter("t", "mm", "wall thickness, at most half the outer diameter", Above = 0, AtMost = Most.Millimetres)] Length wall)
    {
        double outer = Outer(outerDiameter.Meters, nameof(outerDiameter));
        return new TubeSection(outer, BoreOf(outer, wall.Meters), outer);
    }

    /// <summary>The section of a tube from outer diameter and bore in mm, bore less than the outer diameter; EN 10210-2.</summary>
    /// <exception cref="DomainException">A dimension is out of range or the bore is not smaller than the outer diameter.</exception>
    [Callable(Topic, "Section properties of a tube from its outer diameter and bore.", Assumes = "The bore is concentric and there is no thread.",
        NotFor = "A tube with slots, flats or a crimped end.")]
    [Let("D", "outerDiameter", "m")]
    [Let("d", "bore", "m")]
    [Needs("bore < outerDiameter")]
    [Formula("pi/4*(Pow(D, 2) - Pow(d, 2))", Symbol = "A", Member = "Area")]
    [Formula("pi/64*(Pow(D, 4) - Pow(d, 4))", Symbol = "I", Member = "SecondMoment")]
    [Formula("pi/32*(Pow(D, 4) - Pow(d, 4))/D", Symbol = "W_el", Member = "ElasticModulus")]
    [Formula("(Pow(D, 3) - Pow(d, 3))/6", Symbol = "W_pl", Member = "PlasticModulus")]
    [Formula("pi/32*(Pow(D, 4) - Pow(d, 4))", Symbol = "I_t", Member = "TorsionConstant")]
    [Formula("pi/16*(Pow(D, 4) - Pow(d, 4))/D", Symbol = "W_t", Member = "TorsionModulus")]
    [Formula("(Pow(D, 2) - Pow(d, 2))/2", Symbol = "A_v", Member = "ShearArea")]
    [Formula("Sqrt(Pow(D, 2) + Pow(d, 2))/4", Symbol = "i", Member = "RadiusOfGyration")]
    [Formula("16/(3*pi)*(Pow(D, 4) - D*Pow(d, 3))/(Pow(D, 4) - Pow(d, 4))", Member = "ShapeFactor")]
    [Formula("D", Symbol = "D", Member = "OuterDiameter")]
    [Formula("(D - d)/2", Symbol = "t", Member = "Wall")]
    [Formula("d", Symbol = "d", Member = "Bore")]
    [Formula("(D + d)/4", Symbol = "R", Member = "MeanRadius")]
    [Formula("D", Symbol = "D_t", Member = "ContactDiameter")]
    [Example("TubeOfBore(17 mm, 14 mm).ElasticModulus", "260.4808 mm³")]
    [Source(En10210, Standing.SecondHand)]
    public static TubeSection TubeOfBore(
        [Parameter("D", "mm", "outer diameter", Above = 0, AtMost = Most.Millimetres, UsualFrom = 5, UsualTo = 200)] Length outerDiameter,
        [Parameter("d", "mm", "diameter of the bore, less than the outer diameter; 0 for a solid bar", AtLeast = 0, AtMost = Most.Millimetres)] Length bore)
    {
        double outer = Outer(outerDiameter.Meters, nameof(outerDiameter));
        return new TubeSection(outer, Admit.Under(bore.Meters, 0, outer / 1e-3, Scale.Millimetre, nameof(bore)), outer);
    }

    /// <summary>The section of a tube from bore and wall in mm, when the outside is hard to reach; EN 10210-2.</summary>
    /// <exception cref="DomainException">A dimension is out of range.</exception>
    [Callable(Topic, "Section properties of a tube from its bore and wall.", Assumes = "The bore is concentric and there is no thread.",
        NotFor = "A tube with slots, flats or a crimped end.")]
    [Let("D", "bore + 2*wall", "m")]
    [Let("d", "bore", "m")]
    [Formula("pi/4*(Pow(D, 2) - Pow(d, 2))", Symbol = "A", Member = "Area")]
    [Formula("pi/64*(Pow(D, 4) - Pow(d, 4))", Symbol = "I", Member = "SecondMoment")]
    [Formula("pi/32*(Pow(D, 4) - Pow(d, 4))/D", Symbol = "W_el", Member = "ElasticModulus")]
    [Formula("(Pow(D, 3) - Pow(d, 3))/6", Symbol = "W_pl", Member = "PlasticModulus")]
    [Formula("pi/32*(Pow(D, 4) - Pow(d, 4))", Symbol = "I_t", Member = "TorsionConstant")]
    [Formula("pi/16*(Pow(D, 4) - Pow(d, 4))/D", Symbol = "W_t", Member = "TorsionModulus")]
    [Formula("(Pow(D, 2) - Pow(d, 2))/2", Symbol = "A_v", Member = "ShearArea")]
    [Formula("Sqrt(Pow(D, 2) + Pow(d, 2))/4", Symbol = "i", Member = "RadiusOfGyration")]
    [Formula("16/(3*pi)*(Pow(D, 4) - D*Pow(d, 3))/(Pow(D, 4) - Pow(d, 4))", Member = "ShapeFactor")]
    [Formula("D", Symbol = "D", Member = "OuterDiameter")]
    [Formula("(D - d)/2", Symbol = "t", Member = "Wall")]
    [Formula("d", Symbol = "d", Member = "Bore")]
    [Formula("(D + d)/4", Symbol = "R", Member = "MeanRadius")]
    [Formula("D", Symbol = "D_t", Member = "ContactDiameter")]
    [Example("TubeRoundBore(14 mm, 1.5 mm).Area", "73.04203 mm²")]
    [Source(En10210, Standing.SecondHand)]
    public static TubeSection TubeRoundBore(
        [Parameter("d", "mm", "diameter of the bore; 0 for a solid bar", AtLeast = 0, AtMost = Most.Millimetres)] Length bore,
        [Parameter("t", "mm", "wall thickness", Above = 0, AtMost = Most.Millimetres)] Length wall)
    {
        double inner = Admit.Between(bore.Meters, 0, Most.Millimetres, Scale.Millimetre, nameof(bore));
        double outer = inner + (2 * Admit.Positive(wall.Meters, Most.Millimetres, Scale.Millimetre, nameof(wall)));
        return new TubeSection(outer, inner, outer);
    }

    /// <summary>The smallest section of a threaded tube: strength from the root diameter, ice contact from the crest; all in mm.</summary>
    /// <exception cref="DomainException">A dimension is out of range, the root is larger than the crest or the bore is not smaller than the root.</exception>
    [Callable(Topic, "Section properties of a threaded tube at the root of its thread.",
        Assumes = "The tube at the thread root carries the load; the crest only bears on the ice.",
        NotFor = "The notch effect of the thread root: give a stress concentration of your own to NotchStress.")]
    [Let("D", "rootDiameter", "m")]
    [Let("d", "bore", "m")]
    [Needs("rootDiameter <= threadDiameter && bore < rootDiameter")]
    [Formula("pi/4*(Pow(D, 2) - Pow(d, 2))", Symbol = "A", Member = "Area")]
    [Formula("pi/64*(Pow(D, 4) - Pow(d, 4))", Symbol = "I", Member = "SecondMoment")]
    [Formula("pi/32*(Pow(D, 4) - Pow(d, 4))/D", Symbol = "W_el", Member = "ElasticModulus")]
    [Formula("(Pow(D, 3) - Pow(d, 3))/6", Symbol = "W_pl", Member = "PlasticModulus")]
    [Formula("pi/32*(Pow(D, 4) - Pow(d, 4))", Symbol = "I_t", Member = "TorsionConstant")]
    [Formula("pi/16*(Pow(D, 4) - Pow(d, 4))/D", Symbol = "W_t", Member = "TorsionModulus")]
    [Formula("(Pow(D, 2) - Pow(d, 2))/2", Symbol = "A_v", Member = "ShearArea")]
    [Formula("Sqrt(Pow(D, 2) + Pow(d, 2))/4", Symbol = "i", Member = "RadiusOfGyration")]
    [Formula("16/(3*pi)*(Pow(D, 4) - D*Pow(d, 3))/(Pow(D, 4) - Pow(d, 4))", Member = "ShapeFactor")]
    [Formula("D", Symbol = "D", Member = "OuterDiameter")]
    [Formula("(D - d)/2", Symbol = "t", Member = "Wall")]
    [Formula("d", Symbol = "d", Member = "Bore")]
    [Formula("(D + d)/4", Symbol = "R", Member = "MeanRadius")]
    [Formula("threadDiameter", Symbol = "D_t", Member = "ContactDiameter")]
    [Example("TubeAtThreadRoot(20 mm, 17 mm, 14 mm).SecondMoment", "2214.087 mm⁴")]
    [Source(En10210, Standing.SecondHand)]
    public static TubeSection TubeAtThreadRoot(
        [Parameter("D_t", "mm", "diameter over the crests of the thread", Above = 0, AtMost = Most.Millimetres, UsualFrom = 5, UsualTo = 200)] Length threadDiameter,
        [Parameter("D", "mm", "diameter at the root of the thread, at most that over the crests", Above = 0, AtMost = Most.Millimetres)] Length rootDiameter,
        [Parameter("d", "mm", "diameter of the bore, less than the root diameter; 0 for a solid bar", AtLeast = 0, AtMost = Most.Millimetres)] Length bore)
    {
        double crest = Outer(threadDiameter.Meters, nameof(threadDiameter));
        double root = Admit.Positive(rootDiameter.Meters, crest / 1e-3, Scale.Millimetre, nameof(rootDiameter));
        return new TubeSection(root, Admit.Under(bore.Meters, 0, root / 1e-3, Scale.Millimetre, nameof(bore)), crest);
    }


    private static double Outer(double outer, string name) => Admit.Positive(outer, Most.Millimetres, Scale.Millimetre, name);

    private static double BoreOf(double outer, double wall)
    {
        const double rounding = 1e-12;
        double most = outer / 2 / 1e-3;
        if (wall > outer / 2 && wall <= outer / 2 * (1 + rounding)) return 0;
        return Math.Max(0, outer - (2 * Admit.Positive(wall, most, Scale.Millimetre, nameof(wall))));
    }
}
