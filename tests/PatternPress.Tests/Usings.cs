global using NUnit.Framework;
global using Shouldly;

// Fixtures share no state but what is made once under a lock: they run side by side.
[assembly: Parallelizable(ParallelScope.Fixtures)]
