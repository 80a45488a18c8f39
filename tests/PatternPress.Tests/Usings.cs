global using NUnit.Framework;
global using Shouldly;
