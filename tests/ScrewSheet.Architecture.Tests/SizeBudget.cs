using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace ScrewSheet.Architecture.Tests;

/// <summary>Files and methods stay small enough to be read at once.</summary>
public sealed class SizeBudget
{
    private const int MostLinesOfAFile = 400;
    private const int MostLinesOfAMethod = 40;

    [Fact]
    public void FilesHaveAtMost400Lines() => Rule.Holds($"a file has more than {MostLinesOfAFile} lines",
        from file in Repository.Sources where file.Text.Split('\n').Length - 1 > MostLinesOfAFile select file.Path, Allowances.LongFiles);

    [Fact]
    public void MethodsHaveAtMost40Lines() => Rule.Holds($"a method has more than {MostLinesOfAMethod} lines without its documentation and attributes",
        from file in Repository.Sources
        from node in file.Syntax.DescendantNodes()
        let name = NameOf(node)
        where name is not null && Lines(node) > MostLinesOfAMethod
        select $"{file.Path}: {name}", Allowances.LongMethods);

    private static string? NameOf(SyntaxNode node) => node switch
    {
        MethodDeclarationSyntax method => method.Identifier.Text,
        ConstructorDeclarationSyntax constructor => constructor.Identifier.Text,
        OperatorDeclarationSyntax op => "operator " + op.OperatorToken.Text,
        ConversionOperatorDeclarationSyntax => "conversion",
        LocalFunctionStatementSyntax local => local.Identifier.Text,
        AccessorDeclarationSyntax accessor => accessor.Keyword.Text,
        _ => null,
    };

    private static int Lines(SyntaxNode node)
    {
        SyntaxToken first = node.ChildNodesAndTokens().SkipWhile(child => child.AsNode() is AttributeListSyntax).Select(child => child.IsToken ? child.AsToken() : child.AsNode()!.GetFirstToken()).First();
        return node.SyntaxTree.GetLineSpan(node.GetLastToken().Span).EndLinePosition.Line - node.SyntaxTree.GetLineSpan(first.Span).StartLinePosition.Line + 1;
    }
}
