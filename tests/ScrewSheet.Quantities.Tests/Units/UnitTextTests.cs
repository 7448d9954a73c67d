using CsCheck;
using ScrewSheet.Quantities.Units;

namespace ScrewSheet.Quantities.Tests.Units;

public sealed class UnitTextTests
{
    /// <summary>The symbols a workbook may use, as the format's documentation lists them.</summary>
    private const string Listed =
        "N kN daN MN kgf lbf kip mm cm m in ft mm² cm² m² in² mm³ cm³ m³ mm⁴ cm⁴ m⁴ Pa kPa MPa GPa psi ksi N/mm² kN/m² N·m kN·m N·mm ft·lbf in·lbf N·m² " +
        "kPa·m^0.5 MPa·m^0.5 kg g t lb kg/m³ g/cm³ lb/ft³ lb/in³ N/m kN/m N/mm lbf/in N/m³ m/s km/h ft/s m/s² gn s ms min h 1/s rad/s J kJ W ° rad °C K %";

    public static TheoryData<string> Symbols => [.. Listed.Split(' ')];

    [Theory]
    [MemberData(nameof(Symbols))]
    public void EverySymbolReadsAsItselfAndHasASuffix(string symbol)
    {
        Assert.True(UnitText.TryParse(symbol, out Unit? unit, out string? problem), problem);
        Assert.Equal(symbol, unit.Symbol);
        Assert.Contains(Suffixes.All, pair => pair.Value == unit);
        Assert.Equal(symbol.Length, UnitText.Scan(symbol));
    }

    [Fact]
    public void TheTableHoldsTheDocumentedSymbolsAndNoOthers() =>
        Assert.Equal(Listed.Split(' ').Order(StringComparer.Ordinal), UnitTable.All.Select(unit => unit.Symbol).Order(StringComparer.Ordinal));

    [Theory]
    [InlineData("mm2", "mm²")]
    [InlineData("mm^2", "mm²")]
    [InlineData("m^4", "m⁴")]
    [InlineData("m/s2", "m/s²")]
    [InlineData("N.m", "N·m")]
    [InlineData("N⋅m", "N·m")]
    [InlineData("N*m", "N·m")]
    [InlineData("ft.lbf", "ft·lbf")]
    [InlineData("kg/m3", "kg/m³")]
    [InlineData("N/mm2", "N/mm²")]
    [InlineData("MPa.m^0.5", "MPa·m^0.5")]
    [InlineData("deg", "°")]
    [InlineData("kg/m.s", "kg/(m·s)")]
    [InlineData("kg/(m·s)", "kg/(m·s)")]
    [InlineData("J/kg·K", "J/(kg·K)")]
    [InlineData("m⁵", "m^5")]
    [InlineData("m1", "m")]
    [InlineData("N^0.3333", "N^0.3333")]
    public void TypedSpellingsAreReadAlike(string typed, string canonical)
    {
        Assert.True(UnitText.TryParse(typed, out Unit? unit, out string? problem), problem);
        Assert.Equal(canonical, unit.Symbol);
    }

    [Theory]
    [InlineData("N·m", "Torque")]
    [InlineData("ft·lbf", "Torque")]
    [InlineData("kgf·m", "Torque")]
    [InlineData("lbf·ft", "Torque")]
    [InlineData("J", "Energy")]
    [InlineData("kJ", "Energy")]
    [InlineData("°", "Angle")]
    [InlineData("rad", "Angle")]
    [InlineData("°C", "Temperature")]
    [InlineData("K", "TemperatureDelta")]
    [InlineData("kN/m", "ForcePerLength")]
    [InlineData("rad/s", "RotationalSpeed")]
    [InlineData("°/s", "RotationalSpeed")]
    [InlineData("1/s", "Frequency")]
    [InlineData("1/min", "Frequency")]
    [InlineData("rad/s2", "RotationalAcceleration")]
    [InlineData("gn", "Acceleration")]
    [InlineData("Pa·s", "DynamicViscosity")]
    [InlineData("kg/m", "LinearDensity")]
    [InlineData("kg·m2", "MassMomentOfInertia")]
    [InlineData("N/mm²", "Pressure")]
    [InlineData("mm⁴", "AreaMomentOfInertia")]
    [InlineData("%", null)]
    [InlineData("N·m²", null)]
    [InlineData("MPa·m^0.5", null)]
    [InlineData("N·m/rad", null)]
    [InlineData("N2", null)]
    public void ALiteralHasTheKindOfItsUnit(string text, string? kind)
    {
        Assert.True(UnitText.TryParse(text, out Unit? unit, out string? problem), problem);
        Assert.Equal(kind, unit.Kind?.Name);
        if (unit.Kind is not null) Assert.Equal(unit.Kind.Dimension, unit.Dimension);
    }

