using ScrewSheet.Terminal.Grid.Work;
using System.Runtime.InteropServices;
using Terminal.Gui.App;
using Terminal.Gui.Configuration;
using Terminal.Gui.Drawing;
using Terminal.Gui.Drivers;

namespace ScrewSheet.Terminal.Grid.Toolkit;

/// <summary>Takes the terminal, shows the grid, and gives the terminal back as it was, whatever happens.</summary>
internal sealed class Host
{
    private int taken;

    /// <summary>Shows the grid until the reader leaves.</summary>
    /// <param name="program">The program.</param>
    /// <exception cref="UserMistake">There is no terminal.</exception>
    public static void Run(GridProgram program) => new Host().Show(program);

    private void Show(GridProgram program)
    {
        if (!Driver.IsAttachedToTerminal(out _, out _)) throw new UserMistake("The grid needs a terminal. Without one, use screwsheet run FILE.");
        ForgetConfiguration();
        AppDomain.CurrentDomain.ProcessExit += Restore;
        AppDomain.CurrentDomain.UnhandledException += Restore;
        Application.MaximumIterationsPerSecond = 60;
        IApplication app = Application.Create();
        try
        {
            app.Init(DriverRegistry.Names.ANSI);
            taken = 1;
            Loop(app, program);
        }
        finally
        {
            app.Dispose();
            taken = 0;
            AppDomain.CurrentDomain.ProcessExit -= Restore;
            AppDomain.CurrentDomain.UnhandledException -= Restore;
        }
    }

    private static void Loop(IApplication app, GridProgram program)
    {
        bool mono = app.Driver!.ColorCapabilities?.Capability == ColorCapabilityLevel.NoColor;
        using GridWindow window = new(program, mono);
        int stopping = 0;
        app.Iteration += (_, _) =>
        {
            // the library never clears this mark by itself and would send the cursor's place for ever
            app.Driver?.SetCursorNeedsUpdate(false);
            window.TakeArrived();
            if (Volatile.Read(ref stopping) != 0) window.RequestStop();
        };
        app.Paste += (_, paste) =>
        {
            window.Handle(new State.Paste(paste.Text ?? ""));
            paste.Handled = true;
        };
        program.Copied += text => app.Driver!.WriteRaw("\e]52;c;" + Convert.ToBase64String(System.Text.Encoding.UTF8.GetBytes(text)) + "\a");
        void Stop(PosixSignalContext context)
        {
            context.Cancel = true;
            Volatile.Write(ref stopping, 1);
        }

        using PosixSignalRegistration term = PosixSignalRegistration.Create(PosixSignal.SIGTERM, Stop), hangUp = PosixSignalRegistration.Create(PosixSignal.SIGHUP, Stop), interrupt = PosixSignalRegistration.Create(PosixSignal.SIGINT, Stop);
        app.Run(window, MayGoOn);
    }

    /// <summary>An unknown key sequence makes the library's parser throw; it recovers by itself.</summary>
    private static bool MayGoOn(Exception error) => error is NullReferenceException && (error.StackTrace ?? "").Contains("AnsiKeyboardParserPattern", StringComparison.Ordinal);

    /// <summary>Where the process ends without unwinding, the terminal still gets its own screen back.</summary>
    private void Restore(object? sender, EventArgs e)
    {
        if (Interlocked.Exchange(ref taken, 0) == 0) return;
        using Stream output = Console.OpenStandardOutput();
        output.Write("\e[?2004l\e[?1003l\e[?1015l\e[?1006l\e[0m\e[?1049l\e[?25h"u8);
    }

    /// <summary>The library reads settings from the current folder and the reader's home by itself; a workbook's folder must not rebind keys.</summary>
    private static void ForgetConfiguration()
    {
        string folder = Environment.CurrentDirectory;
        string? home = Environment.GetEnvironmentVariable("HOME"), settings = Environment.GetEnvironmentVariable("TUI_CONFIG");
        try
        {
            Surroundings(AppContext.BaseDirectory, AppContext.BaseDirectory, null);
            ThemeSettings.Defaults = new();
            TuiConfigurationBuilder.Shared.Reload();
            TuiConfigurationBuilder.Shared.ApplyToStaticFacades();
        }
        finally
        {
            Surroundings(folder, home, settings);
        }
    }

    private static void Surroundings(string folder, string? home, string? settings)
    {
        Environment.CurrentDirectory = folder;
        Environment.SetEnvironmentVariable("HOME", home);
        Environment.SetEnvironmentVariable("TUI_CONFIG", settings);
    }
}
