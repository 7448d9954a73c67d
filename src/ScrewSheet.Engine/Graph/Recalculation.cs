using System.Collections.Immutable;
using ScrewSheet.Engine.Binding;
using ScrewSheet.Engine.Evaluation;
using ScrewSheet.Engine.Naming;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Engine.Graph;

/// <summary>The graph of one workbook and its results: takes changes in, orders the cells they touch, binds and runs those that must.</summary>
internal sealed partial class Recalculation
{
    private readonly Binder binder;
    private readonly CodeCache codes;
    private readonly CellGraph graph = new();
    private readonly NameIndex names = new();
    private readonly OwnFunctions own;
    private readonly List<CalculationEvent> events = [];
    private readonly List<Node> dirty = [], changed = [];
    private readonly Dictionary<string, PatternCache> patterns = [];
    private readonly Scratch scratch = new();
    private readonly Dictionary<Reference.ToRun, (CellValue Value, ImmutableArray<Caution> Cautions)> runsRead = [];
    private readonly Dictionary<IReadOnlyList<CellId>, Fault> circleFaults = new(ReferenceEqualityComparer.Instance);
    private readonly HeldValues held = new();
    private Budget budget = new(CancellationToken.None);
    private int runValues;
    private volatile Node? running;
    private int calculations;
    private Workbook workbook;
    private readonly CellResults.Builder results = new();

    public Recalculation(Workbook workbook, Binder binder, CodeCache codes)
    {
        this.workbook = workbook;
        this.binder = binder;
        this.codes = codes;
        binder.OwnFunctionsChanged();
        codes.ForgetOwn();
        own = OwnFunctions.Of(workbook.Functions, binder);
    }

    /// <summary>What the last calculation did.</summary>
    public IReadOnlyList<CalculationEvent> Events => events;

    /// <summary>The cell computed last, from any thread; null before the first.</summary>
    public CellId? Running => running?.Id;

    public void CheckInvariants() => graph.CheckInvariants();

    /// <summary>Everything, from nothing.</summary>
    public Calculation All(CancellationToken stop)
    {
        foreach (Sheet sheet in workbook.Sheets) names.AddSheet(sheet);
        (CellId Id, Cell Cell)[] cells = [.. from sheet in workbook.Sheets from cell in sheet.CellsInOrder select (new CellId(sheet.Name, cell.Address), cell)];
        MakeRoom(cells.Length);
        foreach ((CellId id, Cell cell) in cells) Name(id, cell);
        ResolveAll([.. cells.Select(cell => graph.Add(cell.Id, cell.Cell))]);
        return Finish(stop);
    }

    private void MakeRoom(int cells)
    {
        graph.MakeRoom(cells);
        results.MakeRoom(cells);
        dirty.EnsureCapacity(cells);
        events.EnsureCapacity(2 * cells);
    }

    /// <summary>What differs from the workbook before, or only the cells the caller names.</summary>
    public Calculation Changed(Workbook before, Workbook after, IReadOnlyCollection<CellId>? cells, CancellationToken stop)
    {
        workbook = after;
        bool namesChanged = false;
        foreach (CellId id in Touched(before, after, cells)) namesChanged |= Change(id, CellIn(after, id));
        if (namesChanged) ResolveAgain(graph.Nodes.Where(node => node.Unresolved is not null).ToList());
        return Finish(stop);
    }

    /// <summary>The cells the caller names, unless the edit had to read the whole file again: then every cell is another.</summary>
    private static IEnumerable<CellId> Touched(Workbook before, Workbook after, IReadOnlyCollection<CellId>? cells)
    {
        if (cells is null) return Differences(before, after);
        bool readAgain = before.Sheets.Zip(after.Sheets).Any(pair => pair.First.Order.FirstOrDefault(address => !cells.Contains(new CellId(pair.First.Name, address))) is { Row: > 0 } other
            && !ReferenceEquals(pair.First.Cells.GetValueOrDefault(other), pair.Second.Cells.GetValueOrDefault(other)));
        return readAgain ? Differences(before, after) : cells;
    }

    private static Cell? CellIn(Workbook workbook, CellId id) => workbook.Sheets.FirstOrDefault(sheet => sheet.Name == id.Sheet)?.Cells.GetValueOrDefault(id.Address);

    private static IEnumerable<CellId> Differences(Workbook before, Workbook after)
    {
        foreach ((Sheet old, Sheet now) in before.Sheets.Zip(after.Sheets))
        {
            if (ReferenceEquals(old.Cells, now.Cells)) continue;
            foreach ((CellAddress address, Cell cell) in now.Cells)
                if (!old.Cells.TryGetValue(address, out Cell? was) || !ReferenceEquals(was, cell)) yield return new CellId(now.Name, address);
            foreach (CellAddress address in old.Cells.Keys)
                if (!now.Cells.ContainsKey(address)) yield return new CellId(now.Name, address);
        }
    }

