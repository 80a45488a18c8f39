using System.Collections.Immutable;
using PatternPress.Source;

namespace PatternPress.Quilting.Rules;

/// <summary>
/// Every rule by code. A table that can be searched by eye; nothing is scanned for. Codes: PP01 reading YAML, PP02
/// names, maps and arithmetic of the quilt, PP03 cutting and sewing, PP04 words, colors and figures, PP05 page layout,
/// PP06 editions, PP09 internal. A released code is never given to another fault (RELEASED.txt).
/// </summary>
public static class RuleCatalog
{
    /// <summary>The rules that are run on the computed result, by code.</summary>
    public static ImmutableArray<CheckingRule> Checking { get; } =
    [
        new PP0231_UnusedFabric(),
        new PP0232_UnusedColoring(),
        new PP0233_UnusedBlock(),
        new PP0234_FabricsOfOneName(),
        new PP0235_PatchesThatDoNotTile(),
        new PP0236_SeamsOfUnequalLength(),
        new PP0237_BorderThatDoesNotClose(),
        new PP0238_BiasOnOuterEdge(),
        new PP0239_RepeatedNeighbors(),
        new PP0240_BordersThatMerge(),
        new PP0241_SizesAlike(),
        new PP0246_CornersRoundedTooFar(),
        new PP0247_CurveOnStraightGrain(),
        new PP0250_MirrorImages(),
        new PP0255_ShapesThatDiffer(),
        new PP0281_SetInSeams(),
        new PP0282_ManySeamsMeet(),
        new PP0283_NestedSeamsCollide(),
        new PP0284_PartialSeams(),
        new PP0301_UnitWithoutMethod(),
        new PP0302_MethodThatDoesNotFit(),
        new PP0303_PieceWiderThanFabric(),
        new PP0304_PieceWithoutSize(),
        new PP0305_TooManyPieces(),
        new PP0306_BackingWithoutPanels(),
        new PP0307_CutBetweenRulerMarks(),
        new PP0308_CountsThatDoNotComeOut(),
        new PP0309_LeftoverUnits(),
        new PP0310_UnusedYardage(),
        new PP0311_ShortOverhang(),
        new PP0312_BackingOfManyPanels(),
        new PP0313_NarrowBinding(),
        new PP0314_SlenderPieces(),
        new PP0315_VeryManyPatches(),
        new PP0316_DirectionalPrintTurned(),
        new PP0317_BattingBeyondPackages(),
        new PP0318_BindingTooWideToJoin(),
        new PP0319_PieceLargerThanPanel(),
        new PP0320_PromiseNotKept(),
        new PP0401_TypedNumber(),
        new PP0402_ContradictingNumber(),
        new PP0403_MissingIntroduction(),
        new PP0404_MissingSkillLevel(),
        new PP0405_SizeSmallerThanItsBed(),
        new PP0406_SizeBeyondAnyBed(),
        new PP0407_InfantSize(),
        new PP0421_IndistinctNeighbors(),
        new PP0422_IndistinctInGrey(),
        new PP0423_IndistinctToTheColorBlind(),
    ];

