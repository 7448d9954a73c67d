using System.Reflection;
using ScrewSheet.Workbooks.Expressions;

namespace ScrewSheet.Benchmarks;

/// <summary>The library the program ships.</summary>
internal static class Library
{
    public static FunctionLibrary Shipped { get; } = FunctionLibrary.Of(Assembly.Load("ScrewSheet.Mechanics"), Assembly.Load("ScrewSheet.Statistics"));
}