    /// <summary>Takes one change in; true when a name came, went or moved.</summary>
    private bool Change(CellId id, Cell? cell)
    {
        Node? node = graph.Find(id);
        if (ReferenceEquals(node?.Cell, cell)) return false;
        bool renamed = node?.Cell.Name != cell?.Name;
        if (renamed)
        {
            foreach (PatternCache known in patterns.Values) known.Forget();
            // whoever read a cell by one of these names must look again; whoever read it by address finds the same
            if (node?.Cell.Name is { } old) names.Remove(id, old);
            if (cell is not null) Name(id, cell);
            IEnumerable<CellId> named = new[] { node?.Cell.Name, cell?.Name }.OfType<string>().SelectMany(name => names.Having(id.Sheet, name));
            ResolveAgain(named.Append(id).Distinct().SelectMany(graph.Readers).Distinct().ToList());
        }
        if (cell is null && node is not null)
        {
            foreach (Node reader in graph.Readers(id)) MarkDirty(reader);
            graph.Remove(node);
            node.IsDirty = false;
            results.Remove(id);
            held.Replace(node.Result?.Value, null);
        }
        else if (node is null && cell is not null) Resolve(graph.Add(id, cell));
        else if (node is not null) Rewrite(node, cell!);
        return renamed;
    }

    private void Rewrite(Node node, Cell cell)
    {
        bool same = TextOf(node.Cell.Content) == TextOf(cell.Content) && TextOf(cell.Content) is not null;
        node.Cell = cell;
        if (same) MarkDirty(node);
        else ResolveAgain([node]);
    }

    private void Name(CellId id, Cell cell)
    {
        if (cell.Name is { } name) names.Add(id, name);
    }

    private void MarkDirty(Node node)
    {
        if (node.IsDirty) return;
        node.IsDirty = true;
        dirty.Add(node);
    }

    private void ResolveAgain(List<Node> nodes)
    {
        foreach (Node node in nodes)
        {
            graph.Disconnect(node);
            Resolve(node);
        }
    }

    private void ResolveAll(Node[] nodes)
    {
        if (nodes.Length < ManyResolved.WorthIt)
        {
            foreach (Node node in nodes) Resolve(node);
            return;
        }
        ManyResolved many = new(() =>
        {
            Dictionary<string, PatternCache> ofThread = [];
            return sheet => Patterns(sheet, ofThread);
        });
        foreach (Node[] some in nodes.Chunk(ManyResolved.Together))
        {
            var resolved = many.Of([.. some.Select(node => (node.Id, TextOf(node.Cell.Content)))]);
            for (int i = 0; i < some.Length; i++)
            {
                Place(some[i], resolved[i]);
                // half a million expressions do not wait for the compiler with all their tokens
                if (nodes.Length > ManyResolved.Together) some[i].Expression?.Family.LetTokensGo();
            }
        }
    }

    private void Resolve(Node node) => Place(node, TextOf(node.Cell.Content) is { } text ? Patterns(node.Id.Sheet, patterns).Resolve(text) : default);

    /// <summary>Takes in what an expression was resolved to.</summary>
    private void Place(Node node, (ResolvedExpression? Expression, Fault? Fault) resolved)
    {
        (node.Expression, node.Unresolved, node.Shape) = (resolved.Expression, resolved.Fault, null);
        if (node.Expression is not null)
        {
            if (node.Cell.Content is GivenContent && node.Expression is { References.IsEmpty: false } expression)
                (node.Expression, node.Unresolved) = (null, CallFaults.GivenRefers(expression.ReferencePlaces[0]));
            if (node.Expression is { Calls.IsEmpty: false } calling && calling.Calls.FirstOrDefault(call => call.Fault is not null) is { } broken)
                (node.Expression, node.Unresolved) = (null, CallFaults.FunctionBroken(broken.Name, null));
            if (node.Expression is { } spanning && graph.SpansTooMuch(spanning.References))
                (node.Expression, node.Unresolved) = (null, NameFaults.SeriesTogether(spanning.ReferencePlaces[spanning.References.IndexOf(spanning.References.First(reference => reference is Reference.ToRun))]));
        }
        graph.Connect(node);
        MarkDirty(node);
    }

    private PatternCache Patterns(string sheet, Dictionary<string, PatternCache> patterns)
    {
        if (!patterns.TryGetValue(sheet, out PatternCache? known)) patterns.Add(sheet, known = new PatternCache(new SheetScope(sheet, binder.Library, own.ByName, names)));
        return known;
    }

    private static string? TextOf(CellContent content) => content switch
    {
        ResultContent result => result.Expression,
        GivenContent { Literal: null } given => given.Text,
        _ => null,
    };

