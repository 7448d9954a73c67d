using System.Reflection;
using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;

namespace ScrewSheet.Mechanics.Tests.LeverArm;

/// <summary>Declarations are whole, and declared limits are what the code refuses.</summary>
public sealed class DeclarationTests
{
    /// <summary>An allowed value of every parameter, in the parameter's declared unit; series hold three of them.</summary>
    private static readonly Dictionary<string, double> Allowed = new()
    {
        ["outerDiameter"] = 17, ["wall"] = 1.5, ["bore"] = 12, ["threadDiameter"] = 20, ["rootDiameter"] = 17, ["protrusion"] = 5, ["iceLost"] = 40, ["seatOffset"] = 10,
        ["depth"] = 40, ["setAngle"] = 10, ["transverse"] = 2, ["leverArm"] = 50, ["axial"] = 1, ["eccentricity"] = 3, ["moment"] = 90, ["elasticModulus"] = 260, ["plasticModulus"] = 361,
        ["yieldStrength"] = 500, ["proofStrength"] = 240, ["area"] = 73, ["shearArea"] = 46, ["plasticMoment"] = 187, ["load"] = 1, ["outwardTilt"] = 5, ["normalStress"] = 100, ["shearStress"] = 50,
        ["nominalStress"] = 100, ["stressConcentration"] = 2, ["youngsModulus"] = 200, ["secondMoment"] = 2214, ["plasticAxialLoad"] = 37, ["rotation"] = 30, ["ultimateStrain"] = 0.2,
        ["hingeLength"] = 17, ["axialRatio"] = 0.3, ["plasticShearLoad"] = 13, ["momentY"] = 50, ["momentZ"] = 60, ["reducedMoment"] = 180, ["neutralAxisShift"] = 3, ["poissonRatio"] = 0.3,
        ["meanRadius"] = 7.75, ["includedAngle"] = 60, ["fromHorizontal"] = 50, ["loadPerLeg"] = 1, ["legLength"] = 2, ["height"] = 1.5, ["capacity"] = 8, ["spacing"] = 0.4, ["firstAngle"] = 30,
        ["secondAngle"] = 40, ["firstDistance"] = 3, ["secondDistance"] = 4, ["offAxis"] = 5, ["span"] = 10, ["sag"] = 0.5, ["tension"] = 4, ["fromFirst"] = 3, ["unloadedLength"] = 10,
        ["axialStiffness"] = 100, ["sideAngle"] = 30, ["friction"] = 0.25, ["wrapAngle"] = 120, ["legs"] = 20, ["lengths"] = 0.5, ["stiffness"] = 100, ["legStiffness"] = 200, ["slack"] = 5,
        ["lengthError"] = 10, ["direction"] = 20, ["pullX"] = 0.1, ["pullY"] = 0.1, ["pullZ"] = -5, ["x"] = 0.3, ["y"] = 0.2, ["z"] = 0.8, ["lostLeg"] = 1, ["capacities"] = 10, ["mass"] = 80,
        ["lineStiffness"] = 20, ["firstLeg"] = 0.4, ["secondLeg"] = 0.5, ["knotDistance"] = 0.1, ["drop"] = 0.05, ["legProbabilities"] = 0.01,
    };

