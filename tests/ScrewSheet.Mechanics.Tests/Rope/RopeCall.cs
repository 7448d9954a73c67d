using System.Globalization;
using System.Reflection;
using System.Text.RegularExpressions;
using ScrewSheet.Mechanics.Tests.Declarations;
using ScrewSheet.Quantities;

namespace ScrewSheet.Mechanics.Tests.Rope;

/// <summary>A worked call of a fall or rope function, read from its declaration and run: a reading apart from the engine's own.</summary>
internal sealed partial record RopeCall(MethodInfo Method, object?[] Arguments)
{
    private static readonly Dictionary<string, double> Units = new(StringComparer.Ordinal)
    {
        [""] = 1, ["kg"] = 1, ["N"] = 1, ["kN"] = 1000, ["kgf"] = 9.80665, ["m"] = 1, ["deg"] = Math.PI / 180, ["s"] = 1, ["ms"] = 1e-3, ["kN/m"] = 1000, ["N/m"] = 1,
        ["J"] = 1, ["m/s"] = 1, ["N·s"] = 1, ["kg/m³"] = 1, ["m²"] = 1, ["%"] = 0.01,
    };

    private static readonly string[] Topics = ["Falls", "Friction", "Belay", "Tethers", "ViscoElastic", "Hauling"];

    public static IReadOnlyList<MethodInfo> Functions { get; } =
        [.. Callables.All.Where(method => Topics.Any(topic => method.DeclaringType!.Namespace == $"ScrewSheet.Mechanics.{topic}"))];

    public static RopeCall Read(string expression)
    {
        var parts = Shape().Match(expression);
        var method = Callables.Named(parts.Groups[1].Value);
        string[] texts = Split(parts.Groups[2].Value);
        object?[] arguments = [.. method.GetParameters().Select((p, i) => i < texts.Length ? Argument(p.ParameterType, texts[i]) : p.DefaultValue)];
        return new RopeCall(method, arguments);
    }

    /// <summary>A call with these arguments in coherent SI; none of them a series or an option.</summary>
    public static RopeCall With(MethodInfo method, params double[] si) =>
        new(method, [.. method.GetParameters().Select((p, i) => i < si.Length ? Make(p.ParameterType, si[i]) : p.DefaultValue)]);

    /// <summary>The answer itself.</summary>
    public object Answer() => Method.Invoke(null, BindingFlags.DoNotWrapExceptions, null, Arguments, null)!;

    private static double Number(string text)
    {
        string[] words = text.Trim().Split(' ', 2);
        return double.Parse(words[0], CultureInfo.InvariantCulture) * Units[words.Length > 1 ? words[1] : ""];
    }

    public static object Make(Type type, double si) =>
        type == typeof(double) ? si : type == typeof(Quantity) ? Quantity.FromSi(si, Dimension.Of(1, 1, -1)) : QuantityKinds.ByType(type)!.FromSi(si);

    private static object Argument(Type type, string text)
    {
        if (type.IsEnum) return Enum.Parse(type, text.Split('.')[1]);
        if (!typeof(Series).IsAssignableFrom(type)) return Make(type, Number(text));
        string inner = text[(text.IndexOf('(') + 1)..^1];
        return Series(type.GetGenericArguments()[0], [.. Split(inner).Select(Number)]);
    }

    public static double Scale(string unit) => Units[unit];

    public static object Series(Type element, double[] si) =>
        typeof(Series).GetMethods().Single(m => m is { Name: "Of", IsGenericMethod: true }).MakeGenericMethod(element).Invoke(null, [si])!;

    private static string[] Split(string list)
    {
        var parts = new List<string>();
        int depth = 0, from = 0;
        for (int i = 0; i <= list.Length; i++)
        {
            if (i == list.Length || (list[i] == ',' && depth == 0)) { parts.Add(list[from..i].Trim()); from = i + 1; }
            else if (list[i] == '(') depth++;
            else if (list[i] == ')') depth--;
        }
        return [.. parts];
    }

    [GeneratedRegex(@"^(\w+)\((.*)\)((?:\.\w+)*)$")]
    private static partial Regex Shape();
}
