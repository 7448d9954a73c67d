using System.Reflection;
using ScrewSheet.Mechanics.LeverArm;
using ScrewSheet.Mechanics.Tests.Declarations;
using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;

namespace ScrewSheet.Mechanics.Tests.LeverArm;

/// <summary>The functions of anchors and lever arm and the cautions they declare.</summary>
internal static class DeclaredText
{
    /// <summary>Every callable of the two topics.</summary>
    public static IReadOnlyList<MethodInfo> Callables { get; } =
        [.. typeof(TubeSections).Assembly.GetTypes()
            .Where(type => type.Namespace is "ScrewSheet.Mechanics.LeverArm" or "ScrewSheet.Mechanics.Anchors")
            .SelectMany(type => type.GetMethods(BindingFlags.Static | BindingFlags.Public))
            .Where(method => method.IsDefined(typeof(CallableAttribute)))];

    /// <summary>The sentences of all cautions that hold at these arguments.</summary>
    public static string Cautions(string function, params object[] arguments) => string.Join(" ", DeclaredCautions.Of(function, arguments));

    public static object FromSi(Type type, double si) => type == typeof(double) ? si : QuantityKinds.ByType(type)!.FromSi(si);
}
