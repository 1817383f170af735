using Witnessmark.Cli;

return CommandLine.Run(args, Surroundings.OfThisProcess());
