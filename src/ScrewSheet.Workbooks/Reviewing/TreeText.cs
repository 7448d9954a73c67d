using System.Collections.Immutable;
using System.Globalization;
using ScrewSheet.Quantities.Formatting;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Format;

namespace ScrewSheet.Workbooks.Reviewing;

/// <summary>What stands for the parts of a tree that are found elsewhere.</summary>
/// <param name="Reference">For the cell or run of a slot.</param>
/// <param name="Format">For how the cell of a slot is shown, which matters where a text shows its value.</param>
/// <param name="Library">For a function of the library.</param>
/// <param name="Value">For a ready value of the library.</param>
/// <param name="Own">For a function of the author's.</param>
internal sealed record TreeParts(Func<int, string> Reference, Func<int, string> Format, Func<LibraryFunction, string> Library, Func<BoundLibraryValue, string> Value, Func<OwnFunction, string> Own);

/// <summary>A bound expression as a text: the same for the same meaning, however it is spaced and whatever its cells are called; the same on every machine.</summary>
internal sealed class TreeText(TreeParts parts) : BoundVisitor<string>
{
    /// <summary>The text.</summary>
    public string Of(BoundExpression tree) => tree.Accept(this);

    /// <summary>A type, the same on every machine.</summary>
    public static string Of(CellType type) => type switch
    {
        QuantityType quantity => $"{quantity.Name} {quantity.Dimension}",
        SeriesType series => $"Series<{Of(series.Element)}>",
        _ => type.Name,
    };

#pragma warning disable CS1591 // one member for each kind of node; the kinds are documented where they are
    public override string Visit(BoundNumber node) => Number(node.Value);
    public override string Visit(BoundUnitLiteral node) => $"{Number(node.Value)} {node.Unit.Symbol} {Of(node.Type)}";
    public override string Visit(BoundText node) => CellText.Quote(node.Value);
    public override string Visit(BoundTruth node) => node.Value ? "true" : "false";
    public override string Visit(BoundLibraryValue node) => $"({parts.Value(node)})";
    public override string Visit(BoundOption node) => $"{node.Type.Name}.{node.Value}";
    public override string Visit(BoundReference node) => $"({parts.Reference(node.Slot)} {Of(node.Type)})";
    public override string Visit(BoundParameter node) => $"#{node.Index.ToString(CultureInfo.InvariantCulture)} {Of(node.Type)}";
    public override string Visit(BoundUnary node) => Node(node.Operation.ToString(), node.Type, node.Operand);
    public override string Visit(BoundBinary node) => Node(node.Operation.ToString(), node.Type, node.Left, node.Right);
    public override string Visit(BoundPower node) => Node("Power", node.Type, node.Base, node.Exponent);
    public override string Visit(BoundConditional node) => Node("Conditional", node.Type, node.Test, node.WhenTrue, node.WhenFalse);
    public override string Visit(BoundCall node) => Node($"Call {parts.Library(node.Function)}", node.Type, [.. node.Arguments]);
    public override string Visit(BoundMath node) => Node(node.Function.ToString(), node.Type, [.. node.Arguments]);
    public override string Visit(BoundOwnCall node) => Node($"Own {parts.Own(node.Function)}", node.Type, [.. node.Arguments]);
    public override string Visit(BoundMember node) => Node($"Member {node.Member.Name}", node.Type, node.Target);
    public override string Visit(BoundTextTest node) => Node(node.Operation.ToString(), node.Type, [.. BoundChildren.Of(node)]);
    public override string Visit(BoundWith node) => $"(With {Of(node.Target)} {string.Join(' ', node.Changes.Select(change => $"{change.Member.Name} = {Of(change.Value)}"))})";
    public override string Visit(BoundLambda node) => Node($"Lambda {string.Join(' ', node.Parameters.Select(parameter => Visit(parameter)))}", node.Type, node.Body);
    public override string Visit(BoundSeries node) => Node("Values", node.Type, [.. node.Values]);
    public override string Visit(BoundSeriesOperation node) => Node($"Series {node.Operation}", node.Type, [.. BoundChildren.Of(node)]);
    public override string Visit(BoundSelection node) => Node($"Selection {node.Operation} {(node.Lambda is null ? "" : "by lambda")}", node.Type, [.. BoundChildren.Of(node)]);
    public override string Visit(BoundComposedText node) => $"(Text {string.Join(' ', node.Pieces.Select(Piece))})";

    public override string Visit(BoundSwitch node) =>
        $"(Switch {Of(node.Subject)} {string.Join(' ', node.Arms.Select(arm => $"[{Maybe(arm.Pattern)} when {Maybe(arm.When)}: {Of(arm.Value)}]"))})";
#pragma warning restore CS1591

    private static string Number(double value) => value.ToString("R", CultureInfo.InvariantCulture);

    private string Node(string word, CellType type, params ImmutableArray<BoundExpression> children) => $"({word}: {Of(type)} {string.Join(' ', children.Select(Of))})";

    private string Maybe(BoundExpression? tree) => tree is null ? "_" : Of(tree);

    private string Piece(TextPiece piece)
    {
        if (piece.Value is null) return CellText.Quote(piece.Words);
        string format = piece.Format is { } own ? DisplayFormatText.Write(own) : piece.Value is BoundReference reference ? parts.Format(reference.Slot) : "";
        return $"[{Of(piece.Value)}: {format}]";
    }
}
