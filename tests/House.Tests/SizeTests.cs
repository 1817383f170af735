using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Witnessmark.House.Tests;

/// <summary>Files up to 200 lines, methods up to 30, without exception.</summary>
public sealed class SizeTests
{
    private const int LongestFile = 200;
    private const int LongestMethod = 30;

    [Fact]
    public void A_file_can_be_read_at_one_sitting() =>
        Assert.Empty(House.Files("src", ".cs").Where(f => Lines(House.Read(f)) > LongestFile));

    [Fact]
    public void A_method_can_be_seen_at_one_glance() =>
        Assert.Empty(House.Files("src", ".cs").SelectMany(TooLong));

    [Fact]
    public void The_measure_sees_a_long_method()
    {
        var body = string.Join('\n', Enumerable.Repeat("        x++;", LongestMethod));
        var found = TooLong("a.cs", $"class A\n{{\n    void Long(int x)\n    {{\n{body}\n    }}\n\n    int Short() => 1;\n}}\n");

        Assert.Equal(["a.cs: Long"], found);
    }

    private static IEnumerable<string> TooLong(string path) => TooLong(path, House.Read(path));

    private static IEnumerable<string> TooLong(string path, string text)
    {
        var tree = CSharpSyntaxTree.ParseText(text);
        return tree.GetRoot().DescendantNodes()
            .Where(n => n is BaseMethodDeclarationSyntax or LocalFunctionStatementSyntax or AccessorDeclarationSyntax)
            .Where(n => Height(tree, n) > LongestMethod)
            .Select(n => $"{path}: {Name(n)}");
    }

    private static int Height(SyntaxTree tree, SyntaxNode node)
    {
        var span = tree.GetLineSpan(node.Span);
        return span.EndLinePosition.Line - span.StartLinePosition.Line + 1;
    }

    private static string Name(SyntaxNode node) => node switch
    {
        MethodDeclarationSyntax method => method.Identifier.Text,
        LocalFunctionStatementSyntax function => function.Identifier.Text,
        ConstructorDeclarationSyntax constructor => constructor.Identifier.Text,
        _ => node.Kind().ToString(),
    };

    private static int Lines(string text) => text.TrimEnd('\n').Split('\n').Length;
}
