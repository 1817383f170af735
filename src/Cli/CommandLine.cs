using System.CommandLine;
using System.Reflection;
using Witnessmark.Cli.Commands;
using Witnessmark.Language.Findings;

namespace Witnessmark.Cli;

/// <summary>The command line as one page: which commands there are, and what is said when the words are wrong.</summary>
public static class CommandLine
{
    public static int Run(string[] args, Surroundings around)
    {
        try
        {
            var root = Root(around);
            if (args is ["--version"])
                return Say(around.Out, $"witnessmark {Version}", ExitCode.Clean);
            var parsed = root.Parse(args, new ParserConfiguration { ResponseFileTokenReplacer = null });
            if (Misuse(parsed, args) is { } refused)
                return Refuse(around, refused);
            return parsed.Invoke(new InvocationConfiguration { Output = around.Out, Error = around.Error, EnableDefaultExceptionHandler = false });
        }
        catch (RefusedException refused)
        {
            return Refuse(around, refused);
        }
        catch (Exception fault) when (fault is not OutOfMemoryException)
        {
            around.Error.WriteLine("witnessmark itself has failed; nothing was written.");
            around.Error.WriteLine("Please report this with the command you gave:");
            around.Error.WriteLine(fault);
            return ExitCode.InternalFault;
        }
    }

    public static string Version =>
        typeof(CommandLine).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion.Split('+')[0] ?? "unknown";

    private static RootCommand Root(Surroundings around) => new(
        "Procedures for people who repair heavy machines: written once, proved, printed, signed, received.")
    {
        CheckCommand.Make(around),
        BuildCommand.Make(around),
        IssueCommand.Make(around),
        ReceiveCommand.Make(around),
        RuleCommand.Make(around),
        NewCommand.Make(around),
    };

    /// <summary>What is wrong with the words, in ours. The library takes a misspelt option as the value of a text argument: that is refused too.</summary>
    private static RefusedException? Misuse(ParseResult parsed, string[] args)
    {
        var asksForHelp = args.Any(a => a is "--help" or "-h" or "-?");
        var command = parsed.CommandResult.Command;
        var options = Known(command);
        var afterEnd = Array.IndexOf(args, "--");
        foreach (var word in afterEnd < 0 ? args : args[..afterEnd])
        {
            var name = word.Split('=', ':')[0];
            if (word.StartsWith('-') && word.Length > 1 && !options.Contains(name) && !char.IsDigit(word[1]))
                return new RefusedException($"{command.Name} has no option {name}.", Hint(name, options, command));
        }
        if (asksForHelp)
            return null;
        if (WithoutValue(command, args) is { } option)
            return new RefusedException($"{option.Name} needs a {option.HelpName ?? "value"} behind it.", HelpFor(command));
        if (parsed.Errors.Count == 0)
            return null;
        if (args.Length == 0)
            return new RefusedException("witnessmark needs to be told what to do.", HelpFor(command));
        if (parsed.UnmatchedTokens.Count > 0 && command is RootCommand)
            return new RefusedException($"There is no command {parsed.UnmatchedTokens[0]}.", Hint(parsed.UnmatchedTokens[0], [.. command.Subcommands.Select(c => c.Name)], command));
        if (parsed.UnmatchedTokens.Count > 0)
            return new RefusedException($"{command.Name} does not know what to do with {parsed.UnmatchedTokens[0]}.", HelpFor(command));
        var missing = command.Options.Where(o => o.Required && (parsed.GetResult(o)?.Tokens.Count ?? 0) == 0).Select(o => o.Name).ToList();
        if (missing.Count > 0)
            return new RefusedException($"{command.Name} also needs {string.Join(", ", missing)}.", HelpFor(command));
        var unnamed = command.Arguments.FirstOrDefault(a => a.Arity.MinimumNumberOfValues > 0 && parsed.GetResult(a) is null or { Tokens.Count: 0 });
        if (unnamed is { Arity.MinimumNumberOfValues: > 0 })
            return new RefusedException($"{command.Name} needs a {unnamed.Name}.", HelpFor(command));
        return new RefusedException(parsed.Errors[0].Message, HelpFor(command));
    }

    /// <summary>An option whose value is missing: the next word is an option itself, or there is none.</summary>
    private static Option? WithoutValue(Command command, string[] args)
    {
        for (var i = 0; i < args.Length; i++)
            if (command.Options.FirstOrDefault(o => o.Name == args[i]) is { Arity.MaximumNumberOfValues: > 0 } option && (i + 1 == args.Length || args[i + 1].StartsWith("--", StringComparison.Ordinal)))
                return option;
        return null;
    }

    private static HashSet<string> Known(Command command) =>
        [.. command.Options.SelectMany(o => o.Aliases.Append(o.Name)), "--help", "-h", "-?", "--version"];

    private static string Hint(string word, IReadOnlyCollection<string> known, Command command) =>
        NearMiss.Of(word, known) is { } near ? $"Did you mean {near}? {HelpFor(command)}" : HelpFor(command);

    private static string HelpFor(Command command) =>
        command is RootCommand ? "witnessmark --help lists the commands." : $"witnessmark {command.Name} --help tells what it takes.";

    private static int Refuse(Surroundings around, RefusedException refused)
    {
        around.Error.WriteLine(refused.What);
        around.Error.WriteLine(refused.Todo);
        return ExitCode.WrongUse;
    }

    private static int Say(TextWriter writer, string line, int code)
    {
        writer.WriteLine(line);
        return code;
    }
}
