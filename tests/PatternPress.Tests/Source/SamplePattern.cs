using PatternPress.Source.Shapes;

namespace PatternPress.Tests.Source;

/// <summary>A complete source file and a small vocabulary, for tests of reading.</summary>
internal static class SamplePattern
{
    public const string Text = """
        # A quilt of lamps along a sea wall.
        pattern:
          title: Harbor Lights
          edition: 1.0.0
          date: 2026-11-01
          designer: "Tern & Tide Patterns"
          skill: confident beginner
          about: |
            Lamps along a sea wall. The throw takes {{ yards "A" "throw" }} of background.
          notes:
            cutting: Keep the amber strips together.

        fabrics:
          A: {name: Ink, color: "#15233b", use: background}
          B: {name: Amber, color: "#f2a71b", print: dot}
          C: {name: Foam, color: '#e8f1f2', directional: yes}
          D:
            name: Slate
            color: "#5b6b73"
            usable-width: 42 in

        blocks:
          lamp:
            size: 12                    # finished
            parts: sky ray core
            map: |
              s G G s
              E C C W
              E C C W
              s F F s
            units:
              s: square sky
              G: geese up, ray on sky
              F: geese down, ray on sky
              E: geese left, ray on sky
              W: geese right, ray on sky
              C: square core

        colorings:
          L1: lamp sky=A ray=B core=C
          L2: lamp sky=A ray=C core=B

        methods:
          geese: stitch-and-flip
          lamp.G: four-at-a-time

        quilt:
          setting: straight
          sashing: {width: 1 1/2, fabric: A, cornerstones: B}
          fill: |
            L1 L2
            L2 L1
          borders:
            - {width: 2, fabric: C}
            - {width: 5, fabric: A, corners: top-first}
          binding: B
          backing: D

        sizes:
          crib: {blocks: 3 x 3}
          throw: {blocks: 5 x 6}
          queen:
            blocks: 8 x 8
            change:
              borders: [{width: 2, fabric: C}, {width: 6, fabric: A}]
              sashing: {width: 2}
              fill: {scatter: L1 L2, seed: 7}

        """;

    public static Vocabulary Vocabulary { get; } =
        new(
            ["straight", "on-point"],
            ["repeat", "checkerboard", "scatter"],
            ["repeat"],
            ["square", "geese", "half-square"],
            ["stitch-and-flip", "four-at-a-time", "two-at-a-time"],
            ["sides-first", "top-first", "squares"]
        );

    public static MapShape Shape { get; } = PatternShape.Of(Vocabulary);
}
