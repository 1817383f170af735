using System.CommandLine;
using Witnessmark.Compiler;
using Witnessmark.Language.Findings;

namespace Witnessmark.Cli.Commands;

/// <summary><c>rule</c>: the page of a rule, or the list of all.</summary>
internal static class RuleCommand
{
    public static Command Make(Surroundings around)
    {
        var name = new Argument<string?>("name") { Description = "The rule's name as a finding gives it. All rules when left out.", Arity = ArgumentArity.ZeroOrOne };
        var command = new Command("rule", "Tell what a rule checks, why it matters, and what is wrong and right.") { name };
        command.SetAction(parsed => Run(parsed.GetValue(name), around));
        return command;
    }

    private static int Run(string? name, Surroundings around)
    {
        if (name is null)
        {
            foreach (var topic in Catalog.Rules.GroupBy(r => r.Topic))
            {
                around.Out.WriteLine(topic.Key);
                foreach (var rule in topic)
                    around.Out.WriteLine($"  {rule.Name,-34} {Catalog.Summary(rule.Name)}");
            }
            return ExitCode.Clean;
        }
        if (Catalog.Page(name) is not { } page)
        {
            var near = NearMiss.Of(name, Catalog.Rules.Select(r => r.Name));
            throw new RefusedException($"There is no rule {name}.", near is null ? "witnessmark rule lists them all." : $"Did you mean {near}? witnessmark rule lists them all.");
        }
        around.Out.Write(page.EndsWith('\n') ? page : page + "\n");
        return ExitCode.Clean;
    }
}