    public static TheoryData<string> Names => [.. DeclaredText.Callables.Select(method => method.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void EveryParameterAndRecordMemberIsDeclared(string name)
    {
        MethodInfo method = Find(name);
        Assert.All(method.GetParameters(), parameter => Assert.True(parameter.IsDefined(typeof(ParameterAttribute)), $"{name}: {parameter.Name}"));
        Assert.True(method.IsDefined(typeof(FormulaAttribute)) != method.IsDefined(typeof(NoFormulaAttribute)), $"{name} has neither or both of a formula and a reason for none");
        Assert.NotEmpty(method.GetCustomAttributes<SourceAttribute>());
        Assert.NotEmpty(method.GetCustomAttributes<ExampleAttribute>());
        if (!method.ReturnType.IsDefined(typeof(SheetRecordAttribute)) || !method.IsDefined(typeof(FormulaAttribute))) return;
        Assert.Equal(
            method.ReturnType.GetProperties().Where(property => property.IsDefined(typeof(MemberAttribute))).Select(property => property.Name).Order(),
            method.GetCustomAttributes<FormulaAttribute>().Select(formula => formula.Member).Order());
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void TheAllowedValuesAreAllowed(string name)
    {
        MethodInfo method = Find(name);
        Assert.NotNull(method.Invoke(null, Arguments(method, null, 0)));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void ValuesBeyondADeclaredLimitAreRefusedWithParameterLimitAndUnit(string name)
    {
        MethodInfo method = Find(name);
        foreach (ParameterInfo parameter in method.GetParameters().Where(parameter => !parameter.ParameterType.IsEnum))
        {
            ParameterAttribute declared = parameter.GetCustomAttribute<ParameterAttribute>()!;
            foreach (double outside in Outside(declared))
            {
                DomainException refusal = Refusal(method, parameter, outside);
                Assert.StartsWith(parameter.Name!, refusal.Message, StringComparison.Ordinal);
                Assert.Contains(" must be ", refusal.Message, StringComparison.Ordinal);
                if (declared.Unit.Length > 0) Assert.Contains(" " + declared.Unit, refusal.Message, StringComparison.Ordinal);
                Assert.Equal(parameter.Name, refusal.Parameter);
            }
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void NotANumberAndInfinityAreRefused(string name)
    {
        MethodInfo method = Find(name);
        foreach (ParameterInfo parameter in method.GetParameters().Where(parameter => !parameter.ParameterType.IsEnum))
        {
            foreach (double bad in new[] { double.NaN, double.PositiveInfinity, double.NegativeInfinity })
            {
                // a quantity of its own cannot hold these, so they never reach the function; numbers and series can
                bool reaches = parameter.ParameterType == typeof(double) || parameter.ParameterType.IsGenericType;
                if (reaches) Refusal(method, parameter, bad);
                else Assert.ThrowsAny<ArgumentException>(() => Argument(parameter, bad));
            }
        }
    }

    private static IEnumerable<double> Outside(ParameterAttribute declared)
    {
        if (!double.IsNaN(declared.Above)) yield return declared.Above;
        if (!double.IsNaN(declared.Above)) yield return declared.Above - 1;
        if (!double.IsNaN(declared.AtLeast)) yield return declared.AtLeast - (1e-6 * (1 + Math.Abs(declared.AtLeast)));
        if (!double.IsNaN(declared.Below)) yield return declared.Below;
        if (!double.IsNaN(declared.Below)) yield return declared.Below + 1;
        if (!double.IsNaN(declared.AtMost)) yield return declared.AtMost + (1e-6 * (1 + Math.Abs(declared.AtMost)));
    }

    private static DomainException Refusal(MethodInfo method, ParameterInfo parameter, double value)
    {
        TargetInvocationException thrown = Assert.Throws<TargetInvocationException>(() => method.Invoke(null, Arguments(method, parameter, value)));
        return thrown.InnerException as DomainException ?? throw new InvalidOperationException($"{method.Name}: {parameter.Name} = {value} gave {thrown.InnerException}");
    }

    private static object[] Arguments(MethodInfo method, ParameterInfo? changed, double value) =>
        [.. method.GetParameters().Select(parameter => Argument(parameter, parameter.Name == changed?.Name ? value : null))];

    private static object Argument(ParameterInfo parameter, double? changed)
    {
        Type type = parameter.ParameterType;
        if (type.IsEnum) return Enum.GetValues(type).GetValue(0)!;
        double usual = Allowed[parameter.Name!] * Scale(parameter);
        double first = changed * Scale(parameter) ?? usual;
        if (!type.IsGenericType) return DeclaredText.FromSi(type, first);
        double[] values = parameter.Name switch { "x" => [first, -usual, 0.05], "y" => [first, usual, -usual], "legs" => [first, -usual, 0], _ => [first, usual, usual] };
        return type == typeof(Series<double>) ? Series.OfNumbers(values)
            : typeof(Series).GetMethod(nameof(Series.Of), 1, [typeof(IEnumerable<double>)])!.MakeGenericMethod(type.GetGenericArguments()).Invoke(null, [values])!;
    }

    private static MethodInfo Find(string name) => DeclaredText.Callables.Single(method => method.Name == name);

    private static double Scale(ParameterInfo parameter) => parameter.GetCustomAttribute<ParameterAttribute>()!.Unit switch
    {
        "" or "m" or "N" or "N·m" or "kg" => 1,
        "mm" => 1e-3,
        "kN" or "kN/m" => 1e3,
        "MPa" => 1e6,
        "GPa" => 1e9,
        "mm²" => 1e-6,
        "mm³" => 1e-9,
        "mm⁴" => 1e-12,
        "°" => Math.PI / 180,
        string other => throw new InvalidOperationException(other),
    };
}
