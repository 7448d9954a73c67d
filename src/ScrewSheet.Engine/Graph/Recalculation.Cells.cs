using System.Collections.Immutable;
using ScrewSheet.Engine.Binding;
using ScrewSheet.Engine.Evaluation;
using ScrewSheet.Engine.Naming;
using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Lexing;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Engine.Graph;

/// <summary>One cell: its inputs, its value, its cautions.</summary>
internal sealed partial class Recalculation
{
    /// <summary>How many values of runs are kept while they may be read again.</summary>
    private const int MostRunValues = 4_000_000;

    /// <summary>Puts what a cell reads into <see cref="scratch"/>, or says why that cannot be.</summary>
    private CellResult? Gather(Node node)
    {
        ImmutableArray<Reference> reads = node.Reads;
        scratch.Begin(reads.Length);
        for (int i = 0; i < reads.Length; i++)
        {
            (CellValue? value, CellResult? failed) = reads[i] is Reference.ToRun run ? GatherRun(node, run, i, scratch.Cautions) : GatherCell(node, i, scratch.Cautions);
            if (failed is not null) return failed;
            scratch.Set(i, value!);
        }
        return null;
    }

    private (CellValue? Value, CellResult? Failed) GatherCell(Node node, int slot, List<Caution> cautions)
    {
        Spot source = node.Sources[slot]!;
        if (source.Node is not { } target) return (null, Fail(node, InFile(node, NameFaults.EmptyCell(Near(node, source.Id), node.Expression!.ReferencePlaces[slot]))));
        if (target.Cell.Content is NoteContent) return (null, Fail(node, InFile(node, NameFaults.NoteCell(Near(node, source.Id), node.Expression!.ReferencePlaces[slot]))));
        if (target.Result?.Value is not { } value) return (null, Wait(node, target));
        Inherit(target, cautions);
        return (value, null);
    }

    private (CellValue? Value, CellResult? Failed) GatherRun(Node node, Reference.ToRun run, int slot, List<Caution> cautions)
    {
        if (!runsRead.TryGetValue(run, out (CellValue Value, ImmutableArray<Caution> Cautions) known))
        {
            RunReading reading = new(run.Said, run.Column?.Unit);
            List<Caution> met = [];
            if (ReadRun(node, run, slot, reading, met) is { } failed) return (null, failed);
            if (reading.Blanks($"{run.First.Sheet}.{run.Column?.Name}") is { } blanks) met.Insert(0, new Caution(blanks));
            Keep(run, known = (reading.Value(), InheritedCautions.Of(met)), reading.Count);
        }
        cautions.AddRange(known.Cautions);
        return (known.Value, null);
    }

    private CellResult? ReadRun(Node node, Reference.ToRun run, int slot, RunReading reading, List<Caution> met)
    {
        CellResult Failed(Fault fault) => Fail(node, InFile(node, fault with { Place = node.Expression!.ReferencePlaces[slot] }));
        foreach (Node target in graph.Inside(run))
        {
            if (reading.IsHeading(target)) continue;
            if (target.Cell.Content is NoteContent) return Failed(run.Column is null ? EvaluationFaults.SeriesNote(Near(node, target.Id)) : EvaluationFaults.ColumnNote(Near(node, target.Id), run.Column.Name));
            if (target.Result?.Value is not { } value) return Wait(node, target);
            if (reading.Take(target.Id, value, () => Near(node, target.Id)) is { } fault) return Failed(fault);
            Inherit(target, met);
        }
        if (!budget.MayRead(reading.Count)) return Fail(node, EvaluationFaults.AllSteps(Budget.PerCalculation));
        if (!reading.IsEmpty) return null;
        return Failed(run.Column is null ? EvaluationFaults.EmptySeries($"{Near(node, run.First)} to {Near(node, run.Last)}") : EvaluationFaults.EmptyColumn(run.Column.Name));
    }

    /// <summary>Remembers what a run holds for other cells that read it; too much is forgotten and read again.</summary>
    private void Keep(Reference.ToRun run, (CellValue Value, ImmutableArray<Caution> Cautions) read, int values)
    {
        if (runValues + values > MostRunValues)
        {
            runsRead.Clear();
            runValues = 0;
        }
        runValues += values;
        runsRead.Add(run, read);
    }

    private static void Inherit(Node target, List<Caution> cautions)
    {
        foreach (Caution caution in target.Result!.Cautions) cautions.Add(caution.Origin is null ? caution with { Origin = target.Id.ToString() } : caution);
    }

    private CellResult Wait(Node node, Node target) => Fail(node, EvaluationFaults.Waits(Near(node, target.Id)) with { Cause = target.Result?.Fault?.Cause ?? target.Id.ToString() });

    private CellResult Run(Node node, double[] si, object?[] others, ImmutableArray<Caution> inherited, Frame frame)
    {
        Shape shape = node.Shape!;
        if (shape.Fault is { } unbound) return Fail(node, InFile(node, shape.In(node.Expression!, unbound)));
        events.Add(new CalculationEvent(node.Id, CellWork.Ran));
        running = node;
        (frame.Si, frame.Others) = (si, others);
        frame.Formats = shape.ShowsValues ? [.. node.Reads.Select(read => read is Reference.ToCell cell ? graph.Find(cell.Cell)?.Cell.Format : null)] : [];
        try
        {
            frame.Begin();
            return Finish(node, shape.Run(frame, codes), inherited, frame);
        }
        catch (EvaluationException exception)
        {
            return Fail(node, Located(node, frame, exception.Fault));
        }
        catch (DomainException exception)
        {
            return Fail(node, Located(node, frame, EvaluationFaults.Domain(exception.Message)));
        }
    }

