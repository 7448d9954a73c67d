using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Terminal.Grid.Studies;
using ScrewSheet.TestKit;
using ScrewSheet.Workbooks.Expressions;

namespace ScrewSheet.Terminal.Tests.Grid.Passing;

/// <summary>Long work shows that it runs, leaves the keyboard free and can be stopped; what became of the file is told either way.</summary>
[Collection(nameof(SlowLibrary))] // its gate is one for all
public sealed class StoppingTests : IDisposable
{
    private const string Text = "screwsheet 1\n\nsheet S\nA1 x = 1\nA2 slow => Patience(x)\nA3 => slow + 1\nwhat-if C2\n  vary x: 1, 2, 3\n  show slow\n";
    private readonly Walk walk = new(Text, library: FunctionLibrary.Of(typeof(SlowLibrary).Assembly));

    public void Dispose()
    {
        SlowLibrary.Gate.Set();
        walk.Settle().Dispose();
    }

    [Fact]
    public void Stopped_NothingIsWritten_AndThatIsSaidWhenItIsKnown()
    {
        SlowLibrary.Gate.Reset();
        walk.Command('6').Type("h").Press(KeyName.Enter);
        Assert.IsType<Working>(walk.State.Mode);
        Assert.Contains("── Writing ", walk.Screen, StringComparison.Ordinal);
        Assert.Contains("Esc stops it; nothing is written then.", walk.Screen, StringComparison.Ordinal);
        walk.Press(KeyName.Escape);
        Assert.IsType<Browsing>(walk.State.Mode);
        Assert.Contains("Stopping.", walk.State.Notice?.Text, StringComparison.Ordinal);
        SlowLibrary.Gate.Set();
        walk.Settle();
        Assert.Equal("Stopped before the end. Nothing was written.", walk.State.Notice?.Text);
        Assert.False(File.Exists(walk.At("book.html")));
    }

    [Fact]
    public void WrittenInTheMomentOfStopping_IsSaidToBe()
    {
        StudyTicket ticket = new("Writing it", writes: true);
        GridState later = ScrewSheet.Terminal.Grid.Keys.Dispatch.Next(walk.State, new StudyDone(ticket, state => state.Say("Wrote it.") with { Mode = new Commanding() }));
        Assert.Equal("Wrote it.", later.Notice?.Text);
        Assert.IsType<Browsing>(later.Mode);
    }

    [Fact]
    public void AStoppedComparison_ChangesNothing()
    {
        File.WriteAllText(walk.At("other.screwsheet"), Text.Replace("x = 1", "x = 2", StringComparison.Ordinal));
        SlowLibrary.Gate.Reset();
        walk.Command('7').Ctrl('u').Type(walk.At("other.screwsheet")).Press(KeyName.Enter);
        Assert.Contains("── Comparing with ", walk.Screen, StringComparison.Ordinal);
        walk.Press(KeyName.Escape);
        SlowLibrary.Gate.Set();
        walk.Settle();
        Assert.IsType<Browsing>(walk.State.Mode);
        Assert.Null(walk.State.Compared);
    }
}
