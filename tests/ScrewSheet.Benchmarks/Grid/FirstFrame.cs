using System.Diagnostics;
using System.Text;

namespace ScrewSheet.Benchmarks.Grid;

/// <summary>From the start of the process to the first screen with the grid in a terminal of its own, against a .NET program that prints one line; both published with code compiled ahead.</summary>
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
                double a = Frame(ours, workbook, folder.FullName), b = ColdStart.Process(theirs);
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

    /// <summary>Until the terminal was sent the line of keys, which is drawn last.</summary>
    private static double Frame(string program, string workbook, string state)
    {
        // util-linux's script gives it a terminal and hands on what it is sent
        ProcessStartInfo info = new("script", ["-qfec", $"stty cols 80 rows 24; exec '{program}' '{workbook}'", "/dev/null"]) { RedirectStandardOutput = true, RedirectStandardInput = true };
        info.Environment["XDG_STATE_HOME"] = state;
        info.Environment.Remove("DisableRealDriverIO"); // that is for the measurements in this process
        info.Environment["TERM"] = "xterm-256color";
        long start = Stopwatch.GetTimestamp();
        using Process process = Process.Start(info)!;
        StringBuilder seen = new();
        char[] piece = new char[8192];
        while (!seen.ToString().Contains("help", StringComparison.Ordinal))
        {
            int read = process.StandardOutput.Read(piece, 0, piece.Length);
            if (read == 0) throw new InvalidOperationException($"No grid was shown:\n{seen}");
            seen.Append(piece, 0, read);
        }
        double time = Stopwatch.GetElapsedTime(start).TotalMilliseconds;
        process.Kill(entireProcessTree: true);
        process.WaitForExit();
        return time;
    }
}
