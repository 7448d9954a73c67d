using CsCheck;

namespace ScrewSheet.Quantities.Tests;

public sealed class DimensionTests
{
    private static readonly Gen<Dimension> Any =
        from powers in Gen.Int[-4, 4].Array[7]
        select Dimension.Of(powers[0], powers[1], powers[2], powers[3], powers[4], powers[5], powers[6]);

    [Fact]
    public void ProductsAndQuotientsUndoEachOther() => Gen.Select(Any, Any).Sample((a, b) =>
    {
        Assert.Equal(a, a * b / b);
        Assert.Equal(a * b, b * a);
        Assert.Equal(Dimension.None, a * a.Inverse());
    });

    [Fact]
    public void ARootOfAPowerIsTheSame() => Gen.Select(Any, Gen.OneOf(1, 2, 3, 4, 6, 12)).Sample((a, n) =>
    {
        Assert.Equal(a, a.Power(n)!.Value.Power(1, n));
        Assert.Equal(a, a.Power(1, n)!.Value.Power(n));
        Assert.Equal(a.Inverse(), a.Power(-n, n));
    });

    [Fact]
    public void APowerThatIsNoWholeNumberOfTwelfthsDoesNotExist()
    {
        Assert.Null(Dimension.Of(1).Power(1, 5));
        Assert.Null(Dimension.Of(1).Power(1, 24));
        Assert.Null(Dimension.Of(1).Power(100_000));
        Assert.Equal(Dimension.Of(1), Dimension.Of(5).Power(1, 5));
        Assert.Equal(Dimension.None, Dimension.None.Power(7, 5));
        Assert.Throws<ArgumentOutOfRangeException>(() => Dimension.Of(1).Power(1, 0));
    }

    // the coherent derived units of BIPM, The International System of Units, 9th edition (2019), Table 4, in base units
    [Theory]
    [InlineData("Force", "kg·m/s²")]
    [InlineData("Pressure", "kg/(s²·m)")]
    [InlineData("Energy", "kg·m²/s²")]
    [InlineData("Power", "kg·m²/s³")]
    [InlineData("Frequency", "1/s")]
    [InlineData("Angle", "")]
    [InlineData("AreaMomentOfInertia", "m⁴")]
    public void TheBaseUnitsOfAKindAreWritten(string kind, string text) => Assert.Equal(text, QuantityKinds.ByName(kind)!.Dimension.ToString());
}
