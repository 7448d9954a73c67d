using System.Globalization;
using System.Reflection;
using System.Text;
using CsCheck;
using Microsoft.CodeAnalysis.CSharp.Scripting;
using Microsoft.CodeAnalysis.Scripting;
using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;
using Quantity = ScrewSheet.Quantities.Quantity;

namespace ScrewSheet.Mechanics.Tests;

/// <summary>The formulas declared by embedded body, threads, ice, materials and everyday functions are what their code computes; their limits are what it refuses.</summary>
public sealed class DeclaredFormulaTests
{
    private const string Words = """
        double pi = System.Math.PI, gn = 9.80665;
        double Sqrt(double x) => System.Math.Sqrt(x); double Pow(double x, double y) => System.Math.Pow(x, y); double Exp(double x) => System.Math.Exp(x);
        double Ln(double x) => System.Math.Log(x); double Log10(double x) => System.Math.Log10(x); double Abs(double x) => System.Math.Abs(x);
        double Min(double x, double y) => System.Math.Min(x, y); double Max(double x, double y) => System.Math.Max(x, y);
        double Sin(double x) => System.Math.Sin(x); double Cos(double x) => System.Math.Cos(x); double Tan(double x) => System.Math.Tan(x);
        double Asin(double x) => System.Math.Asin(x); double Acos(double x) => System.Math.Acos(x); double Atan(double x) => System.Math.Atan(x);
        double Atan2(double y, double x) => System.Math.Atan2(y, x); double Sinh(double x) => System.Math.Sinh(x); double Cosh(double x) => System.Math.Cosh(x);
        var texts = new System.Collections.Generic.Dictionary<string, System.Func<double[], object>>();
        """;

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

    private static readonly Lazy<Dictionary<string, Func<double[], object>>> Texts = new(Compile);

    public static TheoryData<string> Formulas => [.. Callables.Where(method => method.IsDefined(typeof(FormulaAttribute))).Select(method => method.Name)];

    public static TheoryData<string> Names => [.. Callables.Select(method => method.Name)];

    [Theory]
    [MemberData(nameof(Formulas))]
    public void TheDeclaredFormula_IsWhatTheCodeComputes(string name)
    {
        MethodInfo method = Find(name);
        ParameterInfo[] parameters = method.GetParameters();
        int answered = 0;
        Gen.Double[0, 1].Array[parameters.Length].Sample(shares =>
        {
            double[] si = [.. parameters.Select((parameter, place) => Between(parameter, shares[place]))];
            object result;
            try
            {
                result = method.Invoke(null, [.. parameters.Select((parameter, place) => FromSi(parameter, si[place]))])!;
            }
            catch (TargetInvocationException refused) when (refused.InnerException is DomainException)
            {
                return true; // parameters that depend on each other may not fit; enough must
            }
            Interlocked.Increment(ref answered);
            return method.GetCustomAttributes<FormulaAttribute>().All(formula => Agrees(
                Texts.Value[$"{name} {formula.Member}"](si), formula.Member is null ? result : result.GetType().GetProperty(formula.Member)!.GetValue(result)!));
        }, iter: 200);
        Assert.True(answered >= 20, $"{name}: only {answered} of 200 points were answered");
    }

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

    private static bool Agrees(object declared, object computed)
    {
        if (computed is bool holds) return holds == (bool)declared;
        double ours = computed switch { double number => number, Quantity quantity => quantity.Si, _ => QuantityKinds.ByType(computed.GetType())!.ToSi(computed) };
        double formula = Convert.ToDouble(declared, CultureInfo.InvariantCulture);
        return Math.Abs(ours - formula) <= 1e-9 * Math.Max(Math.Abs(ours), Math.Abs(formula)) + 1e-15;
    }

    private static MethodInfo Find(string name) => Callables.Single(method => method.Name == name);

    private static Dictionary<string, Func<double[], object>> Compile()
    {
        StringBuilder script = new(Words);
        foreach (MethodInfo method in Callables.Where(method => method.IsDefined(typeof(FormulaAttribute))))
        {
            string names = string.Concat(method.GetParameters().Select((parameter, place) => $"double {parameter.Name} = a[{place}]; "))
                + string.Concat(method.GetCustomAttributes<LetAttribute>().Select(let => $"double {let.Name} = {let.Text}; "));
            foreach (FormulaAttribute formula in method.GetCustomAttributes<FormulaAttribute>())
                script.AppendLine().Append($"texts[\"{method.Name} {formula.Member}\"] = a => {{ {names} return {formula.Text}; }};");
        }
        return CSharpScript.EvaluateAsync<Dictionary<string, Func<double[], object>>>(script.AppendLine().Append("texts").ToString(),
            ScriptOptions.Default.WithReferences(typeof(object).Assembly, typeof(Dictionary<,>).Assembly)).GetAwaiter().GetResult();
    }
}
