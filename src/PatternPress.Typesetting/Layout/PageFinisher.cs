using PatternPress.Typesetting.Blocks;
using PatternPress.Typesetting.Pages;

namespace PatternPress.Typesetting.Layout;

/// <summary>Adds background, header and footer to a page and lays everything flat.</summary>
static class PageFinisher
{
    public static Page Finish(LayoutContext context, BodyPage page)
    {
        context.PageNumber = page.Number;
        var (frame, body) = (page.Frame, page.Frame.Body);
        var differs = page.FirstOfSequence && frame.FirstPageDiffers;
        var assembler = new PageAssembler(context);
        if ((differs ? frame.FirstBackground : frame.Background) is { } background)
        {
            var width = frame.Paper.Width + (frame.Bleed * 2);
            var builder = new FragmentBuilder().Add(background, Points.Zero, Points.Zero, width);
            assembler.AddArtifact(
                ArtifactKind.Background,
                builder.ToFragment(width, frame.Paper.Height + (frame.Bleed * 2)),
                Points.Zero - frame.Bleed,
                Points.Zero - frame.Bleed
            );
        }

        if (Set(context, differs ? frame.FirstHeader : frame.Header, body.Width) is { } header)
        {
            var y = body.Y - frame.HeaderGap - header.Height;
            Check(context, "header", header.Height, body.Y - frame.HeaderGap);
            assembler.AddArtifact(ArtifactKind.Header, header, body.X, y);
        }

        assembler.Add(page.Body, body.X, body.Y);
        if (Set(context, differs ? frame.FirstFooter : frame.Footer, body.Width) is { } footer)
        {
            Check(context, "footer", footer.Height, frame.Margins.Bottom - frame.FooterGap);
            assembler.AddArtifact(
                ArtifactKind.Footer,
                footer,
                body.X,
                body.Bottom + frame.FooterGap
            );
        }

        return new Page(page.Number, frame.Paper, assembler.ToItems());
    }

    static Fragment? Set(LayoutContext context, Block? block, Points width) =>
        block is null ? null
        : context.Fit(block, Room.Endless(width)) is Fit.Fits fits ? fits.Fragment
        : null;

    static void Check(LayoutContext context, string name, Points needed, Points available)
    {
        if (needed > available)
        {
            context.Report(
                LayoutProblemKind.FrameTooTall,
                $"the {name} is {needed} pt tall, the margin leaves {available} pt",
                needed,
                available
            );
        }
    }
}
