using System.CommandLine;
using System.Reflection;
using Witnessmark.Cli.Commands;
using Witnessmark.Rendering.Messages;

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
            if (Misuse.Of(parsed, args) is { } refused)
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
        TidyCommand.Make(around),
        BuildCommand.Make(around),
        PrintCommand.Make(around),
        ReleaseCommand.Make(around),
        IssueCommand.Make(around),
        ReceiveCommand.Make(around),
        CopiesCommand.Make(around),
        ReturnedCommand.Make(around),
        SpoiledCommand.Make(around),
        WithdrawCommand.Make(around),
        CompareCommand.Make(around),
        RuleCommand.Make(around),
        SchemaCommand.Make(around),
        NewCommand.Make(around),
    };

    private static int Refuse(Surroundings around, RefusedException refused)
    {
        // file names and names from a workshop are in there
        around.Error.WriteLine(Visible.Text(refused.What));
        around.Error.WriteLine(Visible.Text(refused.Todo));
        return ExitCode.WrongUse;
    }

    private static int Say(TextWriter writer, string line, int code)
    {
        writer.WriteLine(line);
        return code;
    }
}
