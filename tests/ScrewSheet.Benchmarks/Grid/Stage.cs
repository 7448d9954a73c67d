using System.Runtime.CompilerServices;
using Terminal.Gui.App;
using Terminal.Gui.Drivers;
using Terminal.Gui.Input;
using Terminal.Gui.Testing;
using Terminal.Gui.Time;
using Terminal.Gui.Views;

namespace ScrewSheet.Benchmarks.Grid;

/// <summary>A window over the toolkit's own screen buffer: keys go in, and the screen is laid out and drawn. No terminal takes part.</summary>
internal sealed class Stage : IDisposable
{
    private readonly IApplication app;
    private readonly SessionToken token;
    private readonly Runnable window;

    public Stage(Runnable window, int width, int height)
    {
        this.window = window;
        app = Application.Create(new VirtualTimeProvider());
        app.Init(DriverRegistry.Names.ANSI);
        app.Driver!.SetScreenSize(width, height);
        token = app.Begin(window)!;
        app.LayoutAndDraw();
        app.LayoutAndDraw();
    }

    [ModuleInitializer]
    internal static void WithoutTerminal() => Environment.SetEnvironmentVariable("DisableRealDriverIO", "1");

    /// <summary>The screen's text.</summary>
    public string Text => app.Driver!.ToString()!;

    /// <summary>One key, and the finished screen.</summary>
    public void Press(Key key)
    {
        app.InjectKey(key);
        app.LayoutAndDraw();
    }

    /// <summary>The screen once more.</summary>
    public void Draw() => app.LayoutAndDraw();

    public void Dispose()
    {
        app.End(token);
        window.Dispose();
        app.Dispose();
    }
}
