using System.Reflection;

namespace ScrewSheet.Terminal;

/// <summary>The version of this program.</summary>
internal static class ProductVersion
{
    /// <summary>Such as <c>0.1.0</c>.</summary>
    public static string Text { get; } = typeof(ProductVersion).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()!.InformationalVersion.Split('+')[0];
}
