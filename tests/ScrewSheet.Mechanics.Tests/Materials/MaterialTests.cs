using System.Reflection;
using ScrewSheet.Quantities.Declarations;
using UnitsNet;

namespace ScrewSheet.Mechanics.Tests;

public sealed class MaterialTests
{
    private static IEnumerable<PropertyInfo> Ready => typeof(Materials).GetProperties(BindingFlags.Public | BindingFlags.Static);

    [Fact]
    public void EveryMaterial_HasAMemberTextAndASource() =>
        Assert.All(Ready, property =>
        {
            Assert.NotNull(property.GetCustomAttribute<MemberAttribute>());
            Assert.NotEmpty(property.GetCustomAttributes<SourceAttribute>());
        });

    [Fact]
    public void NamesOfMaterials_AreDistinctAndSayTypicalWhereTheyAre() =>
        Assert.All(Ready.Select(property => (Property: property, Material: (Material)property.GetValue(null)!)).ToList(), pair =>
        {
            Assert.Equal(pair.Material.Basis == MaterialBasis.Typical, pair.Property.Name.Contains("Typical", StringComparison.Ordinal));
            Assert.Single(Ready, other => ((Material)other.GetValue(null)!).Name == pair.Material.Name);
        });

    [Fact]
    public void MinimumAndTypical_AreKeptApart() => Assert.True(Materials.Aluminium6061T6.YieldStrength < Materials.Aluminium6061T6Typical.YieldStrength);

    [Fact]
    public void AnUnknownProperty_IsRefusedByName() =>
        Assert.Equal("The shear strength of stainless steel 304 (1.4301) is not given here: write the value of your source as a given, or with 'with' on the material.",
            Assert.Throws<DomainException>(() => Materials.Stainless304.ShearStrength.ToString()).Message);

    [Fact]
    public void AMaterialOfOnesOwn_TakesTheChangedValueAndKeepsTheRest()
    {
        Material measured = Materials.Steel4130Normalised with { Name = "batch 12", YieldStrength = Pressure.FromMegapascals(540) };
        Assert.Equal(540, measured.YieldStrength.Megapascals, 1e-9);
        Assert.Equal(Materials.Steel4130Normalised.UltimateStrength, measured.UltimateStrength);
    }

    [Fact]
    public void ANegativeStrength_IsRefused() =>
        Assert.Equal("YieldStrength must be greater than 0 MPa; it is -1 MPa.",
            Assert.Throws<DomainException>(() => Materials.SteelS235 with { YieldStrength = Pressure.FromMegapascals(-1) }).Message);

    [Fact]
    public void CordRating_OfNoDiameter_IsRefused() => Assert.Equal("diameter must be greater than 0 mm; it is 0 mm.", Assert.Throws<DomainException>(() => Cords.CordRating(Length.Zero)).Message);

    [Fact]
    public void ReadyCords_AreTheRatingOfTheirDiameter() =>
        Assert.All(typeof(Cords).GetProperties(), property =>
            Assert.Equal(Cords.CordRating(Length.FromMillimeters(property.Name[^1] - '0')).Kilonewtons, ((Force)property.GetValue(null)!).Kilonewtons, 1e-9));
}
