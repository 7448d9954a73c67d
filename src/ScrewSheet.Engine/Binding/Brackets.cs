using System.Collections.Immutable;
using ScrewSheet.Engine.Gate;
using ScrewSheet.Workbooks.Lexing;

namespace ScrewSheet.Engine.Binding;

/// <summary>Which bracket a token stands in, and which lambda names are known there.</summary>
internal sealed class Brackets
{
    private readonly Stack<(BracketKind Kind, int Lambdas)> open = new();
    private readonly List<(string Name, int Depth)> lambdas = [];

    private enum BracketKind { Group, Call, Switch, With }

    /// <summary>True directly in the brackets of a call.</summary>
    public bool InCall => open.TryPeek(out var top) && top.Kind == BracketKind.Call;

    /// <summary>True directly in the braces of a <c>switch</c>.</summary>
    public bool InSwitch => open.TryPeek(out var top) && top.Kind == BracketKind.Switch;

    /// <summary>True directly in the braces of a <c>with</c>.</summary>
    public bool InWith => open.TryPeek(out var top) && top.Kind == BracketKind.With;

    /// <summary>Makes a lambda's name known from here to the end of its argument.</summary>
    public void Declare(string name) => lambdas.Add((name, open.Count));

    /// <summary>True for the name of a lambda's value.</summary>
    public bool IsLambda(string name) => lambdas.Exists(lambda => lambda.Name == name);

    /// <summary>The same names, for the hole of a composed text.</summary>
    public Brackets Inner()
    {
        Brackets inner = new();
        inner.lambdas.AddRange(lambdas.Select(lambda => (lambda.Name, -1)));
        return inner;
    }

    /// <summary>Notes a bracket or comma.</summary>
    public void Pass(ImmutableArray<Token> tokens, int i)
    {
        switch (tokens[i].Text)
        {
            case "(":
                bool call = i > 0 && tokens[i - 1].Kind == TokenKind.Word && !RefusedWords.IsOwnOperator(tokens[i - 1]);
                open.Push((call ? BracketKind.Call : BracketKind.Group, lambdas.Count));
                break;
            case "{":
                open.Push((tokens[i - 1].IsWord("switch") ? BracketKind.Switch : BracketKind.With, lambdas.Count));
                break;
            case ")" or "}":
                Forget(open.Count);
                open.Pop();
                break;
            case ",":
                Forget(open.Count);
                break;
        }
    }

    private void Forget(int depth) => lambdas.RemoveAll(lambda => lambda.Depth >= depth && depth > 0);
}