    private Fault Located(Node node, Frame frame, Fault fault) =>
        InFile(node, node.Shape!.In(node.Expression!, DeepStack.Run(() => FaultPlace.Find(node.Shape.Tree!, frame, codes, fault))));

    private CellResult OfLiteral(Node node, Literal literal)
    {
        CellValue value = literal switch
        {
            NumberLiteral { Unit: { } unit } number when CellType.Of(unit.Dimension) is not NumberType || unit.Kind is not null =>
                new QuantityValue(number.Si, (QuantityType)(unit.Kind is { } kind ? CellType.Of(kind) : CellType.Of(unit.Dimension))),
            NumberLiteral number => new NumberValue(number.Si),
            TruthLiteral truth => new TruthValue(truth.Value),
            TextLiteral text => new TextValue(text.Value),
            _ => throw new InvalidOperationException("An unknown literal."),
        };
        return Finish(node, value, [], null);
    }

    /// <summary>Checks the value against the cell's own words: type, unit, limits, kept result.</summary>
    private CellResult Finish(Node node, CellValue value, ImmutableArray<Caution> inherited, Frame? frame)
    {
        if (held.WouldHoldTooMuch(node.Result?.Value, value)) return Fail(node, EvaluationFaults.HeldTooMuch(HeldValues.Most));
        if (Declared(node, ref value) is { } fault) return Fail(node, InFile(node, fault));
        if (node.Cell.Format?.Unit is { } unit && SiValue.Of(value) is not null && TypeRules.DimensionOf(value.Type) != unit.Dimension) return Fail(node, EvaluationFaults.WrongUnit(unit.Symbol, value.Type.Phrase));
        if (node.Cell.Content is GivenContent { Within: { } limits } && SiValue.Of(value) is { } si && (si < limits.FromSi || si > limits.ToSi))
            return Fail(node, CallFaults.OutsideLimits(ValueText.Format(value, node.Cell.Format, workbook.Head.Units).Joined, limits.Text));
        bool check = value is TruthValue && node.Cell is { DeclaredType: null, Content: ResultContent };
        bool cautious = frame is { Cautions.Count: > 0 } || node.Expression is { Literals.IsEmpty: false };
        return new CellResult
        {
            Id = node.Id, Cell = node.Cell, Type = value.Type, Outcome = new Computed(value), Cautions = cautious ? [.. (frame?.Cautions ?? []).Select(sentence => new Caution(sentence)), .. UnitNames(node), .. inherited] : inherited, IsCheck = check,
            Kept = KeptText.Compare(value, (node.Cell.Content as ResultContent)?.Kept, node.Cell.Format, workbook.Head.Units, check),
            Bound = node.Shape?.Tree, Referring = node.Expression,
        };
    }

    private Fault? Declared(Node node, ref CellValue value)
    {
        if (node.Cell.DeclaredType is not { } name) return null;
        if (TypeNames.Find(name, binder.Library) is not { } type) return NameFaults.UnknownType(name, Nearest.To(name, TypeNames.Known(binder.Library)), null);
        if (!TypeRules.Fits(value.Type, type)) return EvaluationFaults.WrongType(name, value.Type.Phrase, null);
        if (value is QuantityValue quantity) value = new QuantityValue(quantity.Si, (QuantityType)type);
        return null;
    }

    /// <summary>After a number a symbol is always a unit; where a cell has that name, the reader is told.</summary>
    private IEnumerable<Caution> UnitNames(Node node)
    {
        if (node.Expression is not { } expression) yield break;
        foreach (Token literal in expression.Literals)
            if (literal.Unit is { } unit && names.Find(node.Id.Sheet, unit.Symbol) is not null)
                yield return new Caution($"{unit.Symbol} after a number is the unit, though a cell has that name.");
    }

    private static CellResult Fail(Node node, Fault fault) =>
        new() { Id = node.Id, Cell = node.Cell, Outcome = new Faulted(fault), Bound = node.Shape?.Tree, Referring = node.Expression };

    /// <summary>The place in the expression as a place in the file.</summary>
    private static Fault InFile(Node node, Fault fault)
    {
        int column = node.Cell.Content switch { ResultContent result => result.ExpressionColumn, GivenContent given => given.TextColumn, _ => 1 };
        return fault.Place is { Line: 0 } place && node.Cell.Place.Line > 0 ? fault with { Place = new Place(node.Cell.Place.Line, column + place.Column - 1, place.Length) } : fault;
    }

    /// <summary>How a cell is named in a sentence of another: its name or address, with its sheet where that is another.</summary>
    private string Near(Node from, CellId id)
    {
        string own = graph.Find(id)?.Cell.Name ?? id.Address.ToString();
        return id.Sheet == from.Id.Sheet ? own : $"{id.Sheet}.{own}";
    }
}
