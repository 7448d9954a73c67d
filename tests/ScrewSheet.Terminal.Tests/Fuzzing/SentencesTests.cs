using ScrewSheet.Fuzzing;
using ScrewSheet.Workbooks.Diagnostics;

namespace ScrewSheet.Terminal.Tests.Fuzzing;

/// <summary>What the targets look at is seen: a fuzzer whose promises cannot break finds nothing.</summary>
public sealed class SentencesTests
{
    private static readonly string[] Lines = ["screwsheet 1", "sheet A", "A1 = 3 m"];

    [Theory]
    [InlineData(3, 9, 0, true)]
    [InlineData(3, 6, 3, true)]
    [InlineData(1, 1, 0, true)]
    [InlineData(3, 10, 0, false)]
    [InlineData(3, 6, 4, false)]
    [InlineData(4, 1, 0, false)]
    [InlineData(0, 1, 0, false)]
    [InlineData(1, 0, 0, false)]
    [InlineData(1, 1, -1, false)]
    public void AFaultStandsInsideTheText(int line, int column, int length, bool inside)
    {
        Fault fault = new(1020, FaultKind.Format, "It is wrong.", null, new Place(line, column, length));
        Assert.Equal(inside ? null : typeof(BrokenPromiseException), Record.Exception(() => Sentences.Check(fault, Lines))?.GetType());
    }

    [Theory]
    [InlineData("It is wrong.", true)]
    [InlineData("Did you mean A1?", true)]
    [InlineData("", false)]
    [InlineData("It is wrong", false)]
    [InlineData("Value cannot be null. (Parameter 'x')", false)]
    [InlineData("It failed: System.IO.IOException.", false)]
    [InlineData("It is wrong   at Reader.Read() in Reader.cs:line 3.", false)]
    [InlineData("Could not load mine.dll.", false)]
    public void AFaultSpeaksToPeople(string words, bool plain) => Assert.Equal(plain, Record.Exception(() => Sentences.CheckWords(words, Lines)) is null);

    [Fact]
    public void AFaultNamesNoFolderOfTheMachine() => Assert.Throws<BrokenPromiseException>(() => Sentences.CheckWords($"{AppContext.BaseDirectory}x cannot be read.", Lines));

    [Fact]
    public void WhatTheReaderWroteMayBeQuoted() => Sentences.CheckWords("System.IO is not known.", ["A1 => System.IO.File"]);
}
