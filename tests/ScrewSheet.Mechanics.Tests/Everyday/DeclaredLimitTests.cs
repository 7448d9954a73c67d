using System.Reflection;
using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;
using Quantity = ScrewSheet.Quantities.Quantity;

namespace ScrewSheet.Mechanics.Tests;

/// <summary>The functions of embedded body, threads, ice, materials and everyday work declare what help reads; their limits are what the code refuses.</summary>
public sealed class DeclaredLimitTests
{
    /// <summary>What each unit is in coherent SI, with the dimension a general quantity in it has.</summary>
    private static readonly Dictionary<string, (double Si, Dimension Dimension)> Units = new()
    {
        [""] = (1, Dimension.None), ["m"] = (1, default), ["mm"] = (1e-3, default), ["cm³"] = (1e-6, default), ["mm⁴"] = (1e-12, default), ["kN"] = (1e3, default), ["MPa"] = (1e6, default),
        ["GPa"] = (1e9, default), ["N·m"] = (1, default), ["kg"] = (1, default), ["N/m³"] = (1, default), ["°"] = (Math.PI / 180, default), ["°C"] = (1, default),
        ["N·m²"] = (1, Dimension.Of(3, 1, -2)), ["kPa·m^0.5"] = (1e3, IceValues.FractureToughnessLow.Dimension), ["MPa^0.5·mm^0.5"] = (Math.Sqrt(1000), ConeCoefficients.EnCracked.Dimension),
    };

    private static readonly MethodInfo[] Callables =
        [.. typeof(Comparison).Assembly.GetTypes().Where(type => type.Namespace == "ScrewSheet.Mechanics").SelectMany(type => type.GetMethods(BindingFlags.Static | BindingFlags.Public))
            .Where(method => method.IsDefined(typeof(CallableAttribute)))
            .Select(method => method.IsGenericMethodDefinition ? method.MakeGenericMethod([.. method.GetGenericArguments().Select(_ => typeof(double))]) : method)];

    public static TheoryData<string> Formulas => [.. Callables.Where(method => method.IsDefined(typeof(FormulaAttribute))).Select(method => method.Name)];

    public static TheoryData<string> Names => [.. Callables.Select(method => method.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void EveryFunction_DeclaresParametersSourceAndEitherFormulasOrWhyNot(string name)
    {
        MethodInfo method = Find(name);
        Assert.All(method.GetParameters(), parameter => Assert.True(parameter.IsDefined(typeof(ParameterAttribute)), $"{name}: {parameter.Name}"));
        Assert.NotEqual(method.IsDefined(typeof(FormulaAttribute)), method.IsDefined(typeof(NoFormulaAttribute)));
        Assert.NotEmpty(method.GetCustomAttributes<SourceAttribute>());
        if (!method.ReturnType.IsDefined(typeof(SheetRecordAttribute)) || !method.IsDefined(typeof(FormulaAttribute))) return;
        Assert.Equal(method.ReturnType.GetProperties().Where(property => property.IsDefined(typeof(MemberAttribute))).Select(property => property.Name).Order(StringComparer.Ordinal),
            method.GetCustomAttributes<FormulaAttribute>().Select(formula => formula.Member).Order(StringComparer.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Formulas))]
    public void BeyondADeclaredLimit_IsRefusedWithTheParameterAndItsUnit(string name)
    {
        MethodInfo method = Find(name);
        ParameterInfo[] parameters = method.GetParameters();
        foreach (ParameterInfo parameter in parameters)
        {
            ParameterAttribute declared = parameter.GetCustomAttribute<ParameterAttribute>()!;
            foreach (double outside in Outside(declared))
            {
                object[] arguments = [.. parameters.Select(other => FromSi(other, other == parameter ? Si(declared, outside) : Between(other, 0.5)))];
                TargetInvocationException thrown = Assert.Throws<TargetInvocationException>(() => method.Invoke(null, arguments));
                DomainException refusal = Assert.IsType<DomainException>(thrown.InnerException);
                Assert.StartsWith(parameter.Name + " must be ", refusal.Message, StringComparison.Ordinal);
                if (declared.Unit.Length > 0) Assert.Contains(" " + declared.Unit, refusal.Message, StringComparison.Ordinal);
            }
        }
    }

    private static IEnumerable<double> Outside(ParameterAttribute declared)
    {
        if (!double.IsNaN(declared.Above)) yield return declared.Above;
        if (!double.IsNaN(declared.AtLeast)) yield return declared.AtLeast - (1e-6 * (1 + Math.Abs(declared.AtLeast)));
        if (!double.IsNaN(declared.Below)) yield return declared.Below;
        if (!double.IsNaN(declared.AtMost)) yield return declared.AtMost + (1e-6 * (1 + Math.Abs(declared.AtMost)));
    }

    // The usual range where one is declared; else something ordinary inside the limits.
    private static double Between(ParameterInfo parameter, double share)
    {
        ParameterAttribute declared = parameter.GetCustomAttribute<ParameterAttribute>()!;
        double[] lows = [declared.UsualFrom, declared.AtLeast, declared.Above], highs = [declared.UsualTo, declared.Below, declared.AtMost];
        double low = Math.Max(-50, lows.FirstOrDefault(value => !double.IsNaN(value), -50)), high = highs.FirstOrDefault(value => !double.IsNaN(value), 50);
        high = Math.Min(high, declared.Unit == "" ? Math.Max(high, low) : Math.Max(2000, declared.UsualTo is double.NaN ? 0 : declared.UsualTo));
        return Si(declared, low + ((0.01 + (0.98 * share)) * (Math.Min(high, 1e5) - low)));
    }

    private static double Si(ParameterAttribute declared, double value) => (value * Units[declared.Unit].Si) + (declared.Unit == "°C" ? 273.15 : 0);

    private static object FromSi(ParameterInfo parameter, double si)
    {
        Type type = parameter.ParameterType;
        if (type == typeof(double)) return si;
        if (type == typeof(Quantity)) return Quantity.FromSi(si, Units[parameter.GetCustomAttribute<ParameterAttribute>()!.Unit].Dimension);
        return QuantityKinds.ByType(type)!.FromSi(si);
    }

    private static MethodInfo Find(string name) => Callables.Single(method => method.Name == name);
}
