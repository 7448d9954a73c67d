using System.Reflection;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Workbooks.Expressions;

namespace ScrewSheet.Terminal.Tests.Versions;

/// <summary>A library of one function in any number of versions, compiled when a test asks for it.</summary>
internal static class ToyVersions
{
    /// <summary>The library whose function <c>Twice</c> is declared by that formula.</summary>
    public static FunctionLibrary Library(string formula)
    {
        string text = $$"""
            using ScrewSheet.Quantities.Declarations;
            public static class Toys
            {
                [Callable("Toys", "How much is twice a number?")]
                [Formula("{{formula}}")]
                public static double Twice([Parameter("x", "", "a number")] double x) => 2 * x;
            }
            """;
        string[] platform = ((string)AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES")!).Split(Path.PathSeparator);
        CSharpCompilation compilation = CSharpCompilation.Create("Toys", [CSharpSyntaxTree.ParseText(text)],
            [.. platform.Append(typeof(CallableAttribute).Assembly.Location).Distinct().Select(path => MetadataReference.CreateFromFile(path))],
            new CSharpCompilationOptions(OutputKind.DynamicallyLinkedLibrary));
        using MemoryStream bytes = new();
        var emitted = compilation.Emit(bytes);
        Assert.True(emitted.Success, string.Join('\n', emitted.Diagnostics));
        return FunctionLibrary.Of(Assembly.Load(bytes.ToArray()));
    }
}
