using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Scripting;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.CodeAnalysis.Scripting;
using ScrewSheet.Workbooks.Expressions;

namespace ScrewSheet.Engine.Binding;

/// <summary>
/// The one door to the compiler: shows it many expressions in one tree and hands back their operations. It binds; it never runs or emits anything.
/// </summary>
internal sealed class CompilerDoor
{
    private static readonly CSharpParseOptions ScriptOptions = new(LanguageVersion.CSharp14, DocumentationMode.None, SourceCodeKind.Script);

    private readonly Lazy<Compilation> start;

    public CompilerDoor(FunctionLibrary library) => start = new Lazy<Compilation>(() => Prepare(library));

    /// <summary>Binds all the expressions in one tree.</summary>
    /// <param name="shapes">Each expression with the types of its references.</param>
    /// <param name="own">The author's functions they may call.</param>
    public IReadOnlyList<BoundShape> Bind(IReadOnlyList<(ResolvedExpression Expression, ImmutableArray<CellType> Slots)> shapes, IEnumerable<OwnFunction> own)
    {
        (string text, int[] starts) = Write(shapes, own);
        SyntaxTree tree = CSharpSyntaxTree.ParseText(text, ScriptOptions);
        Compilation compilation = start.Value.ReplaceSyntaxTree(start.Value.SyntaxTrees.First(), tree);
        SemanticModel model = compilation.GetSemanticModel(tree);
        MethodDeclarationSyntax[] methods = [.. tree.GetRoot().DescendantNodes(node => node is CompilationUnitSyntax).OfType<MethodDeclarationSyntax>()];
        ILookup<int, Diagnostic> syntax = tree.GetDiagnostics().Where(IsError).ToLookup(diagnostic => Index(starts, diagnostic.Location.SourceSpan.Start));
        bool whole = methods.Length == shapes.Count;
        return [.. shapes.Select((_, i) => whole ? Shape(model, methods[i], starts[i], syntax[i]) : new BoundShape(null, [.. tree.GetDiagnostics().Where(IsError)], starts[i]))];
    }

    private static BoundShape Shape(SemanticModel model, MethodDeclarationSyntax method, int codeStart, IEnumerable<Diagnostic> syntax)
    {
        ImmutableArray<Diagnostic> errors = [.. syntax];
        if (errors.IsEmpty) errors = [.. model.GetDiagnostics(method.Span).Where(IsError)];
        ExpressionSyntax? value = (method.Body!.Statements.FirstOrDefault() as LocalDeclarationStatementSyntax)?.Declaration.Variables[0].Initializer?.Value;
        bool single = method.Body.Statements.Count == 1 && value is not null;
        return new BoundShape(errors.IsEmpty && single ? model.GetOperation(value!) : null, errors, codeStart);
    }

    private static (string Text, int[] Starts) Write(IReadOnlyList<(ResolvedExpression Expression, ImmutableArray<CellType> Slots)> shapes, IEnumerable<OwnFunction> own)
    {
        StringBuilder text = new();
        int[] starts = new int[shapes.Count];
        for (int i = 0; i < shapes.Count; i++)
        {
            (ResolvedExpression expression, ImmutableArray<CellType> slots) = shapes[i];
            text.Append(CultureInfo.InvariantCulture, $"void s{i}(").AppendJoin(", ", Parameters(expression, slots)).Append("){var v=");
            starts[i] = text.Length;
            text.Append(expression.Code).Append("\n;}\n");
        }
        return (text.Append(StubWriter.WriteOwn(own)).ToString(), starts);
    }

    private static IEnumerable<string> Parameters(ResolvedExpression expression, ImmutableArray<CellType> slots) =>
        slots.Select((type, i) => string.Create(CultureInfo.InvariantCulture, $"{StubWriter.Erased(type)} r{i}"))
            .Concat(expression.Literals.Select((_, i) => string.Create(CultureInfo.InvariantCulture, $"Quantity l{i}")))
            .Concat(expression.Parameters.Select(parameter => $"{StubWriter.Erased(parameter.Type)} p_{parameter.Name}"));

    private static int Index(int[] starts, int position)
    {
        int found = Array.BinarySearch(starts, position);
        return found >= 0 ? found : Math.Max(~found - 1, 0);
    }

    private static bool IsError(Diagnostic diagnostic) => diagnostic.Severity == DiagnosticSeverity.Error;

    private static Compilation Prepare(FunctionLibrary library)
    {
        MetadataReference core = MetadataReference.CreateFromFile(typeof(object).Assembly.Location);
        CSharpCompilation world = CSharpCompilation.Create("Lib", [CSharpSyntaxTree.ParseText(StubWriter.Write(library), new CSharpParseOptions(LanguageVersion.CSharp14, DocumentationMode.None))], [core],
            new CSharpCompilationOptions(OutputKind.DynamicallyLinkedLibrary));
        Microsoft.CodeAnalysis.Scripting.ScriptOptions options = Microsoft.CodeAnalysis.Scripting.ScriptOptions.Default
            .WithReferences(core, world.ToMetadataReference()).WithImports().WithMetadataResolver(new NothingResolver()).WithSourceResolver(new NothingSource())
            .WithLanguageVersion(LanguageVersion.CSharp14);
        return CSharpScript.Create("", options).GetCompilation();
    }

    /// <summary>Answers no question for an assembly.</summary>
    private sealed class NothingResolver : MetadataReferenceResolver
    {
        public override ImmutableArray<PortableExecutableReference> ResolveReference(string reference, string? baseFilePath, MetadataReferenceProperties properties) => [];

        public override bool Equals(object? other) => other is NothingResolver;

        public override int GetHashCode() => 1;
    }

    /// <summary>Answers no question for a source file.</summary>
    private sealed class NothingSource : SourceReferenceResolver
    {
        public override string? NormalizePath(string path, string? baseFilePath) => null;

        public override string? ResolveReference(string path, string? baseFilePath) => null;

        public override Stream OpenRead(string resolvedPath) => throw new InvalidOperationException("No source is ever read.");

        public override bool Equals(object? other) => other is NothingSource;

        public override int GetHashCode() => 1;
    }
}

/// <summary>What the compiler said of one expression.</summary>
/// <param name="Operation">Its tree, or null when there are errors.</param>
/// <param name="Errors">The errors.</param>
/// <param name="CodeStart">Where its code begins in the tree's text.</param>
internal sealed record BoundShape(IOperation? Operation, ImmutableArray<Diagnostic> Errors, int CodeStart);
