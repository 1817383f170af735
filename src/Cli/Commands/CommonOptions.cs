using System.CommandLine;

namespace Witnessmark.Cli.Commands;

/// <summary>Arguments and options that several commands take.</summary>
internal static class CommonOptions
{
    public static Argument<string?> Workshop() => new("workshop")
    {
        Description = "Folder with workshop.yaml, a file in it, or a folder in which workshops stand side by side. Here, or procedures below here, when left out.",
        Arity = ArgumentArity.ZeroOrOne,
    };

    public static Option<string?> In() => new("--in")
    {
        Description = "Folder with workshop.yaml. Here, or procedures below here, when left out.",
        HelpName = "folder",
    };

    public static Option<string> Out(string what, string standard) => new("--out")
    {
        Description = $"{what} {standard} when left out.",
        HelpName = "folder",
        DefaultValueFactory = _ => standard,
    };

    /// <param name="what">What is not done then: <c>put in order</c>.</param>
    public static Option<bool> DryRun(string what) => new("--dry-run")
    {
        Description = $"Write nothing: only tell what would be {what}. Exit code 1 when anything would, so that a build can ask.",
    };

    public static Option<string> Report()
    {
        var option = new Option<string>("--report")
        {
            Description = "How findings are told: long, short (a line each) or json.",
            HelpName = "long|short|json",
            DefaultValueFactory = _ => "long",
        };
        option.Validators.Add(result =>
        {
            if (result.Tokens is [{ Value: not ("long" or "short" or "json") } token])
                result.AddError($"--report does not know {token.Value}; it takes long, short or json.");
        });
        return option;
    }
}