    /// <summary>Exponents of any length, before and behind the point, above and below the stroke: read, or refused in words, and never more than a number can hold.</summary>
    [Fact]
    public void AnExponentOfAnyLengthIsReadOrRefused() =>
        Gen.Select(Gen.Int[0, 60], Gen.Int[0, 60], Gen.OneOf("1", "9", "0"), Gen.OneOf("m{0}", "m^{0}", "1/s^{0}", "kN·m^{0}/mm^{0}", "m⁹{0}")).Sample((before, behind, digit, form) =>
        {
            string exponent = string.Concat(Enumerable.Repeat(digit, before)) + (behind > 0 ? "." + string.Concat(Enumerable.Repeat(digit, behind)) : "");
            bool read = UnitText.TryParse(form.Replace("{0}", exponent, StringComparison.Ordinal), out Unit? unit, out string? problem);
            Assert.True(read ? double.IsFinite(unit!.ToSi(1)) : problem!.Length > 0);
        }, iter: 2000);

    [Theory]
    [InlineData("", "The unit is missing.")]
    [InlineData("KN", "\"KN\" is no unit; did you mean kN?")]
    [InlineData("mpa", "\"mpa\" is no unit; did you mean MPa?")]
    [InlineData("Nm", "\"Nm\" is no unit; write N·m.")]
    [InlineData("kNm", "\"kNm\" is no unit; write kN·m.")]
    [InlineData("N-m", "\"N-m\" is no unit; write N·m.")]
    [InlineData("ftlbf", "\"ftlbf\" is no unit; write ft·lbf.")]
    [InlineData("inch", "\"inch\" is no unit; write in.")]
    [InlineData("sec", "\"sec\" is no unit; write s.")]
    [InlineData("Hz", "\"Hz\" is no unit; write 1/s.")]
    [InlineData("knots", "\"knots\" is no unit.")]
    [InlineData("N/exposed", "\"exposed\" is no unit; put blanks round / to divide by a cell.")]
    [InlineData("N/MM", "\"MM\" is no unit; did you mean mm? To divide by a cell put blanks round /.")]
    [InlineData("N m", "A unit has no blanks inside; write N·m or N/mm².")]
    [InlineData("J/kg/K", "A unit has one /; write what stands below together, as in J/(kg·K).")]
    [InlineData("m/°C", "°C is a point on a scale and stands alone; write K for a difference.")]
    [InlineData("%/K", "% stands alone; it is no factor of another unit.")]
    [InlineData("s^-1", "\"s^-1\" has a negative exponent; write it below a stroke, as in 1/s.")]
    [InlineData("s⁻¹", "\"s⁻¹\" has a negative exponent; write it below a stroke, as in 1/s.")]
    [InlineData("m^", "\"m^\" has an exponent that cannot be read; write mm², m^0.5 or m^2.")]
    [InlineData("m0", "\"m0\" has an exponent that cannot be read; write mm², m^0.5 or m^2.")]
    [InlineData("m99", "\"m99\" has an exponent that cannot be read; write mm², m^0.5 or m^2.")]
    [InlineData("m^0.7", "\"m^0.7\" has an exponent that cannot be read; write mm², m^0.5 or m^2.")]
    [InlineData("N·", "A factor of the unit is missing.")]
    [InlineData("1/", "A factor of the unit is missing.")]
    [InlineData("1", "\"1\" has no unit symbol before its exponent.")]
    [InlineData("GPa12·GPa12·GPa12", "This unit is too large or too small for a number.")]
    [InlineData("m·m·m·m·m·m·m·m·m", "A unit has eight factors at most.")]
    [InlineData("µm", "\"µm\" is no unit.")]
    public void WhatIsNoUnitSaysWhatToWrite(string text, string sentence)
    {
        Assert.False(UnitText.TryParse(text, out _, out string? problem));
        Assert.Equal(sentence, problem);
    }

