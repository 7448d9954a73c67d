using ScrewSheet.Terminal.Output;
using ScrewSheet.Workbooks.Lexing;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Terminal.Grid.Screen;

/// <summary>The author's own functions behind an expression, as they stand in the file.</summary>
internal static class OwnFunctions
{
    /// <summary>Those it calls and those that they call, each once, in the order met.</summary>
    public static IEnumerable<string> In(Workbook workbook, string expression)
    {
        if (workbook.Functions.IsEmpty) return [];
        List<FunctionDefinition> met = [];
        Collect(workbook, expression, met);
        return met.Select(function => PlainText.Of($"function {function.ReturnType} {function.Name}({string.Join(", ", function.Parameters.Select(parameter => $"{parameter.Type} {parameter.Name}"))}) => {function.Body}"));
    }

    private static void Collect(Workbook workbook, string text, List<FunctionDefinition> met)
    {
        foreach (Token token in Lexer.Read(text).Tokens)
        {
            foreach (ComposedPiece piece in token.Pieces) CollectWords(workbook, piece.Hole, met);
            CollectWords(workbook, [token], met);
        }
    }

    private static void CollectWords(Workbook workbook, IEnumerable<Token> tokens, List<FunctionDefinition> met)
    {
        foreach (Token token in tokens.Where(token => token.Kind == TokenKind.Word))
        {
            if (workbook.Functions.FirstOrDefault(own => own.Name == token.Text) is not { } function || met.Contains(function)) continue;
            met.Add(function);
            Collect(workbook, function.Body, met);
        }
    }
}
