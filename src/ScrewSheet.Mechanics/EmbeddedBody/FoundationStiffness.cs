using ScrewSheet.Mechanics.LeverArm;
using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;
using UnitsNet;
using Quantity = ScrewSheet.Quantities.Quantity;

namespace ScrewSheet.Mechanics;

/// <summary>How stiffly ice holds a body: the foundation stiffness and the estimates for it, the characteristic length and the length class.</summary>
public static class FoundationStiffness
{
    private static readonly Dimension PerMetre = Dimension.Of(-1);

    private const string OnNotIn = "For a beam lying on a half space; a body buried in the medium is held up to twice as stiffly, near the free face less.";

    /// <summary>Flexural rigidity E·I in N·m².</summary>
    /// <exception cref="DomainException">A value is not positive.</exception>
    [Callable(BodyText.Topic, "How stiff in bending is a body?")]
    [Formula("elasticModulus*secondMoment", Symbol = "EI")]
    [Source("Beam theory", Standing.Derived)]
    [Example("FlexuralRigidity(200 GPa, 2214.087 mm⁴)", "442.8174 N·m²")]
    [return: InUnit("N·m²")]
    public static Quantity FlexuralRigidity(
        [Parameter("E", "GPa", "elastic modulus of the body", Above = 0, AtMost = Most.Gigapascals, UsualFrom = 3, UsualTo = 220)] Pressure elasticModulus,
        [Parameter("I", "mm⁴", "second moment of area of its smallest section", Above = 0, AtMost = Most.QuarticMillimetres)] AreaMomentOfInertia secondMoment) =>
        Quantity.FromSi(
            Admit.Positive(elasticModulus.Pascals, Most.Gigapascals, Scale.Gigapascal, nameof(elasticModulus))
            * Admit.Positive(secondMoment.MetersToTheFourth, Most.QuarticMillimetres, Scale.QuarticMillimetre, nameof(secondMoment)), BodyText.RigidityDimension);

    /// <summary>Foundation stiffness per unit length k = k0·D, in N/m².</summary>
    /// <exception cref="DomainException">A value is not positive.</exception>
    [Callable(BodyText.Topic, "What foundation stiffness per unit length follows from a subgrade modulus?", Assumes = "The whole width bears.")]
    [Formula("subgradeModulus*width", Symbol = "k")]
    [Source(BodyText.Hetenyi, Standing.SecondHand)]
    [Example("SubgradeStiffness(350000000 N/m³, 68 mm)", "23.80000 MPa")]
    public static Pressure SubgradeStiffness(
        [Parameter("k0", "N/m³", "subgrade modulus: pressure for each metre of displacement", Above = 0, AtMost = BodyText.MostSubgrade)] SpecificWeight subgradeModulus,
        [Parameter("D", "mm", BodyText.Width, Above = 0, AtMost = Most.Millimetres)] Length width) =>
        Pressure.FromPascals(Admit.Positive(subgradeModulus.NewtonsPerCubicMeter, BodyText.MostSubgrade, new Scale("N/m³", 1), nameof(subgradeModulus)) * BodyText.Wide(width));

    /// <summary>β of a beam on an elastic bed, in 1/m: (k/(4EI))^(1/4).</summary>
    /// <exception cref="DomainException">A value is out of range, or the rigidity is not in N·m².</exception>
    [Callable(BodyText.Topic, "How stiff is the ice against the body (β)?", Assumes = BodyText.Elastic)]
    [Formula("Pow(foundationStiffness/(4*flexuralRigidity), 0.25)", Symbol = "β")]
    [Source(BodyText.Hetenyi, Standing.SecondHand)]
    [Example("FoundationBeta(1 GPa, 442.8173 N·m²)", "27.41125 1/m")]
    [return: InUnit("1/m")]
    public static Quantity FoundationBeta(
        [Parameter("k", "MPa", BodyText.Stiffness, Above = 0, AtMost = Most.Megapascals, UsualFrom = 100, UsualTo = 11000)] Pressure foundationStiffness,
        [Parameter("EI", "N·m²", BodyText.Rigidity, Above = 0, AtMost = BodyText.MostRigidity)] Quantity flexuralRigidity) =>
        Quantity.FromSi(WinklerBeam.Beta(BodyText.Bed(foundationStiffness), BodyText.Rigid(flexuralRigidity)), PerMetre);

