using ScrewSheet.Workbooks.Expressions;

namespace ScrewSheet.Terminal.Tests.Versions;

/// <summary>How <c>merge</c> writes and ends; what it makes of the versions is tested with the workbooks.</summary>
public sealed class MergeCommandTests
{
    private const string Base = "screwsheet 1\nsheet A\nB1 x = 3 kN\nB2 y = 4 kN\nB3 sum => x + y\nB4 twice => 2 * sum\nB5 alone => 2 * y\n";

    [Fact]
    public void ChangesOfBothAreWrittenToANewFile()
    {
        using Session session = Versions(Base.Replace("3 kN", "5 kN"), Base.Replace("4 kN", "6 kN"));
        Assert.Equal(0, Merge(session, "out"));
        Assert.Equal("Merged into out.\n", session.Output);
        Assert.Equal(Base.Replace("3 kN", "5 kN").Replace("4 kN", "6 kN"), File.ReadAllText(session.At("out")));
    }

    [Fact]
    public void AConflictEndsWith1AndNoResultThatDependsOnItHasAValue()
    {
        using Session session = Versions(Base.Replace("3 kN", "5 kN"), Base.Replace("3 kN", "6 kN"));
        Assert.Equal(1, Merge(session, "out"));
        Assert.Equal("conflict: A.B1: Two versions of this cell meet here: ours is x = 5 kN, theirs is x = 6 kN.\n"
            + "Merged into out with 1 conflict. It is in the file as a fault with both versions: choose one of them.\n", session.Output);
        using Session run = new() { Calculator = new EngineCalculator(FunctionLibrary.Of()) };
        Assert.Equal(1, run.Run("run", session.At("out"), "--format", "csv"));
        string[] lines = run.Output.Split('\n');
        Assert.All(lines.Where(line => line.StartsWith("A,B1,", StringComparison.Ordinal) || line.StartsWith("A,B3,", StringComparison.Ordinal) || line.StartsWith("A,B4,", StringComparison.Ordinal)), line => Assert.DoesNotContain("kN,", line.Replace("= 5 kN,", "").Replace("= 6 kN,", ""), StringComparison.Ordinal));
        Assert.Contains(lines, line => line.StartsWith("A,B3,sum,result,", StringComparison.Ordinal) && line.Contains("It waits for x, which is in fault.", StringComparison.Ordinal));
        Assert.Contains(lines, line => line.StartsWith("A,B5,alone,result,Force,8,kN,", StringComparison.Ordinal));
    }

    [Fact]
    public void OursMayBeWrittenOver()
    {
        using Session session = Versions(Base.Replace("3 kN", "5 kN"), Base.Replace("4 kN", "6 kN"));
        Assert.Equal(0, Merge(session, "ours"));
        Assert.Equal(Base.Replace("3 kN", "5 kN").Replace("4 kN", "6 kN"), File.ReadAllText(session.At("ours")));
    }

    [Theory]
    [InlineData("base"), InlineData("theirs"), InlineData("other")]
    public void NoOtherFileIsWrittenOver(string output)
    {
        using Session session = Versions(Base.Replace("3 kN", "5 kN"), Base.Replace("4 kN", "6 kN"));
        session.File("other", "mine");
        string before = File.ReadAllText(session.At(output));
        Assert.Equal(2, Merge(session, output));
        Assert.Equal($"screwsheet: {output} is there already and was left as it is. Choose another name.\n", session.Error);
        Assert.Equal(before, File.ReadAllText(session.At(output)));
    }

    [Theory]
    [InlineData("missing", "ours", "theirs", "There is no file missing. Check the spelling and the folder.")]
    [InlineData("base", "folder", "theirs", "folder is a folder, not a workbook. Name a file inside it.")]
    [InlineData("base", "ours", "table", "table: The first line does not read screwsheet 1, so this is no workbook. Open another file, or put the line back. (line 1, column 1)")]
    [InlineData("base", "ours", "ours", "OURS and THEIRS are the same file, ours. Name two versions.")]
    [InlineData("base", "open", "theirs", "Ours holds a conflict at B2 that is not resolved, and the other version changes the same cell. Resolve it first, then merge. Nothing was written.")]
    public void WhatCannotBeMergedIsASentenceAndNothingIsWritten(string origin, string ours, string theirs, string sentence)
    {
        using Session session = Versions(Base.Replace("3 kN", "5 kN"), Base.Replace("4 kN", "6 kN"));
        session.File("table", "a,b\n1,2\n");
        session.File("open", Base.Replace("B2 y = 4 kN", "B2 conflict\n  ours = 1 kN\n  theirs = 2 kN"));
        Directory.CreateDirectory(session.At("folder"));
        Assert.Equal(2, session.Run("merge", session.At(origin), session.At(ours), session.At(theirs), "-o", session.At("out")));
        Assert.Equal($"screwsheet: {sentence}\n", session.Error);
        Assert.False(File.Exists(session.At("out")));
    }

    [Fact]
    public void WithoutACommonVersionAnEmptyFileStandsForIt()
    {
        using Session session = Versions(Base, Base + "B6 more = 1\n");
        session.File("base", "");
        Assert.Equal(0, Merge(session, "out"));
        Assert.Equal(Base + "B6 more = 1\n", File.ReadAllText(session.At("out")));
    }

    private static Session Versions(string ours, string theirs)
    {
        Session session = new() { Width = 300 };
        session.File("base", Base);
        session.File("ours", ours);
        session.File("theirs", theirs);
        return session;
    }

    private static int Merge(Session session, string output) => session.Run("merge", session.At("base"), session.At("ours"), session.At("theirs"), "-o", session.At(output));
}
