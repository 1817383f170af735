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