    /// <summary>Characteristic length 1/β of a beam on an elastic bed, in m: β = (k/(4EI))^(1/4).</summary>
    /// <exception cref="DomainException">A value is not positive, or the rigidity is not in N·m².</exception>
    [Callable(BodyText.Topic, "How far along a body does the ice share a transverse load?", Assumes = BodyText.Elastic,
        NotFor = "Judging axial pull: length helps there.")]
    [Formula("Pow(4*flexuralRigidity/foundationStiffness, 0.25)", Symbol = "λ")]
    [Source(BodyText.Hetenyi, Standing.SecondHand)]
    [Example("CharacteristicLength(1 GPa, 442.8173 N·m²)", "36.48137 mm")]
    public static Length CharacteristicLength(
        [Parameter("k", "MPa", BodyText.Stiffness, Above = 0, AtMost = Most.Megapascals, UsualFrom = 100, UsualTo = 11000)] Pressure foundationStiffness,
        [Parameter("EI", "N·m²", BodyText.Rigidity, Above = 0, AtMost = BodyText.MostRigidity)] Quantity flexuralRigidity) =>
        Length.FromMeters(1 / WinklerBeam.Beta(BodyText.Bed(foundationStiffness), BodyText.Rigid(flexuralRigidity)));

    /// <summary>Whether a body is short enough to move as a rigid bar, long enough that its tip does not matter, or between.</summary>
    /// <exception cref="DomainException">A length is not positive.</exception>
    [Callable(BodyText.Topic, "Is a body short, middling or long for the ice that holds it?", Assumes = BodyText.Elastic)]
    [NoFormula("compares L/λ with π/4 and π: rigid below the first, semi-infinite above the second, finite between")]
    [Source(BodyText.Hetenyi, Standing.SecondHand)]
    [Example("EmbeddedLengthClass(120 mm, 36.48137 mm)", "SemiInfinite")]
    public static LengthClass EmbeddedLengthClass(
        [Parameter("L", "mm", BodyText.Length, Above = 0, AtMost = Most.Millimetres)] Length embeddedLength,
        [Parameter("λ", "mm", "characteristic length 1/β", Above = 0, AtMost = Most.Millimetres)] Length characteristicLength)
    {
        double ratio = BodyText.Embedded(embeddedLength) / Admit.Positive(characteristicLength.Meters, Most.Millimetres, Scale.Millimetre, nameof(characteristicLength));
        return ratio < Math.PI / 4 ? LengthClass.Rigid : ratio > Math.PI ? LengthClass.SemiInfinite : LengthClass.Finite;
    }

