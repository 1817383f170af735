using System.CommandLine;
using Witnessmark.Language.Findings;

namespace Witnessmark.Cli;

/// <summary>
/// What is wrong with the words of a command, in ours. The library takes a misspelt option as the value of a text argument and
/// an option as the value of the one before it; both are refused here.
/// </summary>
internal static class Misuse
{
    public static RefusedException? Of(ParseResult parsed, string[] args)
    {
        var command = parsed.CommandResult.Command;
        if (UnknownOption(command, args) is { } unknown)
            return unknown;
        if (args.Any(a => a is "--help" or "-h" or "-?"))
            return null;
        if (WithoutValue(command, args) is { } option)
            return new RefusedException($"{option.Name} needs a {option.HelpName ?? "value"} behind it.", HelpFor(command));
        if (parsed.Errors.Count == 0)
            return null;
        return args.Length == 0
            ? new RefusedException("witnessmark needs to be told what to do.", HelpFor(command))
            : UnknownWord(parsed, command) ?? Missing(parsed, command) ?? new RefusedException(parsed.Errors[0].Message, HelpFor(command));
    }

    private static RefusedException? UnknownOption(Command command, string[] args)
    {
        HashSet<string> known = [.. command.Options.SelectMany(o => o.Aliases.Append(o.Name)), "--help", "-h", "-?", "--version"];
        var afterEnd = Array.IndexOf(args, "--");
        foreach (var word in afterEnd < 0 ? args : args[..afterEnd])
        {
            var name = word.Split('=', ':')[0];
            if (word.StartsWith('-') && word.Length > 1 && !known.Contains(name) && !char.IsDigit(word[1]))
                return new RefusedException($"{command.Name} has no option {name}.", Hint(name, known, command));
        }
        return null;
    }

    /// <summary>An option whose value is missing: the next word is an option itself, or there is none.</summary>
    private static Option? WithoutValue(Command command, string[] args)
    {
        for (var i = 0; i < args.Length; i++)
            if (command.Options.FirstOrDefault(o => o.Name == args[i]) is { Arity.MaximumNumberOfValues: > 0 } option && option.ValueType != typeof(bool) && (i + 1 == args.Length || args[i + 1].Length == 0 || args[i + 1].StartsWith("--", StringComparison.Ordinal)))
                return option;
        return null;
    }

    private static RefusedException? UnknownWord(ParseResult parsed, Command command)
    {
        if (parsed.UnmatchedTokens.Count == 0)
            return null;
        var word = parsed.UnmatchedTokens[0];
        return command is RootCommand
            ? new RefusedException($"There is no command {word}.", Hint(word, [.. command.Subcommands.Select(c => c.Name)], command))
            : new RefusedException($"{command.Name} does not know what to do with {word}.", HelpFor(command));
    }

    private static RefusedException? Missing(ParseResult parsed, Command command)
    {
        var options = command.Options.Where(o => o.Required && (parsed.GetResult(o)?.Tokens.Count ?? 0) == 0).Select(o => o.Name).ToList();
        if (options.Count > 0)
            return new RefusedException($"{command.Name} also needs {string.Join(", ", options)}.", HelpFor(command));
        var argument = command.Arguments.FirstOrDefault(a => a.Arity.MinimumNumberOfValues > 0 && (parsed.GetResult(a)?.Tokens.Count ?? 0) == 0);
        return argument is null ? null : new RefusedException($"{command.Name} needs {(argument.Name[0] is 'a' or 'e' or 'i' or 'o' or 'u' ? "an" : "a")} {argument.Name}.", HelpFor(command));
    }

    private static string Hint(string word, IReadOnlyCollection<string> known, Command command) =>
        NearMiss.Of(word, known) is { Length: > 2 } near ? $"Did you mean {near}? {HelpFor(command)}" : HelpFor(command);

    private static string HelpFor(Command command) =>
        command is RootCommand ? "witnessmark --help lists the commands." : $"witnessmark {command.Name} --help tells what it takes.";
}
