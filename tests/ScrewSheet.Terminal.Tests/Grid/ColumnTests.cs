using ScrewSheet.Terminal.Grid.State;

namespace ScrewSheet.Terminal.Tests.Grid;

/// <summary>Columns that are series by name, as the terminal shows and takes them.</summary>
public sealed class ColumnTests
{
    private const string Text =
        """
        screwsheet 1
        sheet Tests
        column A force [kN]
        column B mode
        A1 "Force"
        B1 "Mode"
        A2 = 12 kN
        B2 = "pull-out"
        A3 = 14 kN
        B3 = "sheared"
        D1 mean => Mean(force)

        sheet Other
        A1 = 1
        """;

    [Theory]
    [InlineData("=> fo", "force")]
    [InlineData("=> Tests.mo", "mode")]
    [InlineData("=> force.Wh", "Where")]
    [InlineData("=> Tests.force.Be", "Beside")]
    public void Completion_KnowsColumnsAndTheirMembers(string typed, string offered)
    {
        using Walk walk = new(Text);
        walk.Go("D5").Type(typed);
        Assert.Contains(((Entering)walk.State.Mode).Entry.Suggestions, suggestion => suggestion.Shown == offered);
    }

    [Fact]
    public void ACellMayNotTakeTheNameOfAColumn()
    {
        using Walk walk = new(Text);
        walk.Go("D5").Enter("force = 3 kN");
        Assert.Contains("force is the name of column A already.", walk.Screen, StringComparison.Ordinal);
        Assert.Single(walk.State.Open.Workbook.Find("Tests")!.Columns, column => column.Name == "force");
        Assert.False(walk.State.Open.IsUnsaved);
    }

    [Fact]
    public void ARowTypedBelowTheColumnIsPartOfIt()
    {
        using Walk walk = new(Text);
        walk.Go("A4").Enter("19 kN").Settle();
        walk.Go("D1").Settle();
        Assert.Contains("15 kN", walk.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void AnInsertedColumnTakesTheLineAlong()
    {
        using Walk walk = new(Text);
        walk.Go("A2").Command('j').Settle();
        Assert.Equal(2, walk.State.Open.Workbook.Find("Tests")!.Column("force")!.Column);
        Assert.DoesNotContain("fault", walk.Screen, StringComparison.Ordinal);
    }
}
