using System.Diagnostics;
using ScrewSheet.TestKit;

namespace ScrewSheet.Safety.Tests;

/// <summary>How a run of the program went.</summary>
/// <param name="Status">Its exit status; -1 where it had to be ended.</param>
/// <param name="Time">How long it took.</param>
/// <param name="Peak">The most memory it had, in bytes.</param>
/// <param name="Said">What it printed, both streams, the first of it.</param>
internal sealed record Measured(int Status, TimeSpan Time, long Peak, string Said)
{
    private const int Kept = 8 * 1024 * 1024;
    private const long Far = 3L << 30;

    /// <summary>Runs the product; ends it where it takes longer than the patience or far too much memory.</summary>
    public static Measured Run(string folder, TimeSpan patience, params string[] args)
    {
        ProcessStartInfo start = new(BuiltPrograms.At("ScrewSheet.Terminal", "screwsheet"), args) { RedirectStandardOutput = true, RedirectStandardError = true, WorkingDirectory = folder };
        Stopwatch watch = Stopwatch.StartNew();
        using Process process = Process.Start(start)!;
        Task<string> output = First(process.StandardOutput), error = First(process.StandardError);
        long peak = 0;
        bool ended = false;
        while (!process.WaitForExit(10))
        {
            peak = Math.Max(peak, PeakOf(process.Id));
            if (ended || (watch.Elapsed < patience && peak < Far)) continue;
            ended = true;
            process.Kill();
        }
        return new Measured(ended ? -1 : process.ExitCode, watch.Elapsed, peak, output.Result + error.Result);
    }

    /// <summary>The beginning of a stream; the rest is read and forgotten.</summary>
    private static Task<string> First(StreamReader stream) => Task.Run(() =>
    {
        char[] block = new char[64 * 1024];
        System.Text.StringBuilder first = new();
        for (int got = stream.Read(block); got > 0; got = stream.Read(block))
            if (first.Length < Kept) first.Append(block, 0, got);
        return first.ToString();
    });

    /// <summary>The high-water mark of resident memory, which the system keeps: looking seldom misses nothing but the last moment.</summary>
    private static long PeakOf(int process)
    {
        try
        {
            string? line = File.ReadLines($"/proc/{process}/status").FirstOrDefault(line => line.StartsWith("VmHWM:", StringComparison.Ordinal));
            return line is null ? 0 : long.Parse(line.AsSpan(6, line.Length - 8).Trim(), System.Globalization.CultureInfo.InvariantCulture) * 1024;
        }
        catch (IOException)
        {
            return 0;
        }
    }
}
