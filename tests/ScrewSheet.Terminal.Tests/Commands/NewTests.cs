namespace ScrewSheet.Terminal.Tests.Commands;

public sealed class NewTests
{
    [Fact]
    public void AnEmptyWorkbook_CanBeRun()
    {
        using Session session = new();
        Assert.Equal(0, session.Run("new", session.At("My anchor.screwsheet")));
        Assert.Equal("Made My anchor.screwsheet.\n", session.Output);
        Assert.Equal("screwsheet 1\ntitle My anchor\nunits SI\n\nsheet Sheet\n", File.ReadAllText(session.At("My anchor.screwsheet")));
        Assert.Equal(0, session.Run("run", session.At("My anchor.screwsheet")));
    }

    [Fact]
    public void AnExistingFileIsNeverTouched()
    {
        using Session session = new();
        string path = session.File("a.screwsheet", "mine");
        Assert.Equal(2, session.Run("new", path));
        Assert.Equal("screwsheet: a.screwsheet is there already and was left as it is. Choose another name.\n", session.Error);
        Assert.Equal("mine", File.ReadAllText(path));
    }

    [Fact]
    public void ALinkThatLeadsNowhereIsNotWrittenThrough()
    {
        using Session session = new();
        File.CreateSymbolicLink(session.At("a.screwsheet"), session.At("elsewhere"));
        Assert.Equal(2, session.Run("new", session.At("a.screwsheet")));
        Assert.False(File.Exists(session.At("elsewhere")));
    }

    [Fact]
    public void From_CopiesAShippedWorkbook()
    {
        using Session session = new();
        Directory.CreateDirectory(session.At("shipped"));
        session.File("shipped/short.screwsheet", Example.Text);
        Assert.Equal(0, session.Run("new", session.At("mine.screwsheet"), "--from", "short"));
        Assert.Equal(Example.Text, File.ReadAllText(session.At("mine.screwsheet")));
    }

    [Theory]
    [InlineData("long")]
    [InlineData("../a")]
    [InlineData("")]
    public void From_WhatIsNotShipped_IsRefused(string name)
    {
        using Session session = new();
        Directory.CreateDirectory(session.At("shipped"));
        session.File("shipped/short.screwsheet", Example.Text);
        session.File("a.screwsheet", Example.Text);
        Assert.Equal(2, session.Run("new", session.At("mine.screwsheet"), "--from", name));
        Assert.Equal($"screwsheet: No shipped workbook is called {(name.Length == 0 ? "\"\"" : name)}. There are: short.\n", session.Error);
        Assert.False(File.Exists(session.At("mine.screwsheet")));
    }
}
