using System.Diagnostics;
using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.TestKit;
using ScrewSheet.Workbooks.Expressions;

namespace ScrewSheet.Terminal.Tests.Grid;

/// <summary>A cell that takes long never keeps the keyboard waiting, is named and can be stopped.</summary>
[Collection(nameof(SlowLibrary))] // its gate is one for all
public sealed class SlowTests : IDisposable
{
    private readonly Walk walk = new("screwsheet 1\n\nsheet S\nA1 = 1\nA2 slow_one => Patience(A1)\nA3 => A2 + 1\n", library: FunctionLibrary.Of(typeof(SlowLibrary).Assembly));

    public void Dispose()
    {
        SlowLibrary.Gate.Set();
        walk.Settle().Dispose();
    }

    [Fact]
    public void ASlowCell_IsNamed_WhileTheReaderGoesOn_AndItsResultArrives()
    {
        Assert.Equal(" 2", walk.Face("A3"));
        SlowLibrary.Gate.Reset();
        walk.Enter("5");
        Assert.Contains("calculating", walk.Screen, StringComparison.Ordinal);
        Until(() => walk.State.Slow is not null);
        Assert.Contains("slow_one takes long to compute. Space and then the full stop ends that.", walk.Screen, StringComparison.Ordinal);
        walk.Go("C1").Enter("7");
        Assert.Equal("›7", walk.Face("C1"));
        SlowLibrary.Gate.Set();
        walk.Settle();
        Assert.Equal(" 6", walk.Face("A3"));
        Until(() => walk.State.Slow is null);
        Assert.DoesNotContain("calculating", walk.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void Stopped_TheTitleSaysSo_AndTheSameCommandGoesOn()
    {
        SlowLibrary.Gate.Reset();
        walk.Enter("5").Command('.');
        SlowLibrary.Gate.Set();
        walk.Settle();
        Assert.Contains("Stopped.", walk.Screen, StringComparison.Ordinal);
        Assert.Contains("· stopped", walk.Screen, StringComparison.Ordinal);
        Assert.False(walk.State.Open.IsCalculated);
        walk.Command('.').Settle();
        Assert.Equal(" 6", walk.Face("A3"));
    }

    [Fact]
    public void ALineThatTakesLong_GivesWayToTheNext()
    {
        SlowLibrary.Gate.Reset();
        walk.Go("C1").Type("=> Patience(2)");
        Until(() => walk.State.Slow is not null);
        Assert.Equal("C1", walk.State.Slow?.Address.ToString());
        walk.Type(" ");
        Thread.Sleep(1100);
        walk.Press(KeyName.Backspace);
        SlowLibrary.Gate.Set();
        walk.Settle();
        Assert.Contains("gives    2", walk.Screen, StringComparison.Ordinal);
        walk.Press(KeyName.Enter).Settle();
        Assert.Equal(" 2", walk.Face("C1"));
    }

    [Fact]
    public void TheDetail_NeverWaitsForASlowFunction()
    {
        walk.Go("C1").Enter("=> Patience(A1) * 3 + A3").Settle();
        SlowLibrary.Gate.Reset();
        walk.Go("C1");
        Assert.Contains("numbers  Patience(1) · 3 + 2\n", walk.Screen, StringComparison.Ordinal);
        Assert.Contains("result   5\n", walk.Screen, StringComparison.Ordinal);
    }

    private void Until(Func<bool> holds)
    {
        Stopwatch watch = Stopwatch.StartNew();
        while (!holds())
        {
            Assert.True(watch.Elapsed < TimeSpan.FromSeconds(20), walk.Screen);
            walk.Program.TakeArrived();
            Thread.Sleep(10);
        }
    }
}
