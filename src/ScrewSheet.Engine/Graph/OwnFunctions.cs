using System.Collections.Immutable;
using ScrewSheet.Engine.Binding;
using ScrewSheet.Engine.Naming;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Engine.Graph;

/// <summary>The author's functions of a workbook, bound in the order they call each other.</summary>
internal sealed class OwnFunctions
{
    private readonly Dictionary<string, OwnFunction> byName = [];
    private readonly Dictionary<OwnFunction, (ResolvedExpression Body, FunctionDefinition Definition)> bodies = [];
    private readonly List<Fault> faults = [];
    private readonly Binder binder;

    private OwnFunctions(Binder binder) => this.binder = binder;

    /// <summary>By name; those in fault say why.</summary>
    public IReadOnlyDictionary<string, OwnFunction> ByName => byName;

    /// <summary>All faults, each with the line it stands in.</summary>
    public IReadOnlyList<Fault> Faults => faults;

    /// <summary>Reads and binds all functions.</summary>
    public static OwnFunctions Of(ImmutableArray<FunctionDefinition> definitions, Binder binder)
    {
        OwnFunctions functions = new(binder);
        foreach (FunctionDefinition definition in definitions) functions.Declare(definition);
        foreach (FunctionDefinition definition in definitions) functions.Resolve(definition);
        foreach (OwnFunction function in functions.byName.Values) functions.Bind(function, []);
        return functions;
    }

    private void Declare(FunctionDefinition definition)
    {
        Fault? fault = null;
        CellType Type(string name)
        {
            CellType? type = TypeNames.Find(name, binder.Library);
            if (type is null) fault ??= NameFaults.UnknownType(name, Nearest.To(name, TypeNames.Known(binder.Library)), definition.Place);
            return type ?? CellType.Number;
        }
        ImmutableArray<BoundParameter> parameters = [.. definition.Parameters.Select((p, i) => new BoundParameter(p.Name, i, Type(p.Type), definition.Place))];
        OwnFunction function = new() { Name = definition.Name, Parameters = parameters, ReturnType = Type(definition.ReturnType) };
        bool isType = TypeNames.Find(definition.Name, binder.Library) is not null || binder.Library.IsTypeName(definition.Name);
        bool hides = isType || binder.Library.Function(definition.Name) is not null || CodeWriter.OwnNames.Contains(definition.Name) || definition.Name is "Series" or "Math";
        if (hides) fault ??= isType && binder.Library.Function(definition.Name) is null ? NameFaults.HiddenType(definition.Name, definition.Place) : NameFaults.HiddenFunction(definition.Name, definition.Place);
        if (byName.ContainsKey(definition.Name)) fault = NameFaults.DoubledFunction(definition.Name, definition.Place);
        if (!hides) byName.TryAdd(definition.Name, function);
        if (fault is not null) Fail(byName.GetValueOrDefault(definition.Name) ?? function, fault);
    }

    private void Resolve(FunctionDefinition definition)
    {
        if (byName.GetValueOrDefault(definition.Name) is not { Fault: null } function || bodies.ContainsKey(function)) return;
        (ResolvedExpression? body, Fault? fault) = CodeWriter.Resolve(definition.Body, new FunctionScope(binder.Library, byName, function.Parameters));
        if (fault is not null) Fail(function, InFile(fault, definition));
        else bodies.Add(function, (body!, definition));
    }

    private void Bind(OwnFunction function, ImmutableList<OwnFunction> path)
    {
        if (function.Fault is not null || function.Body is not null || !bodies.TryGetValue(function, out var entry)) return;
        if (path.Contains(function))
        {
            string[] circle = [.. path.SkipWhile(f => f != function).Append(function).Select(f => f.Name)];
            foreach (OwnFunction member in path.SkipWhile(f => f != function)) Fail(member, NameFaults.FunctionCircle(circle, bodies[member].Definition.Place));
            return;
        }
        foreach (OwnFunction called in entry.Body.Calls) Bind(called, path.Add(function));
        if (function.Fault is not null) return;
        if (entry.Body.Calls.FirstOrDefault(called => called.Fault is not null) is { } broken) Fail(function, CallFaults.FunctionBroken(broken.Name, entry.Definition.Place));
        else BindBody(function, entry.Body, entry.Definition);
    }

    private void BindBody(OwnFunction function, ResolvedExpression body, FunctionDefinition definition)
    {
        Shape shape = binder.Bind([(body, [])], byName)[0];
        if (shape.Fault is { } fault) Fail(function, InFile(fault, definition));
        else if (!TypeRules.Fits(shape.Tree!.Type, function.ReturnType)) Fail(function, CallFaults.FunctionGives(function.Name, function.ReturnType, shape.Tree.Type, definition.Place));
        else function.Body = shape.Tree;
    }

    private void Fail(OwnFunction function, Fault fault)
    {
        function.Fault ??= fault;
        faults.Add(fault);
    }

    private static Fault InFile(Fault fault, FunctionDefinition definition) => fault with
    {
        Place = new Place(definition.Place.Line, definition.BodyColumn + (fault.Place?.Column ?? 1) - 1, fault.Place?.Length ?? 0),
    };
}
