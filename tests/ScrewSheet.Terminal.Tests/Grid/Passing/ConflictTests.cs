using ScrewSheet.Terminal.Grid.State;

namespace ScrewSheet.Terminal.Tests.Grid.Passing;

/// <summary>Two versions that a merge left in a cell: seen, and one of them chosen.</summary>
public sealed class ConflictTests
{
    private const string Text = """
        screwsheet 1

        sheet Fall
        B2 peak [kN] = 8.5 kN
        // measured twice
        B3 conflict
          ours exposed [mm] = 40 mm ± 10 mm
          theirs exposed [mm] = 45 mm // with the long ruler
        B4 Torque moment [N·m, 1 decimal] => peak * exposed
        C2 conflict
          ours "Peak"
          theirs
        C4 conflict
          ours half [N·m] => moment / 2 gives 170 N·m
          theirs half [N·m] => moment * 0.5

        """;

    [Fact]
    public void TheDetail_ShowsBothVersions()
    {
        using Walk walk = new(Text, 100);
        walk.Go("exposed");
        Assert.Contains(" ours     exposed [mm] = 40 mm ± 10 mm\n", walk.Screen, StringComparison.Ordinal);
        Assert.Contains(" theirs   exposed [mm] = 45 mm // with the long ruler\n", walk.Screen, StringComparison.Ordinal);
        Assert.Contains("Enter chooses one of them.", walk.Screen, StringComparison.Ordinal);
        Assert.Contains(" Enter choose ", walk.Screen, StringComparison.Ordinal);
        Assert.Equal("~waits", walk.Face("B4"));
    }

    [Theory]
    [InlineData('o', "exposed [mm] = 40 mm ± 10 mm", " 340.0 N·m")]
    [InlineData('t', "exposed [mm] = 45 mm // with the long ruler", " 382.5 N·m")]
    public void OneKey_TakesAVersion_AndItCanBeTakenBack(char key, string entry, string moment)
    {
        using Walk walk = new(Text, 100);
        walk.Go("exposed").Press(KeyName.Enter);
        Assert.Contains("Two versions of exposed meet here. Which one counts?", walk.Screen, StringComparison.Ordinal);
        Assert.Contains("O  ours: exposed [mm] = 40 mm ± 10 mm", walk.Screen, StringComparison.Ordinal);
        walk.Type(key.ToString()).Settle();
        Assert.Equal(entry, walk.Entry("B3"));
        Assert.Equal(moment, walk.Face("B4"));
        walk.Ctrl('s').Settle();
        Assert.Contains($"// measured twice\nB3 {entry}\nB4", walk.Saved, StringComparison.Ordinal);
        walk.Ctrl('z').Settle();
        Assert.Equal($"Took back the choice of {(key == 'o' ? "ours" : "theirs")} for exposed.", walk.State.Notice?.Text);
        Assert.Contains("ours     exposed [mm] = 40 mm ± 10 mm", walk.Screen, StringComparison.Ordinal);
        walk.Ctrl('y').Settle();
        Assert.Equal(moment, walk.Face("B4"));
    }

    [Fact]
    public void AVersionThatHasNoSuchCell_TakesItAway()
    {
        using Walk walk = new(Text, 100);
        walk.Go("C2").Press(KeyName.Enter);
        Assert.Contains("T  theirs: nothing: the cell goes", walk.Screen, StringComparison.Ordinal);
        walk.Type("t").Settle();
        Assert.Null(walk.Entry("C2"));
        walk.Ctrl('z').Press(KeyName.Enter).Type("o").Settle();
        Assert.Equal("\"Peak\"", walk.Entry("C2"));
    }

    [Fact]
    public void AThirdVersion_CanBeTyped_BeginningWithOurs()
    {
        using Walk walk = new(Text, 100);
        walk.Go("exposed").Press(KeyName.Enter).Type("e");
        Assert.Contains("» exposed [mm] = 40 mm ± 10 mm", walk.Screen, StringComparison.Ordinal);
        walk.Type(" // agreed").Press(KeyName.Enter).Settle();
        Assert.Equal("exposed [mm] = 40 mm ± 10 mm // agreed", walk.Entry("B3"));
    }

    [Fact]
    public void AResult_KeepsWhatItsVersionKept()
    {
        using Walk walk = new(Text, 100);
        walk.Go("C4").Press(KeyName.Enter).Type("o").Settle();
        Assert.Equal("half [N·m] => moment / 2 gives 170 N·m", walk.Entry("C4"));
        walk.Go("exposed").Press(KeyName.Enter).Type("t").Settle();
        Assert.Equal("≠191.2 N·m", walk.Face("C4"));
    }

    [Fact]
    public void Escape_LeavesBothThere()
    {
        using Walk walk = new(Text, 100);
        walk.Go("exposed").Press(KeyName.Enter, KeyName.Escape);
        Assert.IsType<Browsing>(walk.State.Mode);
        Assert.False(walk.State.Open.IsUnsaved);
    }
}
