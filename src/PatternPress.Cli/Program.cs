using PatternPress.Cli;

return new Application(Terminal.OfThisProcess(), Environment.CurrentDirectory).Run(args);
