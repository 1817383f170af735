using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Witnessmark.House.Tests;

/// <summary>Sources as the compiler sees them.</summary>
internal static class Code
{
    public static SyntaxNode Root(string path) => CSharpSyntaxTree.ParseText(House.Read(path)).GetRoot();

    public static IEnumerable<string> Usings(string path) =>
        Root(path).DescendantNodes().OfType<UsingDirectiveSyntax>().Select(u => u.NamespaceOrType.ToString());

    public static IEnumerable<SyntaxTrivia> Directives(string path) => Root(path).DescendantTrivia().Where(t => t.IsDirective);
}
