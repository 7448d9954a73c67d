using System.Reflection;
using System.Text;
using Microsoft.CodeAnalysis.CSharp.Scripting;
using Microsoft.CodeAnalysis.Scripting;
using ScrewSheet.Mechanics.Tests.Declarations;
using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;

namespace ScrewSheet.Mechanics.Tests.Rope;

/// <summary>The declared formulas and conditions of the fall and rope functions as plain C# over doubles in SI: a reading apart from the engine's own.</summary>
internal static class RopeDeclared
{
    private static readonly string[] Topics = ["Falls", "Friction", "Belay", "Tethers", "ViscoElastic", "Hauling"];

    private static readonly Lazy<Task<Dictionary<string, Func<double[], double>>>> Compiled = new(() =>
        CSharpScript.EvaluateAsync<Dictionary<string, Func<double[], double>>>(Script(), ScriptOptions.Default.WithImports("System", "System.Math", "System.Collections.Generic")));

    public static IReadOnlyList<MethodInfo> Functions { get; } =
        [.. Callables.All.Where(method => Topics.Any(topic => method.DeclaringType!.Namespace == $"ScrewSheet.Mechanics.{topic}"))];

    /// <summary>The value of a formula; member null for a function that answers with one value.</summary>
    public static async Task<double> FormulaAsync(MethodInfo method, string? member, double[] si) => (await Compiled.Value)[$"{method.Name}|{member}"](si);

    /// <summary>The cautions that ride with the answer to this call.</summary>
    public static async Task<IReadOnlyList<string>> CautionsAsync(RopeCall call)
    {
        double[] values = [.. call.Arguments.Where(Plain).Select(a => RopeCall.Si(a!)), .. Results(call.Method.ReturnType).Select(r => RopeCall.Si(r.Read(call.Answer())))];
        var conditions = await Compiled.Value;
        return [.. call.Method.GetCustomAttributes<CautionWhenAttribute>().Where((_, i) => conditions[$"{call.Method.Name}?{i}"](values) != 0).Select(c => c.Sentence)];
    }

    private static string Script()
    {
        var script = new StringBuilder("const double pi = Math.PI, gn = 9.80665; double Ln(double x) => Log(x);\nvar d = new Dictionary<string, Func<double[], double>>();\n");
        foreach (var method in Functions)
        {
            string[] inputs = [.. method.GetParameters().Where(p => !p.ParameterType.IsEnum && !typeof(Series).IsAssignableFrom(p.ParameterType)).Select(p => p.Name!)];
            string head = Declare(inputs) + string.Concat(method.GetCustomAttributes<LetAttribute>().Select(let => $"double {let.Name} = {let.Text}; "));
            foreach (var formula in method.GetCustomAttributes<FormulaAttribute>())
                script.AppendLine($"d[\"{method.Name}|{formula.Member}\"] = a => {{ {head} return {formula.Text}; }};");
            string results = string.Concat(Results(method.ReturnType).Select((r, i) => $"double {r.Name ?? Symbol(method)} = a[{inputs.Length + i}]; "));
            foreach (var (index, caution) in method.GetCustomAttributes<CautionWhenAttribute>().Index())
                script.AppendLine($"d[\"{method.Name}?{index}\"] = a => {{ {head} {results} return ({caution.Condition}) ? 1 : 0; }};");
        }
        return script.Append("return d;").ToString();
    }

    private static string Declare(string[] names) => string.Concat(names.Select((name, i) => $"double {name} = a[{i}]; "));

    private static string Symbol(MethodInfo method) =>
        method.GetCustomAttributes<FormulaAttribute>().Select(f => f.Symbol).FirstOrDefault(s => s is not null && s.All(c => char.IsLetterOrDigit(c) || c == '_')) ?? "result";

    private static bool Plain(object? argument) => argument is not (Series or Enum or null);

    private static IReadOnlyList<(string? Name, Func<object, object> Read)> Results(Type type) =>
        !type.IsDefined(typeof(SheetRecordAttribute)) ? [(null, answer => answer)]
        : [.. type.GetProperties().Where(p => p.IsDefined(typeof(MemberAttribute)) && !typeof(Series).IsAssignableFrom(p.PropertyType)).Select(p => ((string?)p.Name, (Func<object, object>)(answer => p.GetValue(answer)!)))];
}
