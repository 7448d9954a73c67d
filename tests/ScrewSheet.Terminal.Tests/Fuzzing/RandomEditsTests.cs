using ScrewSheet.Fuzzing.Edits;

namespace ScrewSheet.Terminal.Tests.Fuzzing;

/// <summary>Random edits of random workbooks keep what a slow model of them says; <c>tests/ScrewSheet.Fuzzing/edits</c> takes more steps.</summary>
public sealed class RandomEditsTests
{
    [Fact]
    public void TwentyThousandEditsKeepEveryReference()
    {
        int seed = Random.Shared.Next();
        EditWalk walk = new(seed);
        try
        {
            walk.Take(20_000);
        }
        catch (ScrewSheet.Fuzzing.BrokenPromiseException wrong)
        {
            Assert.Fail($"seed {seed}, step {walk.Steps}: {wrong.Message}");
        }
        // no kind of edit is forgotten, and most results are numbers, not faults that agree
        Assert.Equal(["clear", "copy", "cut", "fill", "insert", "move", "redo", "remove", "rename", "sheet", "sort", "type", "undo"], walk.Counts.Keys.Order(StringComparer.Ordinal));
        Assert.True(walk.Compared.Numbers > 40_000, $"{walk.Compared} results compared");
    }
}
