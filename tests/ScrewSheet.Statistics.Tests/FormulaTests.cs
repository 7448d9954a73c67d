using System.Globalization;
using System.Reflection;
using Microsoft.CodeAnalysis.CSharp.Scripting;
using Microsoft.CodeAnalysis.Scripting;
using ScrewSheet.Quantities.Declarations;

namespace ScrewSheet.Statistics.Tests;

/// <summary>The declared formula and the code cannot part.</summary>
public sealed class FormulaTests
{
    private const string Words = "static double Pow(double a, double b) => System.Math.Pow(a, b); static double Exp(double a) => System.Math.Exp(a); static double Ln(double a) => System.Math.Log(a); static double Min(double a, double b) => System.Math.Min(a, b);\n";

    public static IEnumerable<object[]> Functions => Declared.Select(method => new object[] { method.Name });

    private static IEnumerable<MethodInfo> Declared => typeof(SampleStatistics).Assembly.GetExportedTypes()
        .SelectMany(type => type.GetMethods(BindingFlags.Static | BindingFlags.Public)).Where(method => method.IsDefined(typeof(FormulaAttribute)));

    [Theory]
    [MemberData(nameof(Functions))]
    public async Task DeclaredFormula_GivesWhatTheCodeGives(string name)
    {
        MethodInfo method = Declared.Single(each => each.Name == name);
        string formula = method.GetCustomAttribute<FormulaAttribute>()!.Text;
        if (method.IsGenericMethodDefinition) method = method.MakeGenericMethod(typeof(double));
        Random random = new(8);
        for (int trial = 0; trial < 2; trial++)
        {
            object[] arguments = [.. method.GetParameters().Select(parameter => (object)Value(parameter.Name!, random))];
            string givens = string.Concat(method.GetParameters().Zip(arguments, (parameter, value) => string.Create(CultureInfo.InvariantCulture, $"double {parameter.Name} = {value:R};\n")));
            double declared = await CSharpScript.EvaluateAsync<double>(Words + givens + formula, ScriptOptions.Default);
            Assert.Equal(declared, (double)method.Invoke(null, arguments)!, 1e-9 * Math.Abs(declared));
        }
    }

    /// <summary>Something in the domain of a parameter of that name; limits keep their order.</summary>
    private static double Value(string name, Random random) => name switch
    {
        "count" => random.Next(20, 90),
        "rank" => random.Next(1, 20),
        "content" or "confidence" or "fraction" => 0.05 + (0.9 * random.NextDouble()),
        "lower" => random.NextDouble(),
        "upper" => 5 + random.NextDouble(),
        _ => 1 + (3 * random.NextDouble()),
    };
}
