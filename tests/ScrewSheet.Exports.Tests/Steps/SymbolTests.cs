using ScrewSheet.Exports.Steps;

namespace ScrewSheet.Exports.Tests.Steps;

/// <summary>Names as symbols.</summary>
public sealed class SymbolTests
{
    [Theory]
    [InlineData("sigma", "σ", "")]
    [InlineData("sigma_max", "σ", "max")]
    [InlineData("sigmaMax", "σ", "max")]
    [InlineData("Delta", "Δ", "")]
    [InlineData("alpha1", "α", "1")]
    [InlineData("T_1", "T", "1")]
    [InlineData("w0", "w", "0")]
    [InlineData("μ", "μ", "")]
    [InlineData("ks", "ks", "")]
    [InlineData("exposed", "exposed", "")]
    [InlineData("mustHold", "mustHold", "")]
    [InlineData("picture", "picture", "")]
    [InlineData("before10Tilted", "before10Tilted", "")]
    [InlineData("float_", "float", "")]
    public void Of_AName_IsItsSymbolAndItsIndex(string name, string symbol, string index) => Assert.Equal(new SymbolText(symbol, index), SymbolText.Of(name));
}
