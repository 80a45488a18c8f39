using PatternPress.Cli;
using PatternPress.Cli.Files;
using PatternPress.Quilting.Pictures;
using PatternPress.Tests.Imaging;

namespace PatternPress.Tests.Cli;

/// <summary>Pictures read from a pattern's folder.</summary>
public sealed class PictureFilesTests
{
    private string _folder = "";

    [SetUp]
    public void MakeFolder()
    {
        _folder = Directory.CreateTempSubdirectory("patternpress-").FullName;
        Directory.CreateDirectory(Path.Combine(_folder, "patterns", "swatches"));
    }

    [TearDown]
    public void RemoveFolder() => Directory.Delete(_folder, recursive: true);

    private void Write(string path, byte[] bytes) =>
        File.WriteAllBytes(Path.Combine(_folder, path), bytes);

    private PictureReading Read(string path) =>
        new PictureFiles(Path.Combine(_folder, "patterns")).Read(path, 240);

    [Test]
    public void A_picture_is_found_and_made_smaller()
    {
        Write("patterns/swatches/ink.png", SampleImages.Png(480, 240, SampleImages.Rings));
        FabricPicture picture = Read("swatches/ink.png")
            .ShouldBeOfType<PictureReading.Found>()
            .Picture;
        (picture.Width, picture.Height).ShouldBe((240, 120));
    }

    [Test]
    public void Of_a_missing_one_the_others_are_named()
    {
        Write("patterns/swatches/ink.png", SampleImages.Png(48, 24, SampleImages.Rings));
        Write("patterns/notes.txt", []);
        Read("swatches/inc.png")
            .ShouldBeOfType<PictureReading.Missing>()
            .Near.ShouldBe(["swatches/ink.png"]);
        Read("swatches").ShouldBeOfType<PictureReading.Unreadable>();
    }

    [Test]
    public void Links_do_not_lead_out()
    {
        Write("secret.png", SampleImages.Png(48, 24, SampleImages.Rings));
        Write("patterns/own.png", SampleImages.Png(48, 24, SampleImages.Rings));
        File.CreateSymbolicLink(
            Path.Combine(_folder, "patterns", "swatches", "link.png"),
            Path.Combine(_folder, "secret.png")
        );
        Directory.CreateSymbolicLink(Path.Combine(_folder, "patterns", "up"), _folder);
        File.CreateSymbolicLink(
            Path.Combine(_folder, "patterns", "swatches", "inner.png"),
            Path.Combine(_folder, "patterns", "own.png")
        );
        Read("swatches/link.png").ShouldBeOfType<PictureReading.Outside>();
        Read("up/secret.png").ShouldBeOfType<PictureReading.Outside>();
        Read("swatches/inner.png").ShouldBeOfType<PictureReading.Found>();
    }

    [Test]
    public void Empty_and_huge_files_are_refused_unread()
    {
        Write("patterns/empty.png", []);
        Read("empty.png").ShouldBeOfType<PictureReading.Unusable>().What.ShouldBe("it is empty");
        using (FileStream huge = File.Create(Path.Combine(_folder, "patterns", "huge.png")))
        {
            huge.SetLength(3_000_000_000);
        }
        Read("huge.png")
            .ShouldBeOfType<PictureReading.Unusable>()
            .What.ShouldBe("it has 3000.0 MB; 20 MB is the most");
    }

    [Test]
    public void A_pattern_with_pictures_builds_to_the_same_bytes_again()
    {
        Write("patterns/swatches/ink.png", SampleImages.Png(300, 300, SampleImages.Rings));
        Write("patterns/swatches/amber.jpg", SampleImages.Jpeg(300, 150, SampleImages.Rings));
        string source = File.ReadAllText(
                Path.Combine(Repository.Root, "tests", "cases", "rules", "base.quilt.yaml")
            )
            .Replace("A: {name: Ink, color", "A: {name: Ink, image: swatches/ink.png, color")
            .Replace(
                "B: {name: Amber, color",
                "B: {name: Amber, image: {file: swatches/amber.jpg, width: 3}, color"
            );
        File.WriteAllText(Path.Combine(_folder, "patterns", "cloth.quilt.yaml"), source);
        byte[][] files = [Build(), Build()];
        files[1].ShouldBe(files[0]);
        PatternPress.Tests.Pdf.TagTree.Check(files[0]).Faults.ShouldBeEmpty();

        byte[] Build()
        {
            var output = new StringWriter();
            var terminal = new Terminal(
                output,
                output,
                Color: false,
                Interactive: false,
                Width: 100
            );
            new Application(terminal, _folder)
                .Run([
                    "build",
                    "--paper",
                    "letter",
                    "--templates",
                    Path.Combine(Repository.Root, "templates"),
                ])
                .ShouldBe(0, output.ToString());
            return File.ReadAllBytes(Path.Combine(_folder, "out", "cloth", "cloth-letter.pdf"));
        }
    }
}
