namespace ScrewSheet.EndToEnd.Tests.Walks;

/// <summary>Killed as no program can prevent, the grid offers what was typed.</summary>
public sealed class RecoveryWalks
{
    [Fact]
    public void Killed_WhatWasTypedIsOffered_TakenAndSaved_AndThenNothingIsOffered()
    {
        using Desk desk = new(120, 24);
        desk.Open("fall.screwsheet", Books.Fall).Go("C2").Line("5 kN").Sees("not saved").HoldsUnsaved("C2 = 5 kN\n").Killed();
        Assert.Equal(Books.Fall, desk.Read("fall.screwsheet"));
        desk.Start("fall.screwsheet").Sees("1 change of").Sees("was not saved").Type("l").Sees("Fall.C2").Press("Enter").Sees("P  put them away").Type("t").Sees("Took 1 change in").Press("C-s").Sees("Saved fall.screwsheet").Leave();
        Assert.Contains("C2 = 5 kN\n", desk.Read("fall.screwsheet"), StringComparison.Ordinal);
        desk.Start("fall.screwsheet").Sees("‹Fall›").SeesNot("calculating");
        Assert.DoesNotContain("not saved", desk.Screen, StringComparison.Ordinal);
        desk.Leave();
        Assert.Empty(Directory.GetFiles(desk.At("state/screwsheet/unsaved")));
    }
}
