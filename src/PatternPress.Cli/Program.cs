using PatternPress.Cli;

// A check ends before memory is ever collected: so much is set aside at once rather than piece by piece. What takes more goes on
// as always.
GC.TryStartNoGCRegion(8_000_000);
return new Application(Terminal.OfThisProcess(), Environment.CurrentDirectory).Run(args);
