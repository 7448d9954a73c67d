using System.Collections.Immutable;
using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using ScrewSheet.Workbooks.Expressions;

namespace ScrewSheet.Engine.Binding;

/// <summary>
/// The one door to the compiler: shows it many expressions in one tree and hands back their operations. It binds; it never runs or emits anything.
/// </summary>
internal sealed class CompilerDoor
{
    private const string Head = "static class Cells {\n";

    private static readonly CSharpParseOptions Language = new(LanguageVersion.CSharp14, DocumentationMode.None);

    private static readonly ConditionalWeakTable<FunctionLibrary, Lazy<Compilation>> Worlds = new();

    private readonly Lazy<Compilation> start;

    /// <summary>A door to the world of a library, which is prepared once however many calculators know it.</summary>
    public CompilerDoor(FunctionLibrary library) => start = Worlds.GetValue(library, known => new Lazy<Compilation>(() => Prepare(known)));

    /// <summary>Binds all the expressions in one tree.</summary>
    /// <param name="shapes">Each expression with the types of its references.</param>
    /// <param name="own">The author's functions they may call.</param>
    public IReadOnlyList<BoundShape> Bind(IReadOnlyList<(ResolvedExpression Expression, ImmutableArray<CellType> Slots)> shapes, IEnumerable<OwnFunction> own)
    {
        (string text, int[] starts) = Write(shapes, own);
        return Bind(start.Value, text, starts);
    }

    /// <summary>Binds what most expressions consist of, so that the compiler's code for it is loaded; what it says is of no interest.</summary>
    public static void WarmUp()
    {
        const string parameters = "(Quantity r0, double r1, Series<double> r2, Quantity l0)";
        const string text = $"{Head}static void s0{parameters}{{var v=(F.Sqrt(r0 * r0) / 2.0 + l0) * -r1\n;}}\nstatic void s1{parameters}{{var v=r0 > l0 ? F.Pow(r1, 3.0) : M.Min(1.0, r2.Count)\n;}}\n}}\nstatic class U {{ }}\n";
        Bind(Prepare(FunctionLibrary.Of()), text, [text.IndexOf("(F.Sqrt", StringComparison.Ordinal), text.IndexOf("r0 >", StringComparison.Ordinal)]);
    }

    private static BoundShape[] Bind(Compilation world, string text, int[] starts)
    {
        SyntaxTree tree = CSharpSyntaxTree.ParseText(text, Language);
        Compilation compilation = world.ReplaceSyntaxTree(world.SyntaxTrees.First(), tree);
        SemanticModel model = compilation.GetSemanticModel(tree);
        MethodDeclarationSyntax[] methods = Methods(tree);
        ILookup<int, Diagnostic> syntax = tree.GetDiagnostics().Where(IsError).ToLookup(diagnostic => Index(starts, diagnostic.Location.SourceSpan.Start));
        bool whole = methods.Length == starts.Length;
        return [.. starts.Select((codeStart, i) => whole ? Shape(model, methods[i], codeStart, syntax[i]) : new BoundShape(null, [.. tree.GetDiagnostics().Where(IsError)], codeStart))];
    }

    /// <summary>The methods of the cells; none where an expression has broken out of its own.</summary>
    private static MethodDeclarationSyntax[] Methods(SyntaxTree tree) =>
        ((CompilationUnitSyntax)tree.GetRoot()).Members is [ClassDeclarationSyntax { Identifier.Text: "Cells" } cells, ClassDeclarationSyntax { Identifier.Text: "U" }]
            && cells.Members.All(member => member is MethodDeclarationSyntax { Body: not null }) ? [.. cells.Members.Cast<MethodDeclarationSyntax>()] : [];

