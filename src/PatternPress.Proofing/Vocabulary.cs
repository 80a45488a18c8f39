// The words in which the tables are written. Of the planner's rooms the proof knows these names and nothing else: no
// arithmetic comes in by them. A test holds the project to this list.
global using BackingSeams = PatternPress.Quilting.Finishing.BackingSeams;
global using BattingPackage = PatternPress.Quilting.Finishing.BattingPackage;
global using BlockPart = PatternPress.Quilting.Cutting.BlockPart;
global using BlockUse = PatternPress.Quilting.Cutting.BlockUse;
global using BorderPart = PatternPress.Quilting.Cutting.BorderPart;
global using CutPurpose = PatternPress.Quilting.Cutting.CutPurpose;
global using FabricUse = PatternPress.Quilting.Cutting.FabricUse;
global using Notch = PatternPress.Quilting.Techniques.Notch;
global using Overlay = PatternPress.Quilting.Techniques.Overlay;
global using PieceCut = PatternPress.Quilting.Techniques.PieceCut;
global using PieceTemplate = PatternPress.Quilting.Techniques.PieceTemplate;
global using RolePatch = PatternPress.Quilting.Techniques.RolePatch;
