using System.Collections.Immutable;
using ScrewSheet.Workbooks.Lexing;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Editing;

/// <summary>A place of an expression's text that names a cell: <c>B7</c>, <c>peak</c>, <c>Fall.peak</c>.</summary>
/// <param name="Start">Where it begins, from 0; the sheet's name belongs to it.</param>
/// <param name="Length">How long it is.</param>
/// <param name="Sheet">The sheet written before it, or null.</param>
/// <param name="Name">The name or address.</param>
/// <param name="Corner">Which corner of <c>Series(…, …)</c> it is: 1 or 2; 0 for a cell by itself.</param>
public readonly record struct WrittenReference(int Start, int Length, string? Sheet, string Name, int Corner = 0)
{
    /// <summary>The address, where it is written as one.</summary>
    public CellAddress? Address => CellAddress.TryParse(Name, out CellAddress address) ? address : null;

    /// <summary>The cell it means when it stands on a sheet; null where it names none.</summary>
    public CellId? Target(Workbook workbook, string from)
    {
        ArgumentNullException.ThrowIfNull(workbook);
        string sheet = Sheet ?? from;
        if (Address is { } address) return new CellId(sheet, address);
        return workbook.Find(sheet)?.Names.TryGetValue(Name, out CellAddress named) == true ? new CellId(sheet, named) : null;
    }
}

/// <summary>Finds the references of an expression, as its author wrote them.</summary>
public static class WrittenReferences
{
    private static readonly string[] OwnWords = ["true", "false", "switch", "with", "when", "_", "Series", "Math"];

    /// <summary>The references of an expression, in order; none where its text cannot be read.</summary>
    /// <param name="expression">The text.</param>
    /// <param name="isSheet">True for the name of a sheet.</param>
    public static ImmutableArray<WrittenReference> In(string expression, Func<string, bool> isSheet)
    {
        ArgumentNullException.ThrowIfNull(expression);
        ArgumentNullException.ThrowIfNull(isSheet);
        LexResult read = Lexer.Read(expression);
        if (read.Fault is not null) return [];
        var found = ImmutableArray.CreateBuilder<WrittenReference>();
        Collect(read.Tokens, isSheet, [], found);
        return found.ToImmutable();
    }

    /// <summary>The text with each reference written as <paramref name="write"/> says, or left where that gives null.</summary>
    public static string Rewrite(string expression, Func<string, bool> isSheet, Func<WrittenReference, string?> write)
    {
        ArgumentNullException.ThrowIfNull(write);
        string text = expression;
        foreach (WrittenReference reference in In(expression, isSheet).Reverse())
        {
            if (write(reference) is { } instead) text = text[..reference.Start] + instead + text[(reference.Start + reference.Length)..];
        }
        return text;
    }

    private static void Collect(ImmutableArray<Token> tokens, Func<string, bool> isSheet, ImmutableHashSet<string> outer, ImmutableArray<WrittenReference>.Builder found)
    {
        ImmutableHashSet<string> lambdas = outer.Union(tokens.Where((token, i) => token.Kind == TokenKind.Word && Is(tokens, i + 1, "=>")).Select(token => token.Text));
        for (int i = 0; i < tokens.Length; i++)
        {
            foreach (ComposedPiece piece in tokens[i].Pieces) Collect(piece.Hole, isSheet, lambdas, found);
            if (tokens[i].Kind != TokenKind.Word || Is(tokens, i - 1, ".") || lambdas.Contains(tokens[i].Text)) continue;
            bool onSheet = isSheet(tokens[i].Text) && Is(tokens, i + 1, ".") && i + 2 < tokens.Length && tokens[i + 2].Kind == TokenKind.Word;
            int last = onSheet ? i + 2 : i;
            if (!onSheet && (OwnWords.Contains(tokens[i].Text) || IsLabel(tokens, i))) continue;
            if (Is(tokens, last + 1, "(")) continue;
            found.Add(new WrittenReference(tokens[i].Start, tokens[last].End - tokens[i].Start, onSheet ? tokens[i].Text : null, tokens[last].Text, CornerOf(tokens, i, last)));
        }
    }

    private static bool Is(ImmutableArray<Token> tokens, int i, string sign) => i >= 0 && i < tokens.Length && tokens[i].Is(sign);

    /// <summary>An argument's name before a colon, or a member's before an equals sign.</summary>
    private static bool IsLabel(ImmutableArray<Token> tokens, int i) =>
        (Is(tokens, i - 1, "(") || Is(tokens, i - 1, ",") || Is(tokens, i - 1, "{")) && (Is(tokens, i + 1, ":") || Is(tokens, i + 1, "="));

    private static int CornerOf(ImmutableArray<Token> tokens, int first, int last)
    {
        if (Is(tokens, first - 1, "(") && first >= 2 && tokens[first - 2].IsWord("Series") && Is(tokens, last + 1, ",")) return 1;
        if (!Is(tokens, first - 1, ",") || !Is(tokens, last + 1, ")")) return 0;
        int open = first - 2;
        while (open >= 0 && (tokens[open].Kind == TokenKind.Word || tokens[open].Is("."))) open--;
        return open >= 1 && tokens[open].Is("(") && tokens[open - 1].IsWord("Series") ? 2 : 0;
    }
}
