using CsCheck;
using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Quantities.Units;
using UnitsNet;

namespace ScrewSheet.Quantities.Tests;

public sealed class QuantityTests
{
    private static readonly Gen<Quantity> Any =
        from si in Gen.Double[-1e6, 1e6]
        from dimension in Gen.OneOf(Dimension.Of(1), Dimension.Of(1, 1, -2), Dimension.Of(0, 0, 1), Dimension.None)
        select Quantity.FromSi(si, dimension);

    [Fact]
    public void ProductsAndQuotientsUndoEachOther() => Gen.Select(Any, Any).Where((_, b) => b.Si != 0).Sample((a, b) =>
    {
        Quantity back = a * b / b;
        Assert.Equal(a.Dimension, back.Dimension);
        Assert.Equal(a.Si, back.Si, Math.Abs(a.Si) * 1e-14 + 1e-300);
    });

    [Fact]
    public void SumsAndOrderNeedOneDimension() => Gen.Select(Any, Any).Sample((a, b) =>
    {
        if (a.Dimension == b.Dimension)
        {
            Assert.Equal(a.Si + b.Si, (a + b).Si);
            Assert.Equal(a.Si - b.Si, (a - b).Si);
            Assert.Equal(a.Si < b.Si, a < b);
            Assert.Equal(a.Si > b.Si, a > b);
            return;
        }
        Assert.Throws<InvalidOperationException>(() => a + b);
        Assert.Throws<InvalidOperationException>(() => a - b);
        Assert.Throws<InvalidOperationException>(() => a < b);
        Assert.Throws<InvalidOperationException>(() => a >= b);
    });

    [Fact]
    public void AMismatchNamesBothSides()
    {
        Quantity force = 1.N, speed = 1.m_per_s, odd = 1.N * 1.N;
        Assert.Equal("a force and a speed cannot be added or compared.", Assert.Throws<InvalidOperationException>(() => force + speed).Message);
        Assert.Equal("a value in kg²·m²/s^4 and a number cannot be added or compared.".Replace("s^4", "s⁴", StringComparison.Ordinal), Assert.Throws<InvalidOperationException>(() => odd < (Quantity)(1.N / 1.N * 1.rad)).Message);
    }

    [Fact]
    public void OrEqualAllowsRoundingAndStrictDoesNot()
    {
        Quantity sum = 0.1.m + (Quantity)0.2.m, limit = 0.3.m;
        Assert.True(sum <= limit);
        Assert.True(limit >= sum);
        Assert.True(sum > limit);
        Assert.False(sum * (1 + 1e-11) <= limit);
    }

    [Fact]
    public void ANamedQuantityAndAGeneralOneMixInEveryOperator()
    {
        Quantity general = Powers.Sqrt(9.0.N * 1.0.N);
        Force named = 4.N;
        Assert.Equal(7, (general + named).Si);
        Assert.Equal(1, (named - general).Si);
        Assert.Equal(12, (named * general).Si);
        Assert.Equal(12, (general * named).Si);
        Assert.Equal(0.75, (general / named).ToNumber());
        Assert.Equal(0.75, (0.75 * (named / general) * 0.75).ToNumber());
        Assert.True(general < named && named > general && general <= named && named >= general);
        Assert.Equal(-3, (-general).Si);
        Assert.Equal(6, (2 * general).Si);
        Assert.Equal(1.5, (general / 2).Si);
        Assert.Equal(Dimension.Of(1, 1, -2).Inverse(), (6 / general).Dimension);
    }

    [Fact]
    public void EveryKindGoesIntoAQuantityAndBack() => Assert.All(QuantityKinds.All.Where(kind => kind != QuantityKinds.Temperature), kind =>
    {
        IQuantity original = kind.FromSi(2.5);
        System.Reflection.MethodInfo[] conversions = [.. typeof(Quantity).GetMethods().Where(method => method.Name == "op_Implicit")];
        object general = conversions.Single(method => method.GetParameters()[0].ParameterType == kind.ClrType).Invoke(null, [original])!;
        Assert.Equal(Quantity.FromSi(2.5, kind.Dimension), general);
        object back = conversions.Single(method => method.ReturnType == kind.ClrType).Invoke(null, [general])!;
        Assert.Equal(2.5, kind.ToSi(back), 1e-12);
    });

