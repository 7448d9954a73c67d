using ScrewSheet.Quantities;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Exports.Xlsx.Formulas;

/// <summary>
/// Writes bound trees in the formula language of ECMA-376, Part 1, 18.17: numbers in coherent SI, units checked when the tree was bound and gone here. Every kind of node has a
/// form or says that it has none; the formula has an error where the engine has a fault.
/// </summary>
/// <remarks>For one thread at a time.</remarks>
internal sealed partial class FormulaWriter(FunctionLibrary library, ILibraryMath math, IWorkings workings) : BoundVisitor<FormulaText>
{
    private const int LongestText = 255;

    private readonly Dictionary<BoundExpression, FormulaText> subjects = new(ReferenceEqualityComparer.Instance);
    private ICells cells = null!;
    private Scope scope = null!;

    /// <summary>A tree as a formula.</summary>
    /// <param name="tree">The tree.</param>
    /// <param name="seen">What is in sight.</param>
    /// <param name="through">How cells are read.</param>
    /// <exception cref="NoForm">It has no form.</exception>
    public FormulaText Write(BoundExpression tree, Scope seen, ICells through)
    {
        (scope, cells) = (seen, through);
        subjects.Clear();
        FormulaText value = Emit(tree);
        return Needing(LazyReads.Slots(tree).Select(slot => (seen.References[slot], Type: SlotType(tree, slot))).Where(read => read.Item1.Last is null && IsPlain(read.Type) && cells.CanFail(read.Item1.First)).Select(read => cells.Read(read.Item1.First, read.Type)), value);
    }

    private static CellType SlotType(BoundExpression tree, int slot) => BoundChildren.All(tree).OfType<BoundReference>().First(reference => reference.Slot == slot).Type;

    /// <summary>A value that is there only where all of these are.</summary>
    private static FormulaText Needing(IEnumerable<FormulaText> parts, FormulaText value)
    {
        FormulaText[] missing = [.. parts.Where(part => part.Constant is null).Select(part => FormulaText.Call("ISERROR", part))];
        if (missing.Length == 0) return value;
        return FormulaText.Call("IF", missing.Length == 1 ? missing[0] : FormulaText.Call("OR", missing), FormulaText.Call("NA"), value);
    }

    private FormulaText Emit(BoundExpression tree) => subjects.TryGetValue(tree, out FormulaText known) ? known : tree.Accept(this);

    private FormulaText Within(Scope other, Func<FormulaText> write)
    {
        Scope outer = scope;
        scope = other;
        try
        {
            return write();
        }
        finally
        {
            scope = outer;
        }
    }

    /// <summary>A part that is needed more than once: itself where it is short, else a cell that works it out.</summary>
    private FormulaText Shared(FormulaText part, int uses, string what) => uses < 2 || part.IsShort ? part : workings.Put(part, scope.Cell, what);

    /// <summary>The value of a part that has no form but reads nothing, which no given can change; for any other, why not.</summary>
    private FormulaText Otherwise(BoundExpression node, string reason)
    {
        if (!IsFixed(node)) throw new NoForm(reason);
        return math.Constant(node) switch
        {
            NumberValue number => FormulaText.Number(number.Value),
            QuantityValue quantity => FormulaText.Number(quantity.Si),
            TruthValue truth => Truth(truth.Value),
            TextValue text => Words(text.Value),
            _ => throw new NoForm(reason),
        };
    }

    private static bool IsFixed(BoundExpression tree) => BoundChildren.All(tree).All(node => node is not (BoundReference or BoundParameter));

    private static FormulaText Truth(bool value) => FormulaText.Atom(value ? "TRUE" : "FALSE");

    private static FormulaText Words(string text) => text.Length <= LongestText && VisibleText.Of(text) == text
        ? FormulaText.Words(text)
        : throw new NoForm("a text that formulas cannot hold");

    private static bool IsNumeric(CellType type) => type is NumberType or QuantityType;

#pragma warning disable CS1591 // one member for each kind of node; the kinds are documented where they are
    public override FormulaText Visit(BoundNumber node) => FormulaText.Number(node.Value);

