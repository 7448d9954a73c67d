using System.Drawing;
using ScrewSheet.Terminal.Grid.Screen;
using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Terminal.Grid.Work;
using Terminal.Gui.Drivers;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;
using Terminal.Gui.Views;

namespace ScrewSheet.Terminal.Grid.Toolkit;

/// <summary>The one view: hands every key, press and paste on as an input and paints the picture of the state.</summary>
internal sealed class GridWindow : Runnable
{
    private readonly GridProgram program;
    private readonly bool mono;
    private bool isDrawn;

    /// <summary>Of a program; without colours where <paramref name="mono"/>.</summary>
    public GridWindow(GridProgram program, bool mono)
    {
        this.program = program;
        this.mono = mono;
        CanFocus = true;
        Width = Dim.Fill();
        Height = Dim.Fill();
    }

    /// <summary>Takes an input in and has the screen painted.</summary>
    public void Handle(Input input)
    {
        program.Handle(input);
        Refresh();
    }

    /// <summary>Takes in what the calculation found out; to be called now and then from the thread of the views.</summary>
    public void TakeArrived()
    {
        if (isDrawn) program.Shown();
        if (program.TakeArrived()) Refresh();
    }

    /// <inheritdoc/>
    protected override bool OnKeyDown(Key key)
    {
        if (KeyTranslation.Of(key) is { } press) Handle(press);
        return true;
    }

    /// <inheritdoc/>
    protected override bool OnMouseEvent(Mouse mouse)
    {
        if (mouse.Position is not { } at) return false;
        MouseFlags flags = mouse.Flags;
        if (flags.HasFlag(MouseFlags.WheeledDown)) Handle(new Wheel(3));
        else if (flags.HasFlag(MouseFlags.WheeledUp)) Handle(new Wheel(-3));
        else if (flags.HasFlag(MouseFlags.LeftButtonDoubleClicked)) Handle(new Click(at.X, at.Y, IsDouble: true));
        else if (flags.HasFlag(MouseFlags.LeftButtonPressed)) Handle(new Click(at.X, at.Y, IsDrag: flags.HasFlag(MouseFlags.PositionReport)));
        else return false;
        return true;
    }

    /// <inheritdoc/>
    protected override void OnViewportChanged(DrawEventArgs e)
    {
        base.OnViewportChanged(e);
        if (e.NewViewport.Size != Size.Empty) program.Handle(new Resize(e.NewViewport.Width, e.NewViewport.Height));
    }

    /// <inheritdoc/>
    protected override bool OnClearingViewport() => true;

    /// <inheritdoc/>
    protected override bool OnDrawingContent(DrawContext? context)
    {
        if (program.State.Width != Viewport.Width || program.State.Height != Viewport.Height) program.Handle(new Resize(Viewport.Width, Viewport.Height));
        Picture picture = Painter.Of(program.State);
        isDrawn = true;
        Palette palette = mono ? Palette.Plain : Palette.Coloured;
        CellWriter writer = new(this);
        for (int y = 0; y < picture.Lines.Length; y++)
        {
            int x = 0;
            foreach (Segment segment in picture.Lines[y].Segments) x += writer.Put(x, y, segment.Text, Output.DisplayWidth.Of(segment.Text), palette[segment.Ink]);
        }
        Cursor = picture.Caret is { } caret ? new Cursor { Position = ViewportToScreen(new Point(caret.Column, caret.Line)), Style = CursorStyle.SteadyBar } : new Cursor { Position = null };
        return true;
    }

    private void Refresh()
    {
        if (program.HasLeft) RequestStop();
        SetNeedsDraw();
    }
}
