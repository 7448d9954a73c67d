using ScrewSheet.Workbooks.Expressions;

namespace ScrewSheet.Workbooks.Reviewing;

/// <summary>The author's functions as texts without their names and those of their parameters.</summary>
internal sealed class OwnFunctionText
{
    private readonly Dictionary<OwnFunction, string> known = [];

    /// <summary>A function, with all it calls.</summary>
    public string Of(OwnFunction function, LibraryText library)
    {
        if (known.TryGetValue(function, out string? text)) return text;
        known.Add(function, "circle");
        TreeParts parts = new(_ => "", _ => "", library.Of, library.Of, called => Of(called, library));
        string body = function.Body is null ? "no body" : new TreeText(parts).Of(function.Body);
        string parameters = string.Join(' ', function.Parameters.Select(parameter => TreeText.Of(parameter.Type)));
        return known[function] = ReviewHash.Sha($"{TreeText.Of(function.ReturnType)}({parameters}) => {body}");
    }

    /// <summary>Adds every function of the author's and everything of the library that a tree depends on.</summary>
    public void Collect(BoundExpression tree, LibraryText library, HashSet<string> functions, HashSet<string> declared)
    {
        Stack<BoundExpression> trees = new([tree]);
        while (trees.TryPop(out BoundExpression? next))
        {
            foreach (BoundExpression node in BoundChildren.All(next))
            {
                if (node is BoundCall call) declared.Add(library.Of(call.Function));
                else if (node is BoundLibraryValue value) declared.Add(library.Of(value));
                else if (node is BoundOwnCall { Function: var function } && functions.Add(Of(function, library)) && function.Body is { } body) trees.Push(body);
            }
        }
    }
}
