using ScrewSheet.Fuzzing;
using ScrewSheet.TestKit;

namespace ScrewSheet.Terminal.Tests.Fuzzing;

/// <summary>Every input the fuzzers start from, and every one they found something with, keeps what the targets promise.</summary>
public sealed class CorpusTests
{
    private static readonly string Corpus = Path.Combine(GoldenFile.Root, "tests", "ScrewSheet.Fuzzing", "corpus");

    [Theory]
    [InlineData("file", 60)]
    [InlineData("expression", 60)]
    [InlineData("table", 30)]
    public void EveryInputKeepsWhatIsPromised(string name, int least)
    {
        Target target = Target.Named(name)!;
        string[] files = Directory.GetFiles(Path.Combine(Corpus, name));
        Assert.True(files.Length >= least, $"{files.Length} inputs");
        Assert.Empty(files.Select(file => Wrong(target, file)).OfType<string>());
    }

    [Fact]
    public void ATargetOfEachFolder() => Assert.Equal(Target.All.Select(target => target.Name).Order(StringComparer.Ordinal), Directory.GetDirectories(Corpus).Select(folder => Path.GetFileName(folder)!).Order(StringComparer.Ordinal));

    private static string? Wrong(Target target, string file)
    {
        try
        {
            target.Try(File.ReadAllBytes(file));
            return null;
        }
        catch (Exception find)
        {
            return $"{Path.GetFileName(file)}: {find}";
        }
    }
}
