using System.Runtime.CompilerServices;
using ScrewSheet.Terminal.Grid.Screen;
using ScrewSheet.Terminal.Grid.Toolkit;
using Terminal.Gui.App;
using Terminal.Gui.Drawing;
using Terminal.Gui.Drivers;
using Terminal.Gui.Time;
using Attribute = Terminal.Gui.Drawing.Attribute;

namespace ScrewSheet.Terminal.Tests.Grid;

/// <summary>The view over the toolkit's own screen buffer, keys as a terminal sends them.</summary>
public sealed class WindowTests
{
    [ModuleInitializer]
    internal static void WithoutTerminal()
    {
        Environment.SetEnvironmentVariable("DisableRealDriverIO", "1");
        Application.MaximumIterationsPerSecond = 1000;
    }

    [Fact]
    public void TheScreenBuffer_HoldsThePicture()
    {
        using Shown shown = new(Book.Text, 80, 24);
        string[] picture = [.. Painter.Of(shown.Walk.State).Lines.Select(line => line.Text.TrimEnd())];
        Assert.Equal(picture, Enumerable.Range(0, 24).Select(shown.Line));
    }

    [Theory]
    [InlineData("👍🏽 ab")]
    [InlineData("表計算の本 and more words")]
    [InlineData("e\u0301te\u0301")]
    [InlineData("עברית ab")]
    [InlineData("각각")]
    public void WhateverStandsBeside_ACellKeepsItsColumn(string words)
    {
        using Shown shown = new($"screwsheet 1\n\nsheet S\nA1 \"{words}\"\nB1 = 1 kN\n", 80, 24);
        Assert.Equal("›", shown.GraphemeAt(6 + 14, 2));
        Assert.Equal("N", shown.GraphemeAt(6 + 14 + 12, 2));
    }

    [Fact]
    public void BytesOfATerminal_MoveTypeAndPutIn()
    {
        using Shown shown = new(Book.Text, 80, 24);
        shown.Raw("\e[B\e[B\e[C\e[C");
        Assert.Equal("C3", shown.Walk.State.Open.Cursor.ToString());
        shown.Raw("=> peak * 2\r");
        Assert.Equal("=> peak * 2", shown.Walk.Entry("C3"));
        shown.Raw("\e[1;2B\e[1;2C");
        Assert.Equal("C4 to D5", shown.Walk.State.Open.Block.ToString());
        shown.Raw("\x13");
        Assert.Contains("Saved", shown.Line(22), StringComparison.Ordinal);
    }

    [Fact]
    public void TheCellUnderTheCursor_IsReversed_InColoursAndWithout()
    {
        foreach (bool mono in new[] { false, true })
        {
            using Shown shown = new(Book.Text, 80, 24, mono);
            shown.Raw("\e[B\e[C");
            Assert.True(shown.AttributeAt(40, 3).Style.HasFlag(TextStyle.Reverse));
            Assert.False(shown.AttributeAt(40, 4).Style.HasFlag(TextStyle.Reverse));
        }
    }

    [Fact]
    public void WithoutColours_NoColourIsUsed()
    {
        using Shown shown = new(Book.Text, 80, 24, mono: true);
        for (int y = 0; y < 24; y++)
        {
            for (int x = 0; x < 80; x++) Assert.Equal((Color.None, Color.None), (shown.AttributeAt(x, y).Foreground, shown.AttributeAt(x, y).Background));
        }
    }

    [Fact]
    public void AnotherSize_IsPaintedWhole()
    {
        using Shown shown = new(Book.Text, 80, 24);
        shown.App.Driver!.SetScreenSize(200, 50);
        shown.App.LayoutAndDraw();
        shown.App.LayoutAndDraw();
        Assert.Equal((200, 50), (shown.Walk.State.Width, shown.Walk.State.Height));
        Assert.Contains("? help", shown.Line(49), StringComparison.Ordinal);
    }

    private sealed class Shown : IDisposable
    {
        private readonly SessionToken token;

        public Shown(string text, int width, int height, bool mono = false)
        {
            Walk = new Walk(text, width, height);
            App = Application.Create(new VirtualTimeProvider());
            App.Init(DriverRegistry.Names.ANSI);
            App.Driver!.SetScreenSize(width, height);
            Window = new GridWindow(Walk.Program, mono);
            token = App.Begin(Window)!;
            App.LayoutAndDraw();
        }

        public Walk Walk { get; }

        public IApplication App { get; }

        public GridWindow Window { get; }

        public void Raw(string bytes)
        {
            var input = (AnsiInputProcessor)App.Driver!.GetInputProcessor();
            foreach (char c in bytes) input.InputQueue.Enqueue(c);
            input.ProcessQueue();
            App.LayoutAndDraw();
        }

        public string Line(int y) => App.Driver!.ToString()!.Split(Environment.NewLine)[y].TrimEnd();

        public string GraphemeAt(int x, int y) => App.Driver!.Contents![y, x].Grapheme;

        public Attribute AttributeAt(int x, int y) => App.Driver!.Contents![y, x].Attribute!.Value;

        public void Dispose()
        {
            App.End(token);
            Window.Dispose();
            App.Dispose();
            Walk.Dispose();
        }
    }
}
