using System.Collections.Immutable;

namespace ScrewSheet.Exports.Steps;

/// <summary>Breaks notation that is too wide at its sums and products, at the commas of its arguments and behind its brackets; a fraction, a root or a power is never broken.</summary>
internal static class Pieces
{
    /// <summary>The chain <c>symbol = formula = numbers = result</c> in pieces that stand side by side; none is wider than asked for unless it cannot be broken.</summary>
    /// <param name="symbol">What stands first, or null.</param>
    /// <param name="links">What follows it; null for what is left out.</param>
    /// <param name="width">In characters.</param>
    /// <param name="sign">What stands between; a colon where truths are spoken of.</param>
    public static ImmutableArray<Notation> OfChain(Notation? symbol, IEnumerable<Notation?> links, int width, string sign = "=")
    {
        var pieces = ImmutableArray.CreateBuilder<Notation>();
        if (symbol is not null) pieces.Add(symbol);
        foreach (Notation? link in links)
        {
            if (link is null) continue;
            ImmutableArray<Notation> parts = Of(link, width);
            if (pieces.Count > 0 && sign == ":") pieces[^1] = new RunNotation([pieces[^1], new SignNotation(sign)]);
            pieces.AddRange(pieces.Count == 0 || sign == ":" ? parts : Led(parts, new SignNotation(sign)));
        }
        return pieces.ToImmutable();
    }

    /// <summary>The pieces of one notation.</summary>
    public static ImmutableArray<Notation> Of(Notation notation, int width)
    {
        if (LinearText.Width(notation) <= width) return [notation];
        return notation switch
        {
            OperationNotation operation => [.. Of(operation.Left, width), .. Led(Of(operation.Right, width), new SignNotation(operation.Sign))],
            BracketNotation { Open: "|" } => [notation],
            BracketNotation { Open: "" } bracket => Of(bracket.Inner, width),
            BracketNotation bracket => Between(new SignNotation(bracket.Open), Of(bracket.Inner, width), new SignNotation(bracket.Close)),
            CallNotation call => Call(call, width),
            MemberNotation member => Followed(Of(member.Target, width), new WordNotation("." + member.Member)),
            SignedNotation signed => Led(Of(signed.Operand, width), new SignNotation(signed.Sign)),
            RunNotation run => Run(run, width),
            _ => [notation],
        };
    }

    // a comma stays with what it follows
    private static ImmutableArray<Notation> Run(RunNotation run, int width)
    {
        ImmutableArray<Notation> pieces = [];
        foreach (Notation part in run.Parts) pieces = part is SignNotation { Sign: "," } && !pieces.IsEmpty ? Followed(pieces, part) : pieces.AddRange(Of(part, width));
        return pieces;
    }

    private static ImmutableArray<Notation> Call(CallNotation call, int width)
    {
        if (call.Arguments.IsEmpty) return [call];
        IEnumerable<Notation> arguments = call.Arguments.SelectMany((argument, i) => i == call.Arguments.Length - 1 ? Of(argument, width) : Followed(Of(argument, width), new SignNotation(",")));
        return Between(new RunNotation([call.Function, new SignNotation("(")]), [.. arguments], new SignNotation(")"));
    }

    private static ImmutableArray<Notation> Between(Notation open, ImmutableArray<Notation> inner, Notation close) => Followed(Led(inner, open), close);

    private static ImmutableArray<Notation> Led(ImmutableArray<Notation> pieces, Notation lead) => pieces.SetItem(0, new RunNotation([lead, pieces[0]]));

    private static ImmutableArray<Notation> Followed(ImmutableArray<Notation> pieces, Notation last) => pieces.SetItem(pieces.Length - 1, new RunNotation([pieces[^1], last]));
}
