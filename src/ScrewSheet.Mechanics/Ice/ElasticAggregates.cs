using ScrewSheet.Mechanics.LeverArm;
using ScrewSheet.Quantities.Declarations;
using UnitsNet;

namespace ScrewSheet.Mechanics;

/// <summary>Elastic constants of a polycrystal.</summary>
[SheetRecord("elastic constants of a polycrystal")]
public readonly record struct ElasticAggregate
{
    private readonly double bulk, shear;

    internal ElasticAggregate(double bulk, double shear)
    {
        this.bulk = bulk;
        this.shear = shear;
    }

    /// <summary>Bulk modulus.</summary>
    [Member("K", "GPa", "bulk modulus")]
    public Pressure BulkModulus => Pressure.FromPascals(bulk);

    /// <summary>Shear modulus.</summary>
    [Member("G", "GPa", "shear modulus")]
    public Pressure ShearModulus => Pressure.FromPascals(shear);

    /// <summary>Elastic modulus.</summary>
    [Member("E", "GPa", "elastic modulus")]
    public Pressure ElasticModulus => Pressure.FromPascals(9 * bulk * shear / ((3 * bulk) + shear));

    /// <summary>Poisson's ratio.</summary>
    [Member("ν", "", "Poisson's ratio")]
    public double PoissonRatio => ((3 * bulk) - (2 * shear)) / (2 * ((3 * bulk) + shear));
}

/// <summary>Elastic constants of polycrystalline ice from those of its crystal: the upper and lower bound and their mean.</summary>
public static class ElasticAggregates
{
    /// <summary>Upper bound: equal strain in all crystals (Voigt).</summary>
    /// <exception cref="DomainException">A constant is out of range, or together they are not those of a stable crystal.</exception>
    [Callable("Ice", "What is the upper bound of the stiffness of ice made of many crystals?", Assumes = "Crystals of hexagonal symmetry without preferred direction; elastic, at an instant.", NotFor = "Columnar ice with a fabric, or slow loading.")]
    [Let("bulk", "(2*(c11 + c12) + c33 + 4*c13)/9", "Pa")]
    [Let("shear", "(7*c11 - 5*c12 + 2*c33 + 12*c44 - 4*c13)/30", "Pa")]
    [Formula("bulk", Member = "BulkModulus", Symbol = "K")]
    [Formula("shear", Member = "ShearModulus", Symbol = "G")]
    [Formula("9*bulk*shear/(3*bulk + shear)", Member = "ElasticModulus", Symbol = "E")]
    [Formula("(3*bulk - 2*shear)/(2*(3*bulk + shear))", Member = "PoissonRatio", Symbol = "ν")]
    [Source("Voigt: equal strain in all crystals", Standing.Derived)]
    [Example("VoigtAverage(13.929 GPa, 7.082 GPa, 5.765 GPa, 15.010 GPa, 3.014 GPa).ElasticModulus", "9.300275 GPa")]
    public static ElasticAggregate VoigtAverage(
        [Parameter("c_11", "GPa", "stiffness across the crystal's axis", Above = 0, AtMost = Most.Gigapascals)] Pressure c11,
        [Parameter("c_12", "GPa", "coupling of two directions across the axis; less than c_11", AtLeast = 0, AtMost = Most.Gigapascals)] Pressure c12,
        [Parameter("c_13", "GPa", "coupling of the axis with a direction across it", AtLeast = 0, AtMost = Most.Gigapascals)] Pressure c13,
        [Parameter("c_33", "GPa", "stiffness along the crystal's axis", Above = 0, AtMost = Most.Gigapascals)] Pressure c33,
        [Parameter("c_44", "GPa", "shear stiffness in planes through the axis", Above = 0, AtMost = Most.Gigapascals)] Pressure c44) => Crystal.Of(c11, c12, c13, c33, c44).Voigt;

    /// <summary>Lower bound: equal stress in all crystals (Reuss).</summary>
    /// <exception cref="DomainException">A constant is out of range, or together they are not those of a stable crystal.</exception>
    [Callable("Ice", "What is the lower bound of the stiffness of ice made of many crystals?", Assumes = "Crystals of hexagonal symmetry without preferred direction; elastic, at an instant.", NotFor = "Columnar ice with a fabric, or slow loading.")]
    [Let("c66", "(c11 - c12)/2", "Pa")]
    [Let("det", "(c11 + c12)*c33 - 2*c13*c13", "Pa²")]
    [Let("kVoigt", "(2*(c11 + c12) + c33 + 4*c13)/9", "Pa")]
    [Let("bulk", "det/(c11 + c12 + 2*c33 - 4*c13)", "Pa")]
    [Let("shear", "2.5*det*c44*c66/(3*kVoigt*c44*c66 + det*(c44 + c66))", "Pa")]
    [Formula("bulk", Member = "BulkModulus", Symbol = "K")]
    [Formula("shear", Member = "ShearModulus", Symbol = "G")]
    [Formula("9*bulk*shear/(3*bulk + shear)", Member = "ElasticModulus", Symbol = "E")]
    [Formula("(3*bulk - 2*shear)/(2*(3*bulk + shear))", Member = "PoissonRatio", Symbol = "ν")]
    [Source("Reuss: equal stress in all crystals", Standing.Derived)]
    [Example("ReussAverage(13.929 GPa, 7.082 GPa, 5.765 GPa, 15.010 GPa, 3.014 GPa).ElasticModulus", "9.093224 GPa")]
    public static ElasticAggregate ReussAverage(
        [Parameter("c_11", "GPa", "stiffness across the crystal's axis", Above = 0, AtMost = Most.Gigapascals)] Pressure c11,
        [Parameter("c_12", "GPa", "coupling of two directions across the axis; less than c_11", AtLeast = 0, AtMost = Most.Gigapascals)] Pressure c12,
        [Parameter("c_13", "GPa", "coupling of the axis with a direction across it", AtLeast = 0, AtMost = Most.Gigapascals)] Pressure c13,
        [Parameter("c_33", "GPa", "stiffness along the crystal's axis", Above = 0, AtMost = Most.Gigapascals)] Pressure c33,
        [Parameter("c_44", "GPa", "shear stiffness in planes through the axis", Above = 0, AtMost = Most.Gigapascals)] Pressure c44) => Crystal.Of(c11, c12, c13, c33, c44).Reuss;