    [Theory]
    [InlineData("N / mm", 1)]
    [InlineData("N/mm", 4)]
    [InlineData("N/exposed", 9)]
    [InlineData("N/exposed_2 + 3", 11)]
    [InlineData("N·m * 2", 3)]
    [InlineData("N.m)", 3)]
    [InlineData("mm2*3", 3)]
    [InlineData("m^0.5", 5)]
    [InlineData("m^2)", 3)]
    [InlineData("m, 5", 1)]
    [InlineData("% of", 1)]
    [InlineData("°C", 2)]
    [InlineData("1/s)", 3)]
    [InlineData("1/2", 0)]
    [InlineData("kg/(m·s) + 1", 8)]
    [InlineData("N/(a + b)", 1)]
    [InlineData("N/(a.b)", 1)]
    [InlineData("m/s/s + 1", 5)]
    [InlineData("m/2", 1)]
    [InlineData("kN±0.5", 2)]
    [InlineData("in => 3", 2)]
    [InlineData("when x", 0)]
    [InlineData("switch { }", 0)]
    [InlineData("to 8 kN", 0)]
    [InlineData("", 0)]
    [InlineData("+ 3", 0)]
    [InlineData("/ mm", 0)]
    [InlineData("² ", 0)]
    public void Scan_FindsTheLongestPrefixThatCouldBeAUnit(string text, int length) => Assert.Equal(length, UnitText.Scan(text));

    private static readonly Gen<string> AnyUnit =
        from above in Gen.OneOf<string>([.. UnitTable.All.Select(unit => unit.Symbol).Where(symbol => !symbol.Contains('/') && symbol is not ("°C" or "%") && !symbol.Any(c => c is '^' or '²' or '³' or '⁴'))]).Array[1, 3]
        from below in Gen.OneOf("mm", "s", "kg", "K", "in", "rad").Array[0, 2]
        from exponents in Gen.OneOf("", "²", "3", "^4", "^0.5", "^1.5", "^0.3333").Array[5]
        let top = string.Join('·', above.Select((symbol, i) => symbol + exponents[i]))
        let bottom = string.Join('.', below.Select((symbol, i) => symbol + exponents[3 + i]))
        select bottom.Length == 0 ? top : $"{top}/{bottom}";

    [Fact]
    public void WhatIsReadAndWrittenReadsAsTheSame() => AnyUnit.Sample(text =>
    {
        Assert.True(UnitText.TryParse(text, out Unit? unit, out string? problem), $"{text}: {problem}");
        Assert.True(UnitText.TryParse(unit.Symbol, out Unit? again, out problem), $"{unit}: {problem}");
        Assert.Equal(unit, again);
        Assert.Equal(unit.Symbol.Length, UnitText.Scan(unit.Symbol));
    });

    [Fact]
    public void AnyTextEitherReadsOrHasASentence() =>
        Gen.OneOf("Nkmsinft./·²^(5)0 °%1_é\ud83d-".ToCharArray()).Array[0, 20].Select(chars => new string(chars)).Sample(text =>
        {
            bool read = UnitText.TryParse(text, out Unit? unit, out string? problem);
            Assert.True(read ? problem is null && unit is not null : problem!.EndsWith('.') || problem.EndsWith('?'), $"{text}: {problem}");
            Assert.InRange(UnitText.Scan(text), 0, text.Length);
        });
}
