using System.Globalization;
using System.Reflection;
using Microsoft.CodeAnalysis.CSharp.Scripting;
using Microsoft.CodeAnalysis.Scripting;
using ScrewSheet.Quantities.Declarations;

namespace ScrewSheet.Mechanics.Tests.Declarations;

/// <summary>Evaluates declared conditions and formulas as plain C# over doubles in SI: a reading apart from the engine's own.</summary>
internal static class DeclaredScript
{
    private const string Words = "const double pi = System.Math.PI, gn = 9.80665; double Ln(double x) => Log(x);\n";

    /// <summary>The cautions a function raises for these arguments in SI, in the order of its parameters; result under its own symbol where a condition names it.</summary>
    public static async Task<IReadOnlyList<string>> CautionsAsync(string function, params double[] si)
    {
        var method = Callables.Named(function);
        var raised = new List<string>();
        foreach (var caution in method.GetCustomAttributes<CautionWhenAttribute>())
            if (await CSharpScript.EvaluateAsync<bool>(Head(method, si, caution.Condition) + caution.Condition, Options)) raised.Add(caution.Sentence);
        return raised;
    }

    /// <summary>The value of a function's declared formula, or of one member's.</summary>
    public static Task<double> ValueAsync(string function, string? member, params double[] si)
    {
        var method = Callables.Named(function);
        var formula = method.GetCustomAttributes<FormulaAttribute>().Single(f => f.Member == member);
        return CSharpScript.EvaluateAsync<double>(Head(method, si, "") + $"(double)({formula.Text})", Options);
    }

    private static ScriptOptions Options => ScriptOptions.Default.WithImports("System.Math");

    private static string Head(MethodInfo method, double[] si, string condition)
    {
        var parameters = method.GetParameters();
        string given = string.Concat(parameters.Zip(si, (p, x) => $"double {p.Name} = {x.ToString("R", CultureInfo.InvariantCulture)};\n"));
        string lets = string.Concat(method.GetCustomAttributes<LetAttribute>().Select(let => $"double {let.Name} = {let.Text};\n"));
        var result = method.GetCustomAttributes<FormulaAttribute>().FirstOrDefault(f => f.Member is null && f.Symbol is not null && Names(condition, f.Symbol));
        return Words + given + lets + (result is null ? "" : $"double {result.Symbol} = {result.Text};\n");
    }

    private static bool Names(string condition, string symbol) =>
        condition.Split([' ', '(', ')', '*', '/', '+', '-', '<', '>', '=', '&', '|', ','], StringSplitOptions.RemoveEmptyEntries).Contains(symbol, StringComparer.Ordinal);
}