    [Fact]
    public void ATemperatureHasNoProducts()
    {
        Assert.Equal("A temperature has no products; the difference of two, in K, has.", Assert.Throws<InvalidOperationException>(() => 20.degC * 2.m).Message);
        Assert.DoesNotContain(typeof(Quantity).GetMethods(), method => method.Name == "op_Implicit" && (method.ReturnType == typeof(Temperature) || method.GetParameters()[0].ParameterType == typeof(Temperature)));
        Quantity difference = 20.degC - 5.degC;
        Assert.Equal(15, difference.Si, 1e-9);
    }

    [Fact]
    public void TheSpeedBehindAnEnergyPassesThroughATypeWithoutAName()
    {
        Speed speed = Powers.Sqrt(2 * 400.J / 8.kg);
        Assert.Equal(10, speed.MetersPerSecond, 1e-12);
        Quantity general = Powers.Sqrt(4.0.kg * 1.0.kg);
        Energy energy = 50.J / 1.kg * general;
        Assert.Equal(100, energy.Joules, 1e-9);
        Energy other = general * (50.J / 1.kg);
        Assert.Equal(energy, other);
    }

    [Fact]
    public void MassFlowIsHeldInKilograms() => Assert.Equal(Quantity.FromSi(3, Dimension.Of(0, 1, -1)), MassFlow.FromKilogramsPerSecond(3));

    [Fact]
    public void WhatIsInNeitherListIsRefused() =>
        Assert.Equal("Level is no kind of quantity here.", Assert.Throws<InvalidOperationException>(() => Quantity.From(Level.FromDecibels(3))).Message);

    [Fact]
    public void EveryProductOfTheUnitLibraryHasTheDimensionItShould() => Assert.All(LibraryOperators(), method =>
    {
        Type[] sides = [.. method.GetParameters().Select(parameter => parameter.ParameterType)];
        Dimension left = DimensionOf(sides[0]), right = DimensionOf(sides[1]);
        bool product = method.Name == "op_Multiply";
        object result = method.Invoke(null, [Sample(sides[0], 2), Sample(sides[1], 4)])!;
        Quantity made = result is IQuantity quantity ? Quantity.From(quantity) : Quantity.FromSi(Convert.ToDouble(result, System.Globalization.CultureInfo.InvariantCulture), Dimension.None);
        Assert.Equal(product ? left * right : left / right, made.Dimension);
        Assert.Equal(product ? 8 : 0.5, made.Si, 1e-9);
    });

    /// <summary>UnitsNet's products and quotients of two types known here; a temperature has neither.</summary>
    private static IEnumerable<System.Reflection.MethodInfo> LibraryOperators() =>
        from type in QuantityKinds.All.Select(kind => kind.ClrType).Concat(UnnamedTypes.All)
        where type != typeof(Temperature)
        from method in type.GetMethods(System.Reflection.BindingFlags.Static | System.Reflection.BindingFlags.Public)
        where method.Name is "op_Multiply" or "op_Division" && method.ReturnType != typeof(TimeSpan) // a volume over a volume flow, alone
        where method.GetParameters().All(parameter => parameter.ParameterType == typeof(double) || (parameter.ParameterType.IsAssignableTo(typeof(IQuantity)) && Known(parameter.ParameterType)))
        select method;

    private static bool Known(Type type) => type != typeof(Temperature) && (QuantityKinds.ByType(type) is not null || UnnamedTypes.TryFind(type, out _));

    private static Dimension DimensionOf(Type type) =>
        QuantityKinds.ByType(type) is { } kind ? kind.Dimension : UnnamedTypes.TryFind(type, out Dimension dimension) ? dimension : Dimension.None;

