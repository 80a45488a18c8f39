using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Resolving;
using PatternPress.Source;

namespace PatternPress.Quilting.Rules.Prose;

/// <summary>Holds the figures that a designer typed against the computed ones.</summary>
internal static class ProseFigures
{
    /// <summary>Every typed figure that means something computed, in the order of the source.</summary>
    public static IEnumerable<(TypedFigure Figure, FigureMatch Match)> Compare(RuleContext context)
    {
        // While something could not be computed, nothing can be said to contradict.
        if (!context.IsWhole || context.Making.Problems.Length > 0)
        {
            yield break;
        }
        foreach ((string text, Func<int, int, Span> spanOf) in Texts(context))
        {
            foreach (TypedFigure figure in ProseScanner.Scan(text, spanOf))
            {
                if (Match(context, figure) is { } match)
                {
                    yield return (figure, match);
                }
            }
        }
    }

    private static IEnumerable<(string Text, Func<int, int, Span> SpanOf)> Texts(
        RuleContext context
    )
    {
        PatternInfo info = context.Pattern.Info;
        IEnumerable<Sourced<string>> proses = info
            .Notes.OrderBy(note => note.Key, StringComparer.Ordinal)
            .Select(note => note.Value);
        if (info.About is { } about)
        {
            proses = proses.Prepend(about);
        }
        foreach (Sourced<string> prose in proses)
        {
            if (context.Source is not { } source)
            {
                yield return (prose.Value, (_, _) => prose.Span);
                continue;
            }
            // With the file at hand the raw text is read, whose places are the file's own.
            int start = StartOf(source, prose.Span);
            yield return (
                source.Slice(prose.Span),
                (offset, length) => source.SpanOf(start + offset, start + offset + length)
            );
        }
        foreach (BlockDesign block in context.Pattern.Blocks)
        {
            if (block.Notes is { } notes)
            {
                yield return (notes, (_, _) => block.Span);
            }
        }
    }

    private static int StartOf(SourceText source, Span span)
    {
        int start = span.StartColumn - 1;
        for (int line = 1; line < span.StartLine; line++)
        {
            start += source.Line(line).Length + 1;
        }
        return start;
    }

    private static FigureMatch? Match(RuleContext context, TypedFigure figure) =>
        figure.Kind switch
        {
            TypedFigureKind.Yards => Yards(context, figure),
            TypedFigureKind.Pair => Pair(context, figure),
            TypedFigureKind.BlockCount => BlockCount(context, figure),
            TypedFigureKind.BlockGrid => BlockGrid(context, figure),
            _ => BlockSize(context, figure),
        };

    private static FigureMatch Yards(RuleContext context, TypedFigure figure)
    {
        var all = new List<(Rational Yards, string Quote)>();
        foreach (SizeMaking size in context.Making.Sizes)
        {
            foreach ((string key, string what, Rational yards) in Bought(size))
            {
                string quote = $"{{{{ yards \"{key}\" \"{size.Key}\" }}}}";
                if (yards == figure.First)
                {
                    return new(quote, $"the yardage of {what} in size \"{size.Key}\"");
                }
                all.Add((yards, quote));
            }
        }
        (Rational nearest, string nearestQuote) = all.MinBy(one =>
            (one.Yards - figure.First).Abs()
        );
        return new(
            null,
            $"No fabric takes that much in any size; the nearest is {LengthText.Mixed(nearest)} yd.",
            nearestQuote
        );
    }

    private static IEnumerable<(string Key, string What, Rational Yards)> Bought(SizeMaking size)
    {
        foreach (FabricPlan plan in size.Fabrics)
        {
            if (plan.Panels is not null)
            {
                continue;
            }
            yield return plan.Use == FabricUse.Binding
                ? ("binding", "the binding", plan.Yardage.Yards)
                : (plan.Fabric, $"fabric \"{plan.Fabric}\"", plan.Yardage.Yards);
        }
        if (size.Backing is { } backing)
        {
            yield return ("backing", "the backing", backing.Yardage.Yards);
        }
    }

