using ScrewSheet.Mechanics.LeverArm;
using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;
using UnitsNet;
using Quantity = ScrewSheet.Quantities.Quantity;

namespace ScrewSheet.Mechanics;

/// <summary>The pressure between an embedded body and the ice, at one depth and along the body.</summary>
public static class ContactPressures
{
    private const string Crushing = "Above about 5 MPa ice may crush here (compressive strength 5 to 25 MPa): the elastic answer then gives stiffness and first crushing only.";

    /// <summary>Contact pressure p = k·y/D, the mean over the width, in Pa.</summary>
    /// <exception cref="DomainException">A value is out of range.</exception>
    [Callable(BodyText.Topic, "How hard does the body press on the ice where it is pushed aside so far?", Assumes = BodyText.Elastic, NotFor = BodyText.NotStrength)]
    [Formula("foundationStiffness*deflection/width", Symbol = "p")]
    [CautionWhen("Abs(p) > 5e6", Crushing)]
    [Source(BodyText.Hetenyi, Standing.SecondHand)]
    [Example("ContactPressure(0.1149326 mm, 1 GPa, 17 mm)", "6.760741 MPa")]
    public static Pressure ContactPressure(
        [Parameter("y", "mm", "deflection at the place, positive with the load", AtLeast = -Most.Millimetres, AtMost = Most.Millimetres)] Length deflection,
        [Parameter("k", "MPa", BodyText.Stiffness, Above = 0, AtMost = Most.Megapascals, UsualFrom = 100, UsualTo = 11000)] Pressure foundationStiffness,
        [Parameter("D", "mm", BodyText.Width, Above = 0, AtMost = Most.Millimetres)] Length width) =>
        Pressure.FromPascals(BodyText.Bed(foundationStiffness) * Admit.Signed(deflection.Meters, Most.Millimetres, Scale.Millimetre, nameof(deflection)) / BodyText.Wide(width));

    /// <summary>Contact pressures at evenly spaced depths from the face of the sound ice to the tip; depths by <see cref="DepthsAlong"/>.</summary>
    /// <exception cref="DomainException">A value is out of range, or the rigidity is not in N·m².</exception>
    [Callable(BodyText.Topic, "How is the pressure on the ice spread along the body?", Assumes = BodyText.Elastic, NotFor = BodyText.NotStrength)]
    [NoFormula("FiniteBodyDeflection times k/D at each depth")]
    [Source(BodyText.Hetenyi, Standing.SecondHand)]
    [Example("Largest(ContactPressureAlong(4 kN, 50 mm, 3000 MPa, 440 N·m², 17 mm, 120 mm, 3))", "47.77166 MPa")]
    public static Series<Pressure> ContactPressureAlong(
        [Parameter("P", "kN", BodyText.Load, AtLeast = -Most.Kilonewtons, AtMost = Most.Kilonewtons)] Force load,
        [Parameter("a", "mm", BodyText.Arm, AtLeast = 0, AtMost = Most.Millimetres, UsualTo = 300)] Length leverArm,
        [Parameter("k", "MPa", BodyText.Stiffness, Above = 0, AtMost = Most.Megapascals, UsualFrom = 100, UsualTo = 11000)] Pressure foundationStiffness,
        [Parameter("EI", "N·m²", BodyText.Rigidity, Above = 0, AtMost = BodyText.MostRigidity)] Quantity flexuralRigidity,
        [Parameter("D", "mm", BodyText.Width, Above = 0, AtMost = Most.Millimetres)] Length width,
        [Parameter("L", "mm", BodyText.Length, Above = 0, AtMost = Most.Millimetres, UsualFrom = 30, UsualTo = 250)] Length embeddedLength,
        [Parameter("n", "", "how many depths, face and tip included", AtLeast = 2, AtMost = 10000)] int points = 25)
    {
        double newtons = BodyText.Newtons(load), moment = newtons * BodyText.LeverArm(leverArm), stiffness = BodyText.Bed(foundationStiffness);
        double beta = WinklerBeam.Beta(stiffness, BodyText.Rigid(flexuralRigidity)), length = BodyText.Embedded(embeddedLength), wide = BodyText.Wide(width);
        return Series.Of<Pressure>(Depths(length, points).Select(x => WinklerBeam.Finite(newtons, moment, stiffness, beta, length, x).Deflection * stiffness / wide));
    }

    /// <summary>Evenly spaced depths from the face of the sound ice to the tip, in m: the places of <see cref="ContactPressureAlong"/>.</summary>
    /// <exception cref="DomainException">A value is out of range.</exception>
    [Callable(BodyText.Topic, "At which depths are the values along the body taken?")]
    [NoFormula("embeddedLength times i/(points − 1), i from 0")]
    [Source("Even division", Standing.Derived)]
    [Example("Largest(DepthsAlong(120 mm, 5))", "120 mm")]
    public static Series<Length> DepthsAlong(
        [Parameter("L", "mm", BodyText.Length, Above = 0, AtMost = Most.Millimetres, UsualFrom = 30, UsualTo = 250)] Length embeddedLength,
        [Parameter("n", "", "how many depths, face and tip included", AtLeast = 2, AtMost = 10000)] int points = 25) =>
        Series.Of<Length>(Depths(BodyText.Embedded(embeddedLength), points));

    private static double[] Depths(double length, int points)
    {
        Require.AtMost(Require.AtLeast(points, 2, "", nameof(points)), 10000, "", nameof(points));
        double[] depths = new double[points];
        for (int i = 0; i < points; i++) depths[i] = length * i / (points - 1);
        return depths;
    }
}