    /// <summary>Mean of both bounds (Hill): of bulk and shear modulus each.</summary>
    /// <exception cref="DomainException">A constant is out of range, or together they are not those of a stable crystal.</exception>
    [Callable("Ice", "What is the likely stiffness of ice made of many crystals?", Assumes = "Crystals of hexagonal symmetry without preferred direction; elastic, at an instant.", NotFor = "Columnar ice with a fabric, or slow loading.")]
    [Let("c66", "(c11 - c12)/2", "Pa")]
    [Let("det", "(c11 + c12)*c33 - 2*c13*c13", "Pa²")]
    [Let("kVoigt", "(2*(c11 + c12) + c33 + 4*c13)/9", "Pa")]
    [Let("bulk", "(kVoigt + det/(c11 + c12 + 2*c33 - 4*c13))/2", "Pa")]
    [Let("shear", "((7*c11 - 5*c12 + 2*c33 + 12*c44 - 4*c13)/30 + 2.5*det*c44*c66/(3*kVoigt*c44*c66 + det*(c44 + c66)))/2", "Pa")]
    [Formula("bulk", Member = "BulkModulus", Symbol = "K")]
    [Formula("shear", Member = "ShearModulus", Symbol = "G")]
    [Formula("9*bulk*shear/(3*bulk + shear)", Member = "ElasticModulus", Symbol = "E")]
    [Formula("(3*bulk - 2*shear)/(2*(3*bulk + shear))", Member = "PoissonRatio", Symbol = "ν")]
    [Source("Hill: mean of the two bounds", Standing.Derived)]
    [Example("HillAverage(13.929 GPa, 7.082 GPa, 5.765 GPa, 15.010 GPa, 3.014 GPa).ElasticModulus", "9.196900 GPa")]
    public static ElasticAggregate HillAverage(
        [Parameter("c_11", "GPa", "stiffness across the crystal's axis", Above = 0, AtMost = Most.Gigapascals)] Pressure c11,
        [Parameter("c_12", "GPa", "coupling of two directions across the axis; less than c_11", AtLeast = 0, AtMost = Most.Gigapascals)] Pressure c12,
        [Parameter("c_13", "GPa", "coupling of the axis with a direction across it", AtLeast = 0, AtMost = Most.Gigapascals)] Pressure c13,
        [Parameter("c_33", "GPa", "stiffness along the crystal's axis", Above = 0, AtMost = Most.Gigapascals)] Pressure c33,
        [Parameter("c_44", "GPa", "shear stiffness in planes through the axis", Above = 0, AtMost = Most.Gigapascals)] Pressure c44) => Crystal.Of(c11, c12, c13, c33, c44).Hill;

    private readonly record struct Crystal(double C11, double C12, double C13, double C33, double C44)
    {
        public static Crystal Of(Pressure c11, Pressure c12, Pressure c13, Pressure c33, Pressure c44)
        {
            Crystal crystal = new(Stiff(c11, nameof(c11)), Coupled(c12, nameof(c12)), Coupled(c13, nameof(c13)), Stiff(c33, nameof(c33)), Stiff(c44, nameof(c44)));
            if (crystal.C11 <= crystal.C12) throw new DomainException("c12 must be less than c11 in a stable crystal.", nameof(c12));
            if (crystal.Determinant <= 0) throw new DomainException("c13 is too large for a stable crystal: (c11 + c12)·c33 must exceed 2·c13².", nameof(c13));
            return crystal;
        }

        private double Determinant => ((C11 + C12) * C33) - (2 * C13 * C13);

        private double VoigtBulk => ((2 * (C11 + C12)) + C33 + (4 * C13)) / 9;

        private double VoigtShear => ((7 * C11) - (5 * C12) + (2 * C33) + (12 * C44) - (4 * C13)) / 30;

        private double ReussBulk => Determinant / (C11 + C12 + (2 * C33) - (4 * C13));

        private double ReussShear
        {
            get
            {
                double c66 = (C11 - C12) / 2;
                return 2.5 * Determinant * C44 * c66 / ((3 * VoigtBulk * C44 * c66) + (Determinant * (C44 + c66)));
            }
        }

        public ElasticAggregate Voigt => new(VoigtBulk, VoigtShear);

        public ElasticAggregate Reuss => new(ReussBulk, ReussShear);

        public ElasticAggregate Hill => new((VoigtBulk + ReussBulk) / 2, (VoigtShear + ReussShear) / 2);

        private static double Stiff(Pressure value, string name) => Admit.Positive(value.Pascals, Most.Gigapascals, Scale.Gigapascal, name);

        private static double Coupled(Pressure value, string name) => Admit.Between(value.Pascals, 0, Most.Gigapascals, Scale.Gigapascal, name);
    }
}
