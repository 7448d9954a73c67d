using System.Reflection;
using System.Text;
using Microsoft.CodeAnalysis.CSharp.Scripting;
using Microsoft.CodeAnalysis.Scripting;
using ScrewSheet.Mechanics.LeverArm;
using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;

namespace ScrewSheet.Mechanics.Tests.LeverArm;

/// <summary>The formulas and caution conditions that anchors and lever arm declare, compiled once by the C# compiler as they are written.</summary>
internal static class DeclaredText
{
    private const string Words = """
        double pi = System.Math.PI, gn = 9.80665;
        double Sqrt(double x) => System.Math.Sqrt(x); double Pow(double x, double y) => System.Math.Pow(x, y); double Exp(double x) => System.Math.Exp(x);
        double Abs(double x) => System.Math.Abs(x); double Min(double x, double y) => System.Math.Min(x, y); double Max(double x, double y) => System.Math.Max(x, y);
        double Sin(double x) => System.Math.Sin(x); double Cos(double x) => System.Math.Cos(x); double Asin(double x) => System.Math.Asin(x);
        var texts = new System.Collections.Generic.Dictionary<string, System.Func<double[], object>>();
        """;

    private static readonly Lazy<Dictionary<string, Func<double[], object>>> Texts = new(Compile);

    /// <summary>Every callable of the two topics.</summary>
    public static IReadOnlyList<MethodInfo> Callables { get; } =
        [.. typeof(TubeSections).Assembly.GetTypes()
            .Where(type => type.Namespace is "ScrewSheet.Mechanics.LeverArm" or "ScrewSheet.Mechanics.Anchors")
            .SelectMany(type => type.GetMethods(BindingFlags.Static | BindingFlags.Public))
            .Where(method => method.IsDefined(typeof(CallableAttribute)))];

    public static bool IsScalar(MethodInfo method) => method.GetParameters().All(parameter => parameter.ParameterType == typeof(double) || QuantityKinds.ByType(parameter.ParameterType) is not null);

    /// <summary>The declared formula of a member (empty for a plain result) at SI arguments.</summary>
    public static double Formula(MethodInfo method, string member, double[] si) => Convert.ToDouble(Texts.Value[$"{method.Name} formula {member}"](si), System.Globalization.CultureInfo.InvariantCulture);

    /// <summary>The sentences of all cautions that hold at these arguments.</summary>
    public static string Cautions(string function, params object[] arguments)
    {
        MethodInfo method = Callables.Single(callable => callable.Name == function);
        double[] si = [.. arguments.Select(ToSi)];
        return string.Join(" ", method.GetCustomAttributes<CautionWhenAttribute>()
            .Where(caution => caution.Condition == "true" || (bool)Texts.Value[$"{function} when {caution.Condition}"](si)).Select(caution => caution.Sentence));
    }

    public static double ToSi(object value) => value as double? ?? QuantityKinds.ByType(value.GetType())!.ToSi(value);

    public static object FromSi(Type type, double si) => type == typeof(double) ? si : QuantityKinds.ByType(type)!.FromSi(si);

    private static Dictionary<string, Func<double[], object>> Compile()
    {
        StringBuilder script = new(Words);
        foreach (MethodInfo method in Callables.Where(IsScalar))
        {
            string names = string.Concat(method.GetParameters().Select((parameter, place) => $"double {parameter.Name} = a[{place}]; "))
                + string.Concat(method.GetCustomAttributes<LetAttribute>().Select(let => $"double {let.Name} = {let.Text}; "));
            foreach (FormulaAttribute formula in method.GetCustomAttributes<FormulaAttribute>()) Add($"{method.Name} formula {formula.Member}", formula.Text);
            foreach (CautionWhenAttribute caution in method.GetCustomAttributes<CautionWhenAttribute>()) Add($"{method.Name} when {caution.Condition}", caution.Condition);
            void Add(string key, string text) => script.AppendLine().Append($"texts[\"{key}\"] = a => {{ {names} return {text}; }};");
        }
        return CSharpScript.EvaluateAsync<Dictionary<string, Func<double[], object>>>(script.AppendLine().Append("texts").ToString(),
            ScriptOptions.Default.WithReferences(typeof(object).Assembly, typeof(Dictionary<,>).Assembly)).GetAwaiter().GetResult();
    }
}
