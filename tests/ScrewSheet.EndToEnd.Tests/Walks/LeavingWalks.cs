namespace ScrewSheet.EndToEnd.Tests.Walks;

/// <summary>However the program ends, the terminal is as it was and no entry is lost.</summary>
public sealed class LeavingWalks
{
    private const string Mistaken = "screwsheet 1\n\nsheet S\nA1 = 1\n";

    [Fact]
    public void LeavingWithChanges_AsksFirst()
    {
        using Desk desk = new();
        desk.Open("fall.screwsheet", Books.Fall).Go("C2").Line("5 kN").Sees("not saved").Press("C-q").Sees("save and leave").Press("Escape").SeesNot("save and leave");
        desk.Press("C-q").Type("s").Left(0);
        Assert.Contains("C2 = 5 kN\n", desk.Read("fall.screwsheet"), StringComparison.Ordinal);
    }

    [Fact]
    public void CtrlC_IsAKey_AndLeavesTheProgramRunning()
    {
        using Desk desk = new();
        desk.Open("fall.screwsheet", Books.Fall).Press("C-c").Sees("Copied A1").Type("x").Press("C-c").Sees("» x").Press("Escape").Leave();
    }

    [Theory]
    [InlineData("TERM")]
    [InlineData("INT")]
    [InlineData("HUP")]
    public void StoppedBySignal_TheTerminalIsRestored_AndTheWorkKept(string signal)
    {
        using Desk desk = new(160, 24);
        desk.Open("fall.screwsheet", Books.Fall).Go("C2").Line("5 kN").Sees("not saved").Type("6 kN").Sees("» 6 kN").Signal(signal);
        desk.Left(2).Sees("The changes that were not saved are in");
        string kept = File.ReadAllText(desk.At("state/screwsheet/rescued-1.screwsheet"));
        Assert.Contains("C2 = 5 kN\n", kept, StringComparison.Ordinal);
        Assert.Contains("C3 = 6 kN\n", kept, StringComparison.Ordinal);
        Assert.Equal(Books.Fall, desk.Read("fall.screwsheet"));
    }

    [Fact]
    public void AClosedTerminal_EndsTheProgram_WithTheWorkKept()
    {
        using Desk desk = new();
        desk.Open("fall.screwsheet", Books.Fall).Go("C2").Line("5 kN").Sees("not saved").Close();
        Assert.Contains("C2 = 5 kN\n", File.ReadAllText(desk.At("state/screwsheet/rescued-1.screwsheet")), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("here", 2)]
    [InlineData("elsewhere", 134)]
    public void AMistakeOfTheProgram_EndsIt_WithTheTerminalRestoredAndTheWorkKept(string place, int status)
    {
        using Desk desk = new(160, 50);
        desk.With("s.screwsheet", Mistaken).Start($"{place} s.screwsheet", Programs.Failing).Sees("‹S›").Go("A2").Line("5 kN").Sees("not saved").Press("C-c");
        desk.Left(status).Sees("The changes that were not saved are in").Sees("a mistake put in on purpose");
        Assert.Contains("A2 = 5 kN\n", File.ReadAllText(desk.At("state/screwsheet/rescued-1.screwsheet")), StringComparison.Ordinal);
    }

    [Fact]
    public void AMistakeInACalculation_IsASentence_AndTheWorkGoesOn()
    {
        using Desk desk = new(120, 30);
        desk.With("s.screwsheet", Mistaken).Start("calculation s.screwsheet", Programs.Failing).Sees("‹S›").Go("A2").Line("=> Mistaken(A1)").Sees("Your entries are safe; save them").Press("C-s").Sees("Saved").Leave();
        Assert.Contains("A2 => Mistaken(A1)", desk.Read("s.screwsheet"), StringComparison.Ordinal);
    }

    [Fact]
    public void AFileAnotherProgramChanged_IsNotOverwritten()
    {
        using Desk desk = new(120, 30);
        desk.Open("fall.screwsheet", Books.Fall).Go("C2").Line("5 kN").Sees("not saved");
        File.AppendAllText(desk.At("fall.screwsheet"), "A9 = 1\n");
        desk.Press("C-s").Sees("was changed by another program").Command("w").Line("other").Sees("Saved other.screwsheet").Leave();
        Assert.EndsWith("A9 = 1\n", desk.Read("fall.screwsheet"), StringComparison.Ordinal);
        Assert.Contains("C2 = 5 kN\n", desk.Read("other.screwsheet"), StringComparison.Ordinal);
    }

    [Fact]
    public void AVanishedFolder_IsASentence_AndTheWorkIsSavedElsewhere()
    {
        using Desk desk = new(120, 30);
        Directory.CreateDirectory(desk.At("there"));
        desk.Open("there/fall.screwsheet", Books.Fall).Go("C2").Line("5 kN").Sees("not saved");
        Directory.Delete(desk.At("there"), recursive: true);
        desk.Press("C-s").Sees("There is no file there/fall.screwsheet").Sees("not saved").Command("w").Line("here").Sees("Saved here.screwsheet").Leave();
    }

    [Fact]
    public void ADiskThatTakesNoMore_IsASentence_AndTheFileIsWhole()
    {
        using Desk desk = new(120, 30);
        // a limit of 512 bytes on each file: what is written beyond it is refused as on a full disk; the runtime itself must not need more for its code
        desk.With("fall.screwsheet", Books.Fall).Line("trap '' XFSZ; ulimit -f 1; export DOTNET_EnableWriteXorExecute=0").Start("fall.screwsheet").Sees("‹Fall›").Go("C2").Line("5 kN").Sees("not saved");
        desk.Press("C-s").Sees("cannot be written").Sees("not saved").Press("C-q").Type("d").Sees("[left 0]");
        Assert.Equal(Books.Fall, desk.Read("fall.screwsheet"));
        Assert.Empty(Directory.GetFiles(desk.Folder, ".*.tmp"));
    }
}