    // as written and brought into coherent SI in sight: 48.3/1000, the very number a cell in mm gives there, and not its nearest decimal
    public override FormulaText Visit(BoundUnitLiteral node)
    {
        CellUnit unit = new(node.Unit);
        double si = node.Unit.ToSi(node.Value);
        return unit.IsPercent ? FormulaText.Number(si) : unit.ToSi(FormulaText.Number(node.Value)) with { Constant = si };
    }

    public override FormulaText Visit(BoundText node) => Words(node.Value);

    public override FormulaText Visit(BoundTruth node) => Truth(node.Value);

    public override FormulaText Visit(BoundOption node) => Words(node.Value.ToString());

    public override FormulaText Visit(BoundLibraryValue node) => Otherwise(node, $"{node.Path} is more than one number");

    public override FormulaText Visit(BoundReference node)
    {
        CellReference reference = scope.References[node.Slot];
        if (reference.Last is not null || !IsPlain(node.Type)) throw new NoForm(node.Type is SeriesType ? "a series is worked with as a whole" : $"{node.Type.Phrase} does not fit a cell");
        return cells.Read(reference.First, node.Type);
    }

    public override FormulaText Visit(BoundParameter node)
    {
        Meaning meaning = node.Index < scope.Parameters.Length ? scope.Parameters[node.Index] : throw new NoForm("a function is handed over");
        return meaning.Tree is null ? meaning.Text : throw new NoForm($"{node.Type.Phrase} does not fit a cell");
    }

    private static bool IsPlain(CellType type) => IsNumeric(type) || type is TruthType or TextType or OptionType;

    public override FormulaText Visit(BoundUnary node)
    {
        FormulaText operand = Emit(node.Operand);
        if (node.Operation == UnaryOperation.Not) return FormulaText.Call("NOT", operand);
        return operand.Constant is { } value ? FormulaText.Number(-value) : new FormulaText("-" + operand.At(Hold.Atom), Hold.Sum);
    }

    public override FormulaText Visit(BoundBinary node)
    {
        FormulaText left = Emit(node.Left);
        switch (node.Operation)
        {
            // the right side counts only where the left one does not decide, which AND and OR of the standard do not know
            case BinaryOperation.And: return FormulaText.Call("IF", left, Emit(node.Right), Truth(false));
            case BinaryOperation.Or: return FormulaText.Call("IF", left, Truth(true), Emit(node.Right));
        }
        FormulaText right = Emit(node.Right);
        return node.Operation switch
        {
            BinaryOperation.Add when node.Type is TextType => FormulaText.Binary(left, "&", right, Hold.Joined),
            BinaryOperation.Add => FormulaText.Binary(left, "+", right, Hold.Sum),
            BinaryOperation.Subtract => FormulaText.Binary(left, "-", right, Hold.Sum),
            BinaryOperation.Multiply => FormulaText.Binary(left, "*", right, Hold.Product),
            BinaryOperation.Divide => FormulaText.Binary(left, "/", right, Hold.Product),
            _ => Comparison(node, left, right),
        };
    }

    private FormulaText Comparison(BoundBinary node, FormulaText left, FormulaText right)
    {
        bool quantities = node.Left.Type is QuantityType;
        return node.Operation switch
        {
            BinaryOperation.LessOrEqual when quantities => AtMost(left, right),
            BinaryOperation.GreaterOrEqual when quantities => AtMost(right, left),
            BinaryOperation.Less => Compared(left, "<", right),
            BinaryOperation.LessOrEqual => Compared(left, "<=", right),
            BinaryOperation.Greater => Compared(left, ">", right),
            BinaryOperation.GreaterOrEqual => Compared(left, ">=", right),
            BinaryOperation.Equal => Same(node.Left.Type, left, right),
            _ => FormulaText.Call("NOT", Same(node.Left.Type, left, right)),
        };
    }

    private static FormulaText Compared(FormulaText left, string sign, FormulaText right) => FormulaText.Binary(left, sign, right, Hold.Comparison);