    private static BoundShape Shape(SemanticModel model, MethodDeclarationSyntax method, int codeStart, IEnumerable<Diagnostic> syntax)
    {
        ImmutableArray<Diagnostic> errors = [.. syntax];
        ExpressionSyntax? value = (method.Body!.Statements.FirstOrDefault() as LocalDeclarationStatementSyntax)?.Declaration.Variables[0].Initializer?.Value;
        while (value is ParenthesizedExpressionSyntax bracket) value = bracket.Expression; // a bracket has no operation of its own
        bool single = method.Body.Statements.Count == 1 && value is not null;
        if (errors.IsEmpty && single && model.GetOperation(value!) is { } bound && SoundOperations.Are(bound)) return new BoundShape(bound, [], codeStart);
        if (errors.IsEmpty) errors = [.. model.GetDiagnostics(method.Span).Where(IsError)];
        return new BoundShape(errors.IsEmpty && single ? model.GetOperation(value!) : null, errors, codeStart)
        {
            Wrong = errors.IsEmpty ? null : WrongArgumentOf(model, method, errors[0]),
            IsMemberOfText = !errors.IsEmpty && errors[0].Id == "CS1061" && method.Span.Contains(errors[0].Location.SourceSpan)
                && method.FindNode(errors[0].Location.SourceSpan).FirstAncestorOrSelf<MemberAccessExpressionSyntax>() is { } access
                && model.GetTypeInfo(access.Expression).Type?.SpecialType == SpecialType.System_String,
        };
    }

    /// <summary>For an argument of a wrong type: of which call, which one, and what was given.</summary>
    private static WrongArgument? WrongArgumentOf(SemanticModel model, MethodDeclarationSyntax method, Diagnostic error)
    {
        if (error.Id != "CS1503" || !method.Span.Contains(error.Location.SourceSpan)) return null;
        if (method.FindNode(error.Location.SourceSpan).FirstAncestorOrSelf<ArgumentSyntax>() is not { Parent: ArgumentListSyntax { Parent: InvocationExpressionSyntax call } list } argument) return null;
        string function = (call.Expression as MemberAccessExpressionSyntax)?.Name.Identifier.Text ?? "";
        return new WrongArgument(function, argument.NameColon?.Name.Identifier.Text, list.Arguments.IndexOf(argument), model.GetTypeInfo(argument.Expression).Type?.Name ?? "");
    }

    private static (string Text, int[] Starts) Write(IReadOnlyList<(ResolvedExpression Expression, ImmutableArray<CellType> Slots)> shapes, IEnumerable<OwnFunction> own)
    {
        StringBuilder text = new(Head);
        int[] starts = new int[shapes.Count];
        for (int i = 0; i < shapes.Count; i++)
        {
            (ResolvedExpression expression, ImmutableArray<CellType> slots) = shapes[i];
            text.Append(CultureInfo.InvariantCulture, $"static void s{i}(").AppendJoin(", ", Parameters(expression, slots)).Append("){var v=");
            starts[i] = text.Length;
            text.Append(expression.Code).Append("\n;}\n");
        }
        return (text.Append("}\n").Append(StubWriter.WriteOwn(own)).ToString(), starts);
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
        CSharpCompilationOptions options = new(OutputKind.DynamicallyLinkedLibrary, concurrentBuild: false, metadataReferenceResolver: new NothingResolver(), sourceReferenceResolver: new NothingSource());
        CSharpCompilation world = CSharpCompilation.Create("Lib", [CSharpSyntaxTree.ParseText(StubCore.Text + StubWriter.Write(library), Language)], [], options);
        return CSharpCompilation.Create("Cells", [CSharpSyntaxTree.ParseText("", Language)], [world.ToMetadataReference()], options);
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
internal sealed record BoundShape(IOperation? Operation, ImmutableArray<Diagnostic> Errors, int CodeStart)
{
    /// <summary>When the first error is an argument of a wrong type: which.</summary>
    public WrongArgument? Wrong { get; init; }

    /// <summary>True when the first error is a member that texts do not have.</summary>
    public bool IsMemberOfText { get; init; }
}

/// <summary>An argument of a type the parameter does not take.</summary>
/// <param name="Function">The function called.</param>
/// <param name="Name">The argument's name, when it is written.</param>
/// <param name="Index">Its place, from 0.</param>
/// <param name="Given">The compiler's name for the type given.</param>
internal sealed record WrongArgument(string Function, string? Name, int Index, string Given);
