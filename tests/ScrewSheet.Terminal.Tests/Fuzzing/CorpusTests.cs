using ScrewSheet.Fuzzing;
using ScrewSheet.TestKit;

namespace ScrewSheet.Terminal.Tests.Fuzzing;

/// <summary>Every input the fuzzers start from, and every one they found something with, keeps what the targets promise.</summary>
[Collection(nameof(CorpusTests))]
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
        Assert.DoesNotContain(files.Select(file => (File: Path.GetFileName(file), Find: Record.Exception(() => target.Try(File.ReadAllBytes(file))))), tried => tried.Find is not null);
    }

    [Fact]
    public void ATargetOfEachFolder() => Assert.Equal(Target.All.Select(target => target.Name).Order(StringComparer.Ordinal), Directory.GetDirectories(Corpus).Select(folder => Path.GetFileName(folder)!).Order(StringComparer.Ordinal));
}

/// <summary>The targets measure the processor time of the whole process, so nothing may run beside them.</summary>
[CollectionDefinition(nameof(CorpusTests), DisableParallelization = true)]
public sealed class CorpusAlone;