    // the standard's = takes no notice of upper and lower case, and a bare condition on either side of it is put in brackets by Binary
    private static FormulaText Same(CellType type, FormulaText left, FormulaText right) => type switch
    {
        TextType or OptionType => FormulaText.Call("EXACT", left, right),
        NumberType or TruthType => new FormulaText(left.Above(Hold.Comparison) + "=" + right.Above(Hold.Comparison), Hold.Comparison),
        _ => throw new NoForm($"{type.Phrase} does not fit a cell"),
    };

    /// <summary>At most, with the allowance of the engine.</summary>
    private FormulaText AtMost(FormulaText left, FormulaText right)
    {
        (left, right) = (Shared(left, 2, "left side"), Shared(right, 2, "right side"));
        FormulaText larger = FormulaText.Call("MAX", FormulaText.Call("ABS", left), FormulaText.Call("ABS", right));
        return Compared(FormulaText.Binary(left, "-", right, Hold.Sum), "<=", FormulaText.Binary(FormulaText.Number(SiOrder.Slack), "*", larger, Hold.Product));
    }

    public override FormulaText Visit(BoundConditional node) => IsPlain(node.Type)
        ? FormulaText.Call("IF", Emit(node.Test), Emit(node.WhenTrue), Emit(node.WhenFalse))
        : Otherwise(node, $"{node.Type.Phrase} does not fit a cell");

    public override FormulaText Visit(BoundSwitch node)
    {
        if (!IsPlain(node.Type)) return Otherwise(node, $"{node.Type.Phrase} does not fit a cell");
        subjects[node.Subject] = Shared(Emit(node.Subject), node.Arms.Length, "what is switched on");
        FormulaText chosen = FormulaText.Call("NA");
        foreach (BoundArm arm in node.Arms.Reverse())
        {
            FormulaText? fits = arm.Pattern is null ? null : Emit(arm.Pattern), when = arm.When is null ? null : Emit(arm.When);
            FormulaText? test = fits is { } pattern && when is { } also ? FormulaText.Call("IF", pattern, also, Truth(false)) : fits ?? when;
            FormulaText value = Emit(arm.Value);
            chosen = test is { } known ? FormulaText.Call("IF", known, value, chosen) : value;
        }
        subjects.Remove(node.Subject);
        return chosen;
    }

    public override FormulaText Visit(BoundTextTest node)
    {
        FormulaText text = Emit(node.Target);
        if (node.Operation == TextOperation.Length) return FormulaText.Call("LEN", text);
        FormulaText part = Emit(node.Argument!), length = FormulaText.Call("LEN", part);
        return node.Operation switch
        {
            TextOperation.Contains => FormulaText.Call("ISNUMBER", FormulaText.Call("FIND", part, text)),
            TextOperation.StartsWith => FormulaText.Call("EXACT", FormulaText.Call("LEFT", text, length), part),
            _ => FormulaText.Call("EXACT", FormulaText.Call("RIGHT", text, length), part),
        };
    }

    public override FormulaText Visit(BoundComposedText node)
    {
        if (node.Pieces.Any(piece => piece.Value is not null and not { Type: TextType })) return Otherwise(node, "figures are rounded into a text");
        return node.Pieces.Select(piece => piece.Value is null ? Words(piece.Words) : Emit(piece.Value)).Aggregate((a, b) => FormulaText.Binary(a, "&", b, Hold.Joined));
    }

    public override FormulaText Visit(BoundSeriesOperation node)
    {
        if (node.Series is not BoundReference { Slot: var slot } || scope.References[slot].Last is null) return Otherwise(node, "a series is worked with as a whole");
        if (node.Operation is not (SeriesOperation.Sum or SeriesOperation.Count)) throw new NoForm("every value of a series is looked at");
        return node.Operation == SeriesOperation.Count ? cells.Count(scope.References[slot]) : cells.Sum(scope.References[slot]);
    }

    public override FormulaText Visit(BoundWith node) => Otherwise(node, $"{node.Type.Phrase} does not fit a cell");

    public override FormulaText Visit(BoundLambda node) => throw new NoForm("a function is handed over");

    public override FormulaText Visit(BoundSeries node) => throw new NoForm("a series does not fit a cell");

    public override FormulaText Visit(BoundSelection node) => throw new NoForm("rows of a series are picked");
#pragma warning restore CS1591
}
