using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;
using Terminal.Gui.Views;

namespace ScrewSheet.Benchmarks.Grid;

/// <summary>A window as the toolkit draws it by itself, in which each key changes one cell.</summary>
internal sealed class BareWindow : Runnable
{
    private int keys;

    public BareWindow()
    {
        CanFocus = true;
        Width = Dim.Fill();
        Height = Dim.Fill();
    }

    protected override bool OnKeyDown(Key key)
    {
        keys++;
        SetNeedsDraw();
        return true;
    }

    protected override bool OnDrawingContent(DrawContext? context)
    {
        Move(Viewport.Width / 2, Viewport.Height / 2);
        AddStr(((char)('a' + (keys % 26))).ToString());
        return true;
    }
}
