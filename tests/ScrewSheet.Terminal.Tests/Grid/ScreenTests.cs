using CsCheck;
using ScrewSheet.Terminal.Grid.Keys;
using ScrewSheet.Terminal.Grid.Screen;
using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Terminal.Output;

namespace ScrewSheet.Terminal.Tests.Grid;

public sealed class ScreenTests
{
    private const string Strange = "screwsheet 1\n\nsheet S\nA1 \"表計算 עברית e\u0301 👩‍🚀 long long long long\"\nB1 = 1 kN\nA2 name_with_a_very_long_name_indeed = 123456789.123 kN\nA3 => A2 * 2 // 表\n";

    public static TheoryData<string> Modes => ["browse", "enter", "call", "list", "catalogue", "help", "ask", "commands", "confirm", "links", "plot"];

    [Theory]
    [MemberData(nameof(Modes))]
    public void EveryScreen_FillsItsSizeToTheColumn(string mode)
    {
        using Walk book = new(Book.Text), strange = new(Strange);
        foreach (Walk walk in new[] { book, strange })
        {
            Bring(walk, mode);
            Gen.Select(Gen.Int[20, 210], Gen.Int[8, 60]).Sample((width, height) =>
            {
                Picture picture = Painter.Of(Dispatch.Next(walk.State, new Resize(width, height)));
                return picture.Lines.Length == height && picture.Lines.All(line => DisplayWidth.Of(line.Text) == width);
            }, iter: 40);
        }
    }

    private static Walk Bring(Walk walk, string mode) => mode switch
    {
        "enter" => walk.Go("A3").Press(KeyName.Enter).Type(" + na").Settle(),
        "call" => walk.Go("C1").Type("=> ImpactForce(1 kg, "),
        "list" => walk.Ctrl('a'),
        "catalogue" => walk.Ctrl('l'),
        "help" => walk.Type("?"),
        "ask" => walk.Ctrl('g').Type("表"),
        "commands" => walk.Type(" "),
        "confirm" => walk.Go("C1").Enter("1").Ctrl('q'),
        "plot" => walk.Go("A1").Shift(KeyName.Down, 2).Command('p'),
        "links" => walk.Go("A3").Press(KeyName.Tab),
        _ => walk,
    };

    [Fact]
    public void ATinyTerminal_IsToldWhatIsNeeded()
    {
        using Walk walk = new(Book.Text, width: 40, height: 10);
        Assert.Contains("This needs 44 × 14 characters; here are\n40 × 10.", walk.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void Help_ListsEveryCommandWithItsKeys_AndEveryMark()
    {
        string help = string.Join('\n', Pages.Lines(PageName.Help, 80).Select(line => line.Text));
        foreach (Command command in GridCommands.All)
        {
            Assert.Contains(command.Title, help, StringComparison.Ordinal);
            if (command.Ctrl is { } ctrl) Assert.Contains($"Ctrl+{char.ToUpperInvariant(ctrl)}", help, StringComparison.Ordinal);
        }
        foreach ((char mark, string meaning) in CellFace.Marks) Assert.Contains($"{mark}", help, StringComparison.Ordinal);
    }

    [Fact]
    public void Commands_HaveALetterEach_AndNoneHangsOnAKeyTerminalsSwallow()
    {
        Assert.Equal(GridCommands.All.Count, GridCommands.All.Select(command => command.Letter).Distinct().Count());
        // these arrive as Tab, Enter, Escape or Backspace
        Assert.DoesNotContain(GridCommands.All, command => command.Ctrl is 'i' or 'm' or 'j' or 'h');
        using Walk walk = new(Book.Text, width: 80, height: 24);
        walk.Type(" ");
        foreach (Command command in GridCommands.All) Assert.Contains(command.Title, walk.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void EveryCommand_WorksOnAnEmptySheet()
    {
        foreach (Command command in GridCommands.All)
        {
            using Walk walk = new("screwsheet 1\n\nsheet S\n");
            walk.Command(command.Letter);
            Assert.NotEmpty(walk.Screen);
        }
    }

    [Fact]
    public void TextThatWouldSteerATerminal_IsShownByItsNumber()
    {
        using Walk walk = new("screwsheet 1\n\nsheet S\nA1 \"a\u202Eb\"\n");
        Assert.Contains("‹U+202E›", walk.Screen, StringComparison.Ordinal);
        Assert.DoesNotContain("\u202E", walk.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void Catalogue_NarrowsByTyping_AndPutsACallIn()
    {
        using Walk walk = new(Book.Text);
        walk.Go("C2").Ctrl('l').Type("fallfactor(");
        walk.Press(KeyName.Backspace);
        Assert.Contains("FallFactor", walk.Screen, StringComparison.Ordinal);
        walk.Press(KeyName.Enter);
        Assert.Contains("Factor(", ((Entering)walk.State.Mode).Entry.Typed.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Mouse_PressGoes_DragSelects_TwiceTypes_WheelScrolls()
    {
        using Walk walk = new(Book.Text);
        walk.Program.Handle(new Click(40, 3));
        Assert.Equal("B2", walk.State.Open.Cursor.ToString());
        walk.Program.Handle(new Click(40, 5, IsDrag: true));
        Assert.Equal("B2 to B4", walk.State.Open.Block.ToString());
        walk.Program.Handle(new Click(9, 0));
        Assert.Equal("Other", walk.State.Open.SheetName);
        walk.Program.Handle(new Wheel(3));
        Assert.Equal("A4", walk.State.Open.Cursor.ToString());
        walk.Program.Handle(new Click(8, 2, IsDouble: true));
        Assert.IsType<Entering>(walk.State.Mode);
    }
}