    /// <summary>So much in coherent SI.</summary>
    private static object Sample(Type type, double si)
    {
        if (type == typeof(double)) return si;
        if (type == typeof(MassFlow)) return MassFlow.FromKilogramsPerSecond(si);
        return QuantityKinds.ByType(type)?.FromSi(si) ?? UnitsNet.Quantity.From(si, UnitsNet.Quantity.Infos.Single(info => info.ValueType == type).BaseUnitInfo.Value);
    }

    [Fact]
    public void DividingByZeroAndOverflowThrow()
    {
        Assert.Throws<DivideByZeroException>(() => 425.N_m / 0.mm3);
        Assert.Throws<DivideByZeroException>(() => Quantity.FromSi(1, Dimension.None) / 0);
        Assert.Throws<OverflowException>(() => Quantity.FromSi(1e200, Dimension.None) * Quantity.FromSi(1e200, Dimension.None));
        Assert.Throws<ArgumentOutOfRangeException>(() => Quantity.FromSi(double.NaN, Dimension.None));
    }

    [Fact]
    public void ARatioIsANumberAndAForceIsNot()
    {
        Assert.Equal(2, ((Quantity)4.N / 2.N).ToNumber());
        Assert.Equal("a force is not a number.", Assert.Throws<InvalidCastException>(() => ((Quantity)4.N).ToNumber()).Message);
    }

    [Fact]
    public void PowersAndRootsUndoEachOther() => Gen.Select(Gen.Double[1e-3, 1e3], Gen.Int[1, 4], Gen.OneOf(1, 2, 3, 4, 6)).Sample((si, numerator, denominator) =>
    {
        Quantity length = Quantity.FromSi(si, Dimension.Of(1));
        Quantity raised = length.Pow(numerator * 12, denominator);
        Assert.Equal(si, raised.Pow(denominator, numerator * 12).Si, si * 1e-12);
        Assert.Equal(length.Dimension, raised.Pow(denominator, numerator * 12).Dimension);
        Assert.Equal(raised.Si, Powers.Pow(length, 12.0 * numerator / denominator).Si, raised.Si * 1e-12);
    });

    [Fact]
    public void RootsThatDoNotExistSaySo()
    {
        Quantity negative = -1.N * 1.N;
        Assert.Equal("An even root of a negative value does not exist.", Assert.Throws<DomainException>(() => Powers.Sqrt(negative)).Message);
        Assert.Equal("The square root of a negative number does not exist.", Assert.Throws<DomainException>(() => Powers.Sqrt(-1)).Message);
        Assert.Equal(-2, Powers.Cbrt((Quantity)(-8.0).N).Si, 1e-12);
        Assert.Equal(-2, Powers.Root(-8, 3), 1e-12);
        Assert.Throws<DomainException>(() => Powers.Root(-8, 4));
        Assert.Throws<DomainException>(() => Powers.Root(8.N, 0));
        Assert.Throws<DomainException>(() => Powers.Root(8.N, 5));
        Assert.Throws<DomainException>(() => Powers.Pow(0.N, -1));
        Assert.Throws<DomainException>(() => Powers.Pow(0, -1));
        Assert.Throws<DomainException>(() => Powers.Pow(-8, 0.5));
        Assert.Throws<DomainException>(() => Powers.Pow(10, 400));
        Assert.Throws<DomainException>(() => Powers.Pow(2.N, 0.7));
        Assert.Throws<DomainException>(() => Powers.Sqrt(double.NaN));
    }

    [Fact]
    public void APowerOfAPureNumberMayBeAnything() => Assert.Equal(Math.Pow(2, 0.7), Powers.Pow((Quantity)(2.rad), 0.7).Si);

    [Fact]
    public void SlackIsRelative()
    {
        Assert.True(SiOrder.AtMost(1e-9 * (1 + 1e-13), 1e-9));
        Assert.False(SiOrder.AtMost(1e-15, 0));
        Assert.True(SiOrder.AtLeast(-1, -1 - 1e-13) && SiOrder.AtLeast(-1 - 1e-13, -1));
    }
}
