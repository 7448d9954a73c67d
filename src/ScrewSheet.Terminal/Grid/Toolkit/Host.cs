using ScrewSheet.Terminal.Grid.Work;
using System.Runtime.InteropServices;
using Terminal.Gui.App;
using Terminal.Gui.Configuration;
using Terminal.Gui.Drivers;

namespace ScrewSheet.Terminal.Grid.Toolkit;

/// <summary>Takes the terminal, shows the grid, and gives the terminal back as it was, whatever happens.</summary>
internal sealed class Host
{
    // a terminal that is gone never says that it has nothing more to read, and the library reads on until it does
    private static readonly TimeSpan LongestStop = TimeSpan.FromSeconds(2);

    // a frame takes some milliseconds; a screen that draws no more needs no wait
    private static readonly TimeSpan LongestFrame = TimeSpan.FromMilliseconds(300);

    private readonly GridProgram program;
    private readonly TerminalMode mode = new();
    private int taken, stopping, ending, parked;

    private Host(GridProgram program) => this.program = program;

    /// <summary>Shows the grid until the reader leaves.</summary>
    /// <param name="program">The program.</param>
    /// <exception cref="UserMistake">There is no terminal.</exception>
    public static void Run(GridProgram program) => new Host(program).Show();

    /// <summary>Loads the toolkit without touching the terminal.</summary>
    public static void WarmUp()
    {
        _ = Driver.IsAttachedToTerminal(out _, out _);
        System.Runtime.CompilerServices.RuntimeHelpers.RunClassConstructor(typeof(Palette).TypeHandle);
        _ = Palette.Coloured[Screen.Ink.Plain];
    }

    private void Show()
    {
        if (!Driver.IsAttachedToTerminal(out _, out _)) throw new UserMistake("The grid needs a terminal. Without one, use screwsheet run FILE.");
        ForgetConfiguration();
        AppDomain.CurrentDomain.ProcessExit += Restore;
        AppDomain.CurrentDomain.UnhandledException += Failed;
        mode.Remember();
        Application.MaximumIterationsPerSecond = 60;
        IApplication app = Application.Create();
        try
        {
            app.Init(DriverRegistry.Names.ANSI);
            taken = 1;
            Loop(app);
        }
        finally
        {
            app.Dispose();
            taken = 0;
            AppDomain.CurrentDomain.ProcessExit -= Restore;
            AppDomain.CurrentDomain.UnhandledException -= Failed;
        }
    }

    private void Loop(IApplication app)
    {
        bool mono = app.Driver!.ColorCapabilities?.Capability == ColorCapabilityLevel.NoColor;
        using GridWindow window = new(program, mono);
        app.Iteration += (_, _) =>
        {
            Park();
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
            if (Interlocked.Exchange(ref stopping, 1) == 0) new Thread(GiveUp) { IsBackground = true }.Start();
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
        mode.Restore();
        try
        {
            using Stream output = Console.OpenStandardOutput();
            output.Write("\e[?2004l\e[?1003l\e[?1015l\e[?1006l\e[0m\e[?1049l\e[?25h"u8);
        }
        catch (IOException)
        {
            // the terminal is gone
        }
    }

    /// <summary>Ends the process where it was told to stop and does not come to its end by itself.</summary>
    private void GiveUp()
    {
        Thread.Sleep(LongestStop);
        if (Volatile.Read(ref taken) == 0) return;
        SaveAside("The grid was stopped from outside.");
        Environment.Exit(Commands.ExitCode.Refused);
    }

    /// <summary>Holds the screen still for good where another thread ends the process: it would draw over what is said last.</summary>
    private void Park()
    {
        if (Volatile.Read(ref ending) == 0) return;
        Volatile.Write(ref parked, 1);
        Thread.Sleep(System.Threading.Timeout.Infinite);
    }

    private void SaveAside(string what)
    {
        string? kept = program.Rescue();
        Volatile.Write(ref ending, 1);
        SpinWait.SpinUntil(() => Volatile.Read(ref parked) != 0, LongestFrame);
        Restore(this, EventArgs.Empty);
        try
        {
            if (kept is not null) Console.Error.WriteLine(GridStart.Kept(what, kept));
        }
        catch (IOException)
        {
            // nobody is there to read it
        }
    }

    /// <summary>A mistake on another thread ends the process at once; the work is put aside first.</summary>
    private void Failed(object sender, UnhandledExceptionEventArgs e)
    {
        if (Volatile.Read(ref taken) != 0) SaveAside("The grid stopped by a mistake of this program.");
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