    private static FigureMatch? Pair(RuleContext context, TypedFigure figure)
    {
        Length width = Length.FromInches(figure.First),
            height = Length.FromInches(figure.Second!.Value);
        foreach (Quilt quilt in context.Quilts)
        {
            if (
                (quilt.Width == width && quilt.Height == height)
                || (quilt.Width == height && quilt.Height == width)
            )
            {
                return new(
                    $"{{{{ size \"{quilt.Size.Key}\" }}}}",
                    $"the finished size of \"{quilt.Size.Key}\""
                );
            }
        }
        // Two small numbers may be anything: a fat quarter, a mat, a grid. Two large ones are a quilt.
        Length least = Length.Min(
            Length.FromInches(30),
            context.Quilts.Min(q => Length.Min(q.Width, q.Height))
        );
        return width < least || height < least
            ? null
            : new(
                null,
                $"The sizes finish at {string.Join(", ", context.Quilts.Select(q => Wording.Measure(q.Width, q.Height)))}.",
                $"{{{{ size \"{NearestTo(context, width, height)}\" }}}}"
            );
    }

    private static FigureMatch? BlockCount(RuleContext context, TypedFigure figure)
    {
        // "Sew 2 blocks together" counts no size.
        // A one-patch quilt has no blocks.
        if (
            figure.First < context.Quilts.Min(q => q.Places.Length)
            || context.Quilts.All(q => q.Places.IsEmpty)
        )
        {
            return null;
        }
        foreach (Quilt quilt in context.Quilts)
        {
            if (figure.First == quilt.Places.Length)
            {
                return new(
                    $"{{{{ blocks \"{quilt.Size.Key}\" }}}}",
                    $"the number of blocks in size \"{quilt.Size.Key}\""
                );
            }
        }
        foreach (Quilt quilt in context.Quilts)
        {
            foreach ((ColoredBlock block, int count) in quilt.BlockCounts())
            {
                if (figure.First == count)
                {
                    return new(
                        $"{{{{ count \"{block.Key}\" \"{quilt.Size.Key}\" }}}}",
                        $"the number of blocks \"{block.Key}\" in size \"{quilt.Size.Key}\""
                    );
                }
            }
        }
        return new(
            null,
            $"The sizes have {string.Join(", ", context.Quilts.Select(q => q.Places.Length))} blocks."
        );
    }

    private static FigureMatch? BlockGrid(RuleContext context, TypedFigure figure) =>
        context.Pattern.Sizes.Any(size =>
            figure.First == size.Columns && figure.Second == size.Rows
        )
            ? null
            : new(
                null,
                $"The sizes have {string.Join(", ", context.Pattern.Sizes.Select(s => $"{s.Columns} × {s.Rows}"))} blocks."
            );

    private static FigureMatch BlockSize(RuleContext context, TypedFigure figure)
    {
        Length side = Length.FromInches(figure.First);
        foreach (Quilt quilt in context.Quilts)
        {
            foreach (ColoredBlock block in context.BlocksOf(quilt))
            {
                Length seams = quilt.House.Seam * 2;
                string key = block.Block?.Key ?? block.Key;
                if (block.Width == side)
                {
                    return new(
                        $"{{{{ finished \"{key}\" \"{quilt.Size.Key}\" }}}}",
                        $"the finished size of block \"{key}\""
                    );
                }
                if (block.Width + seams == side)
                {
                    return new(
                        $"{{{{ unfinished \"{key}\" \"{quilt.Size.Key}\" }}}}",
                        $"the unfinished size of block \"{key}\""
                    );
                }
            }
        }
        IEnumerable<string> sizes = context
            .Quilts.SelectMany(context.BlocksOf)
            .Select(b => Wording.Measure(b.Width))
            .Distinct();
        return new(null, $"The blocks finish at {string.Join(", ", sizes)}.");
    }

    private static string NearestTo(RuleContext context, Length width, Length height) =>
        context
            .Quilts.MinBy(q => (q.Width - width).Inches.Abs() + (q.Height - height).Inches.Abs())!
            .Size.Key;
}
