using System.Diagnostics;
using System.Text;

namespace ScrewSheet.Benchmarks.Grid;

/// <summary>From the start of the process to the first screen with the grid, against a .NET program that prints one line; each in a terminal of its own, both published with code compiled ahead.</summary>
internal static class FirstFrame
{
    private const int Repeats = 15;

    public static void Run()
    {
        DirectoryInfo folder = Directory.CreateTempSubdirectory("screwsheet-frame");
        try
        {
            string ours = ColdStart.Publish("src/ScrewSheet.Terminal", Path.Combine(folder.FullName, "ours"), "screwsheet");
            string theirs = ColdStart.Publish("tests/ScrewSheet.Benchmarks/OneLine", Path.Combine(folder.FullName, "theirs"), "ScrewSheet.OneLine");
            string workbook = Path.Combine(folder.FullName, "twenty.screwsheet"), state = Path.Combine(folder.FullName, "screwsheet");
            File.WriteAllText(workbook, Twenty.Text);
            Directory.CreateDirectory(state);
            File.WriteAllText(Path.Combine(state, "cautions-read"), "");
            Sample our = new(), their = new();
            for (int i = -2; i < Repeats; i++)
            {
                double a = Shown($"'{ours}' '{workbook}'", "help", folder.FullName), b = Shown($"'{theirs}'", "one line", folder.FullName);
                if (i < 0) continue; // files come from the disk the first times
                our.Add(a);
                their.Add(b);
            }
            Report.Ratio("first-frame", our.Median / their.Median, $"{our.Median:F0} ms", $"{their.Median:F0} ms", 10, $"medians of {Repeats}; least {our.Least:F0} / {their.Least:F0} ms = {our.Least / their.Least:G3}");
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    /// <summary>Until the terminal was sent a text: of the grid the line of keys, which is drawn last.</summary>
    private static double Shown(string command, string text, string state)
    {
        // util-linux's script gives it a terminal and hands on what it is sent
        ProcessStartInfo info = new("script", ["-qfec", $"stty cols 80 rows 24; exec {command}", "/dev/null"]) { RedirectStandardOutput = true, RedirectStandardInput = true };
        info.Environment["XDG_STATE_HOME"] = state;
        info.Environment.Remove("DisableRealDriverIO"); // that is for the measurements in this process
        info.Environment["TERM"] = "xterm-256color";
        long start = Stopwatch.GetTimestamp();
        using Process process = Process.Start(info)!;
        StringBuilder seen = new();
        char[] piece = new char[8192];
        while (!seen.ToString().Contains(text, StringComparison.Ordinal))
        {
            int read = process.StandardOutput.Read(piece, 0, piece.Length);
            if (read == 0) throw new InvalidOperationException($"{command} did not show \"{text}\":\n{seen}");
            seen.Append(piece, 0, read);
        }
        double time = Stopwatch.GetElapsedTime(start).TotalMilliseconds;
        process.Kill(entireProcessTree: true);
        process.WaitForExit();
        return time;
    }
}