    private Calculation Finish(CancellationToken stop)
    {
        events.Clear();
        runsRead.Clear();
        circleFaults.Clear();
        binder.BeginCalculation();
        (running, runValues) = (null, 0);
        dirty.RemoveAll(node => !node.IsDirty);
        Order order = Order.Of(graph, dirty, ++calculations);
        budget = new Budget(stop);
        Frame frame = new(budget, workbook.Head.Units);
        foreach (List<Node> level in order.Levels)
        {
            stop.ThrowIfCancellationRequested();
            RunLevel(level, 0, order, frame, []);
        }
        foreach (Node node in dirty) node.IsDirty = false;
        foreach (Node node in changed) node.HasChanged = false;
        dirty.Clear();
        changed.Clear();
        ImmutableArray<Fault> faults = [.. workbook.Faults, .. own.Faults, .. Hiding()];
        return new Calculation(workbook, results.Build(), faults);
    }

    private IEnumerable<Fault> Hiding() =>
        names.Sheets.Where(name => binder.Library.IsTypeName(name) || binder.Library.Function(name) is not null || own.ByName.ContainsKey(name) || CodeWriter.OwnNames.Contains(name) || name is "Math" or "Series")
            .Select(NameFaults.HiddenBySheet);

    /// <summary>Runs what is bound at once; what is not is bound together at the level's end.</summary>
    private void RunLevel(List<Node> level, int from, Order order, Frame frame, List<(Node Node, Inputs Inputs)> unbound)
    {
        for (int i = from; i < level.Count; i++)
        {
            Node node = level[i];
            if (order.Circles.TryGetValue(node, out IReadOnlyList<CellId>? circle)) Store(node, Fail(node, CircleFault(circle)));
            else if (node.IsDirty || WasInCircle(node) || graph.ReadsChanged(node))
            {
                if (!DeepStack.Inside && node.Expression is not null && node.Shape is not { IsPlain: true })
                {
                    int here = i;
                    DeepStack.Run(() =>
                    {
                        RunLevel(level, here, order, frame, unbound);
                        return true;
                    });
                    return;
                }
                Take(node, frame, unbound);
            }
        }
        Bind(unbound);
        foreach ((Node node, Inputs inputs) in unbound) Store(node, Run(node, inputs.Si, inputs.Others, inputs.Cautions, frame));
    }

    /// <summary>A cell may leave a circle without anything it reads changing.</summary>
    private static bool WasInCircle(Node node) => node.Result?.Fault?.Kind == FaultKind.Circle;

    private void Take(Node node, Frame frame, List<(Node, Inputs)> unbound)
    {
        CellContent content = node.Cell.Content;
        if (content is NoteContent) Store(node, new CellResult { Id = node.Id, Cell = node.Cell });
        else if (content is BrokenContent broken) Store(node, Fail(node, broken.Fault));
        else if (content is GivenContent { Literal: { } literal }) Store(node, OfLiteral(node, literal));
        else if (node.Unresolved is { } unresolved) Store(node, Fail(node, InFile(node, unresolved)));
        else if (Gather(node) is { } failed) Store(node, failed);
        else if (IsBound(node)) Store(node, Run(node, scratch.Si, scratch.Others, scratch.Inherited, frame));
        else unbound.Add((node, scratch.Keep()));
    }

    /// <summary>True where its shape suits the types of what it reads, or one known from before does.</summary>
    private bool IsBound(Node node)
    {
        if (node.Shape is not null && scratch.Types.SequenceEqual(node.SlotTypes.AsSpan())) return true;
        if (binder.Known(node.Expression!, scratch.Types) is not { } known) return false;
        Adopt(node, known.Shape, known.Slots);
        return true;
    }

    private void Adopt(Node node, Shape shape, ImmutableArray<CellType> types)
    {
        (node.Shape, node.SlotTypes) = (shape, types);
        events.Add(new CalculationEvent(node.Id, CellWork.Bound));
    }

    private void Bind(List<(Node Node, Inputs Inputs)> unbound)
    {
        if (unbound.Count == 0) return;
        IReadOnlyList<Shape> shapes = binder.Bind([.. unbound.Select(item => (item.Node.Expression!, item.Inputs.Types))], own.ByName);
        for (int i = 0; i < unbound.Count; i++) Adopt(unbound[i].Node, shapes[i], unbound[i].Inputs.Types);
    }

    /// <summary>Keeps a result; a cell whose value, type, cautions and way of being shown are as before stops the change here.</summary>
    private void Store(Node node, CellResult result)
    {
        bool same = node.Result is { } old && Equals(old.Outcome, result.Outcome) && old.Type == result.Type && old.Cautions.SequenceEqual(result.Cautions) && old.Cell.Format == result.Cell.Format;
        held.Replace(node.Result?.Value, result.Value);
        node.Result = result;
        results.Set(result);
        if (same || node.HasChanged) return;
        node.HasChanged = true;
        changed.Add(node);
    }

    /// <summary>The fault of a circle, worded once however many cells stand in it.</summary>
    private Fault CircleFault(IReadOnlyList<CellId> circle)
    {
        if (!circleFaults.TryGetValue(circle, out Fault? fault)) circleFaults.Add(circle, fault = NameFaults.CellCircle(circle));
        return fault;
    }
}