    /// <summary>The rules met while reading. Built only when somebody asks for the whole catalogue.</summary>
    public static ImmutableArray<ReadingRule> Reading =>
        [
            PP0201_UnevenMapRows.Instance,
            PP0202_LetterWithoutUnit.Instance,
            PP0203_UnitNotInMap.Instance,
            PP0204_RegionNotRectangular.Instance,
            PP0205_UnknownUnit.Instance,
            PP0206_UnitWordsWithoutMeaning.Instance,
            PP0207_UnitDoesNotFitRegion.Instance,
            PP0208_UnknownPart.Instance,
            PP0209_ColoringOfUnknownBlock.Instance,
            PP0210_UnboundPart.Instance,
            PP0211_UnknownPartInColoring.Instance,
            PP0212_UnknownFabric.Instance,
            PP0213_UnknownColoring.Instance,
            PP0214_MapDoesNotMatchSize.Instance,
            PP0215_NotAMeasure.Instance,
            PP0216_MeasureOutOfRange.Instance,
            PP0218_NotADate.Instance,
            PP0219_NotACount.Instance,
            PP0220_TooManyBlocks.Instance,
            PP0221_UnknownWord.Instance,
            PP0222_UnsuitableMethod.Instance,
            PP0223_UnequalBlocks.Instance,
            PP0224_ScatterTooTight.Instance,
            PP0225_GridDoesNotMatchMap.Instance,
            PP0226_UnusedPart.Instance,
            PP0227_SizelessBlock.Instance,
            PP0228_LookalikeKeys.Instance,
            PP0229_RepeatedName.Instance,
            PP0230_WrongNumberOfEntries.Instance,
            PP0242_NoTriangles.Instance,
            PP0243_KeyOfAnotherSetting.Instance,
            PP0244_OblongBlockOnPoint.Instance,
            PP0245_FloatWithSashing.Instance,
            PP0251_BlocksDoNotComeOut.Instance,
            PP0252_UnequalBorderBlocks.Instance,
            PP0253_BorderKeysThatDisagree.Instance,
            PP0256_NoPatch.Instance,
            PP0257_BlockAmongPatches.Instance,
            PP0258_StripBetweenMarks.Instance,
            PP0259_RowTooShort.Instance,
            PP0260_NoGrid.Instance,
            PP0261_BlockDoesNotFitCells.Instance,
            PP0262_NoSewingOrder.Instance,
            PP0263_NoStrips.Instance,
            PP0264_NoEnds.Instance,
            PP0265_HalfBlockThatDoesNotFit.Instance,
            PP0266_BlocksThatOverlap.Instance,
            PP0267_GapBetweenBlocks.Instance,
            PP0268_NoPlaces.Instance,
            PP0269_PlaceOfAnotherShape.Instance,
            PP0270_UnknownSection.Instance,
            PP0271_UnreadableSection.Instance,
            PP0272_UnknownApplique.Instance,
            PP0273_UnreadablePath.Instance,
            PP0275_UnusableInnerBlock.Instance,
            PP0276_NoFill.Instance,
            PP0424_MissingImage.Instance,
            PP0425_ImageOutsideFolder.Instance,
            PP0426_UnusableImage.Instance,
            PP0441_UnreadableFigure.Instance,
            PP0442_UnknownFigure.Instance,
            PP0443_UnknownFabricQuoted.Instance,
            PP0444_UnknownSizeQuoted.Instance,
            PP0445_UnknownThingQuoted.Instance,
            PP0446_WrongValuesQuoted.Instance,
            PP0447_ProgramInText.Instance,
            PP0448_OverlongText.Instance,
            PP0449_PictureInText.Instance,
            PP0450_UnsafeLink.Instance,
            PP0451_NoteWithoutPlace.Instance,
            PP0452_BrokenTemplate.Instance,
            PP0453_UnsuitableLook.Instance,
            PP0454_UnknownSection.Instance,
            PP0455_MissingTemplate.Instance,
        ];

    /// <summary>All rules of this project by code.</summary>
    public static IEnumerable<Rule> All => Reading.Concat<Rule>(Checking);

    /// <summary>Runs every checking rule; those that look at the making last, because it may still be under way.
    /// Findings are not yet merged over sizes.</summary>
    public static IEnumerable<Finding> Check(RuleContext context)
    {
        var making = new List<CheckingRule>();
        foreach (CheckingRule rule in Checking)
        {
            if (rule.NeedsMaking)
            {
                making.Add(rule);
                continue;
            }
            foreach (Finding finding in rule.Check(context))
            {
                yield return finding;
            }
        }
        _ = context.Making;
        foreach (
            List<Finding> findings in Aside.ForEach<List<Finding>>(
                making.Count,
                i => [.. making[i].Check(context)]
            )
        )
        {
            foreach (Finding finding in findings)
            {
                yield return finding;
            }
        }
    }
}
