using System.Diagnostics;
using System.Globalization;

namespace ScrewSheet.EndToEnd.Tests;

/// <summary>A person at a terminal with a folder of files: starts the program from a shell, presses keys, looks at the screen.</summary>
internal sealed class Desk : IDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(30);
    private readonly Tmux tmux;

    public Desk(int width = 80, int height = 24, bool cautionsRead = true, bool colour = true)
    {
        Directory.CreateDirectory(At("state/screwsheet"));
        if (cautionsRead) File.WriteAllText(At("state/screwsheet/cautions-read"), "");
        Dictionary<string, string> surroundings = new() { ["XDG_STATE_HOME"] = At("state"), ["LC_ALL"] = "C.UTF-8", ["PS1"] = "$ ", ["DOTNET_TieredPGO"] = "0" };
        if (!colour) surroundings["NO_COLOR"] = "1";
        tmux = new Tmux(width, height, surroundings);
        Line($"cd {Folder}");
    }

    /// <summary>The folder.</summary>
    public string Folder { get; } = Directory.CreateTempSubdirectory("screwsheet-desk-").FullName;

    /// <summary>What the screen shows now.</summary>
    public string Screen => tmux.Run("capture-pane", "-p");

    /// <summary>The same with the codes of colours and styles.</summary>
    public string Styled => tmux.Run("capture-pane", "-p", "-e");

    public string At(string name) => Path.Combine(Folder, name);

    public string Read(string name) => File.ReadAllText(At(name));

    /// <summary>Puts a workbook into the folder.</summary>
    public Desk With(string name, string text)
    {
        File.WriteAllText(At(name), text);
        return this;
    }

    /// <summary>Starts the program; the shell says with which status it ended.</summary>
    public Desk Start(string arguments = "", string? program = null) => Line($"clear; stty -g > before; {program ?? Programs.Screwsheet} {arguments}; echo \"[left $?]\"; stty -g > after");

    /// <summary>Starts it with a workbook and waits for the grid and its results.</summary>
    public Desk Open(string name, string text)
    {
        With(name, text).Start(name);
        Sees("‹");
        return SeesNot("calculating");
    }

    /// <summary>Types characters.</summary>
    public Desk Type(string text)
    {
        tmux.Run("send-keys", "-l", "--", text);
        return this;
    }

    /// <summary>Presses keys by tmux's names: Enter, Down, S-Right, C-z.</summary>
    public Desk Press(params string[] keys)
    {
        foreach (string key in keys)
        {
            tmux.Run("send-keys", key);
            // a key right behind Escape would be one with Alt, on a busy machine also one that comes a little later
            if (key == "Escape") Thread.Sleep(350);
        }
        return this;
    }

    /// <summary>Types a line and presses Enter.</summary>
    public Desk Line(string text) => Type(text).Press("Enter");

    /// <summary>Goes to a cell.</summary>
    public Desk Go(string place) => Press("C-g").Line(place);

    /// <summary>Space and a letter.</summary>
    public Desk Command(string letter) => Type(" ").Type(letter);

    /// <summary>Sends bytes as a terminal would.</summary>
    public Desk Bytes(string bytes)
    {
        tmux.Run(["send-keys", "-H", .. bytes.Select(c => ((int)c).ToString("x2", CultureInfo.InvariantCulture))]);
        return this;
    }

    /// <summary>Pastes a text the way terminals paste.</summary>
    public Desk Paste(string text)
    {
        tmux.Run("set-buffer", "--", text);
        tmux.Run("paste-buffer", "-p");
        return this;
    }

    public Desk Resize(int width, int height)
    {
        tmux.Run("resize-window", "-x", $"{width}", "-y", $"{height}");
        return this;
    }

    /// <summary>Waits until the screen holds a text.</summary>
    public Desk Sees(string text) => Until(screen => screen.Contains(text, StringComparison.Ordinal), $"to see {text}");

    /// <summary>Waits until it holds it no more.</summary>
    public Desk SeesNot(string text) => Until(screen => !screen.Contains(text, StringComparison.Ordinal), $"to see no {text}");

    /// <summary>Waits until the line of keys is the last of so many lines.</summary>
    public Desk Until(int height) => Until(screen => screen.Split('\n') is var lines && lines.Length > height - 1 && (lines[height - 1].Contains("Enter ", StringComparison.Ordinal) || lines[height - 1].Contains("Esc", StringComparison.Ordinal)), $"the keys on line {height}");

    /// <summary>Waits until a file is there and holds a text.</summary>
    public Desk Holds(string name, string text) => Until(_ => File.Exists(At(name)) && Read(name).Contains(text, StringComparison.Ordinal), $"{name} to hold {text}; it holds {(File.Exists(At(name)) ? Read(name) : "nothing")}");

    /// <summary>Waits until a journal of what is not saved holds a text.</summary>
    public Desk HoldsUnsaved(string text)
    {
        string folder = At("state/screwsheet/unsaved");
        return Until(_ => Directory.Exists(folder) && Directory.GetFiles(folder, "*.unsaved").Any(file => File.ReadAllText(file).Contains(text, StringComparison.Ordinal)), $"a journal to hold {text}");
    }

    /// <summary>Kills the program, so that it can put nothing in order, and puts the terminal in order in its place.</summary>
    public Desk Killed()
    {
        Signal("KILL").Sees("[left 137]");
        // the terminal sends Enter as it is, until it is told otherwise
        Type("stty sane; printf '\\033[?1049l\\033[?1003l\\033[?1006l\\033[?2004l\\033[?25h'").Press("C-j");
        return this;
    }

    /// <summary>Waits until the program ended, and holds the terminal against what it was.</summary>
    public Desk Left(int status)
    {
        Sees($"[left {status}]");
        return Until(_ => File.Exists(At("after")) && Read("after").Length > 0 && Modes() == "0 1 0 0" && Read("before") == Read("after"),
            $"the terminal to be as before; alternate screen, cursor, mouse, bracketed keys: {Modes()}");
    }

    /// <summary>Leaves with Ctrl+Q; nothing may be unsaved.</summary>
    public Desk Leave() => Press("C-q").Left(0);

    /// <summary>Closes the terminal under the program and waits for the program to end.</summary>
    public Desk Close()
    {
        string running = Running;
        tmux.Dispose();
        return Ended(running) ? this : throw new InvalidOperationException("The program goes on without a terminal.");
    }

    /// <summary>Sends the running program a signal.</summary>
    public Desk Signal(string signal)
    {
        using Process kill = Process.Start("kill", ["-" + signal, Running]);
        kill.WaitForExit();
        Assert.Equal(0, kill.ExitCode);
        return this;
    }

    public void Dispose()
    {
        if (!tmux.IsClosed)
        {
            string running = Running;
            tmux.Dispose();
            if (running.Length > 0 && !Ended(running)) Process.GetProcessById(int.Parse(running, CultureInfo.InvariantCulture)).Kill();
        }
        Directory.Delete(Folder, recursive: true);
    }

    /// <summary>The process the shell waits for; empty where it waits for none.</summary>
    private string Running
    {
        get
        {
            string shell = tmux.Run("display-message", "-p", "#{pane_pid}").Trim();
            return File.ReadAllText($"/proc/{shell}/task/{shell}/children").Trim();
        }
    }

    private static bool Ended(string process)
    {
        for (int i = 0; i < 100 && Directory.Exists($"/proc/{process}"); i++) Thread.Sleep(50);
        return !Directory.Exists($"/proc/{process}");
    }

    private string Modes() => tmux.Run("display-message", "-p", "#{alternate_on} #{cursor_flag} #{mouse_any_flag} #{mouse_sgr_flag}").Trim();

    private Desk Until(Func<string, bool> holds, string what)
    {
        Stopwatch watch = Stopwatch.StartNew();
        string screen = Screen;
        while (!holds(screen))
        {
            Assert.True(watch.Elapsed < Patience, $"waited for {what}; the screen is\n{screen}");
            Thread.Sleep(25);
            screen = Screen;
        }
        return this;
    }
}