    /// <summary>Vesic's estimate of the foundation stiffness, in N/m².</summary>
    /// <exception cref="DomainException">A value is not positive, Poisson's ratio is 0.5 or more, or the rigidity is not in N·m².</exception>
    [Callable(BodyText.Topic, "What foundation stiffness goes with an ice modulus (Vesic)?", Assumes = OnNotIn, NotFor = "More than an estimate: between Vesic and Biot lies a factor of 1.5.")]
    [Formula("0.65*Pow(iceModulus*Pow(width, 4)/flexuralRigidity, 1.0/12)*iceModulus/(1 - poissonRatio*poissonRatio)", Symbol = "k")]
    [Source("Vesic, 1961", Standing.FromMemory)]
    [Example("FoundationModulusVesic(5000 MPa, 0.325, 17 mm, 442.8173 N·m²)", "3616.114 MPa")]
    public static Pressure FoundationModulusVesic(
        [Parameter("E_s", "MPa", "elastic modulus of the ice at the rate and temperature of the load: 9,330 at an instant, about 1,000 slowly", Above = 0, AtMost = Most.Megapascals, UsualFrom = 100, UsualTo = 10000)] Pressure iceModulus,
        [Parameter("ν", "", "Poisson's ratio of the ice", AtLeast = 0, Below = 0.5, UsualFrom = 0.3, UsualTo = 0.4)] double poissonRatio,
        [Parameter("B", "mm", BodyText.Width, Above = 0, AtMost = Most.Millimetres)] Length width,
        [Parameter("EI", "N·m²", BodyText.Rigidity, Above = 0, AtMost = BodyText.MostRigidity)] Quantity flexuralRigidity)
    {
        double stiff = Modulus(iceModulus), rigid = BodyText.Rigid(flexuralRigidity), plane = 1 - Squared(poissonRatio), wide = BodyText.Wide(width);
        return Pressure.FromPascals(0.65 * Math.Pow(stiff * wide * wide * wide * wide / rigid, 1.0 / 12) * stiff / plane);
    }

    /// <summary>Biot's estimate of the foundation stiffness, in N/m².</summary>
    /// <exception cref="DomainException">A value is not positive, Poisson's ratio is 0.5 or more, or the rigidity is not in N·m².</exception>
    [Callable(BodyText.Topic, "What foundation stiffness goes with an ice modulus (Biot)?", Assumes = OnNotIn, NotFor = "More than an estimate: between Vesic and Biot lies a factor of 1.5.")]
    [Let("plane", "1 - poissonRatio*poissonRatio", "")]
    [Formula("0.95*iceModulus/plane*Pow(iceModulus*Pow(width, 4)/(plane*flexuralRigidity), 0.108)", Symbol = "k")]
    [Source("Biot, 1937", Standing.FromMemory)]
    [Example("FoundationModulusBiot(5000 MPa, 0.325, 17 mm, 442.8173 N·m²)", "5341.464 MPa")]
    public static Pressure FoundationModulusBiot(
        [Parameter("E_s", "MPa", "elastic modulus of the ice at the rate and temperature of the load: 9,330 at an instant, about 1,000 slowly", Above = 0, AtMost = Most.Megapascals, UsualFrom = 100, UsualTo = 10000)] Pressure iceModulus,
        [Parameter("ν", "", "Poisson's ratio of the ice", AtLeast = 0, Below = 0.5, UsualFrom = 0.3, UsualTo = 0.4)] double poissonRatio,
        [Parameter("B", "mm", BodyText.Width, Above = 0, AtMost = Most.Millimetres)] Length width,
        [Parameter("EI", "N·m²", BodyText.Rigidity, Above = 0, AtMost = BodyText.MostRigidity)] Quantity flexuralRigidity)
    {
        double stiff = Modulus(iceModulus), rigid = BodyText.Rigid(flexuralRigidity), plane = 1 - Squared(poissonRatio), wide = BodyText.Wide(width);
        return Pressure.FromPascals(0.95 * stiff / plane * Math.Pow(stiff * wide * wide * wide * wide / (plane * rigid), 0.108));
    }

    private static double Modulus(Pressure iceModulus) => Admit.Positive(iceModulus.Pascals, Most.Megapascals, Scale.Megapascal, nameof(iceModulus));

    private static double Squared(double poissonRatio) =>
        Require.Below(Require.AtLeast(poissonRatio, 0, "", nameof(poissonRatio)), 0.5, "", nameof(poissonRatio)) * poissonRatio;
}

/// <summary>How an embedded body answers a transverse load, by its length against the characteristic length.</summary>
[SheetOption("how an embedded body answers a transverse load")]
public enum LengthClass
{
    /// <summary>Shorter than π/4 characteristic lengths: it turns as a rigid bar.</summary>
    Rigid,

    /// <summary>Between: both bending and the tip matter.</summary>
    Finite,

    /// <summary>Longer than π characteristic lengths: more length changes nothing.</summary>
    SemiInfinite,
}
