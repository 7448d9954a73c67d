using System.Diagnostics;
using System.Runtime.InteropServices;
using ScrewSheet.Terminal.Files;

namespace ScrewSheet.Terminal.Handouts;

/// <summary>Prints an HTML handout to PDF with a browser found on the machine.</summary>
internal static class Printing
{
    /// <summary>The environment variable that says where the browser is.</summary>
    public const string Variable = "SCREWSHEET_BROWSER";

    private static readonly string[] Names = ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable", "chrome"];

    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(60);

    /// <summary>The browser.</summary>
    /// <param name="named">What <see cref="Variable"/> says, or null.</param>
    /// <param name="path">What PATH says, or null.</param>
    /// <exception cref="UserMistake">None is found.</exception>
    public static string Browser(string? named, string? path)
    {
        string ending = OperatingSystem.IsWindows() ? ".exe" : "";
        IEnumerable<string> candidates = !string.IsNullOrWhiteSpace(named) ? [named]
            : (path ?? "").Split(Path.PathSeparator, StringSplitOptions.RemoveEmptyEntries).SelectMany(folder => Names.Select(name => Path.Combine(folder, name + ending)));
        return candidates.FirstOrDefault(File.Exists)
            ?? throw new UserMistake($"No Chromium or Chrome was found to print the PDF. Write the handout as .html and print it from a browser, or name one in {Variable}.");
    }

    /// <summary>The bytes of the PDF.</summary>
    /// <param name="html">The page.</param>
    /// <param name="browser">What <see cref="Browser"/> found.</param>
    /// <param name="stop">Stops the browser.</param>
    /// <exception cref="UserMistake">The browser did not print.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static byte[] Pdf(string html, string browser, CancellationToken stop = default)
    {
        string folder = Directory.CreateTempSubdirectory("screwsheet-").FullName;
        try
        {
            string page = Path.Combine(folder, "handout.html"), pdf = Path.Combine(folder, "handout.pdf");
            File.WriteAllText(page, html);
            Print(browser, folder, page, pdf, stop);
            stop.ThrowIfCancellationRequested();
            return File.Exists(pdf) ? Undated(File.ReadAllBytes(pdf)) : throw new UserMistake($"{FileTrouble.Quoted(browser)} did not print the handout. Write it as .html and print it from a browser.");
        }
        finally
        {
            Forget(folder);
        }
    }

    /// <summary>The file without the moment it was printed: the date of a handout is its author's.</summary>
    private static byte[] Undated(byte[] pdf)
    {
        foreach (byte[] key in (byte[][])[[.. "/CreationDate ("u8], [.. "/ModDate ("u8]])
        {
            int at = pdf.AsSpan().IndexOf(key), length = at < 0 ? -1 : pdf.AsSpan(at).IndexOf((byte)')');
            if (length >= 0) pdf.AsSpan(at, length + 1).Fill((byte)' '); // as long as before: places in the file are counted in bytes
        }
        return pdf;
    }

    private static void Print(string browser, string folder, string page, string pdf, CancellationToken stop)
    {
        ProcessStartInfo start = new(browser) { RedirectStandardOutput = true, RedirectStandardError = true, UseShellExecute = false };
        string[] arguments =
        [
            "--headless=new", "--disable-gpu", "--no-first-run", "--disable-extensions", "--disable-background-networking", "--host-resolver-rules=MAP * ~NOTFOUND",
            $"--user-data-dir={Path.Combine(folder, "profile")}", "--no-pdf-header-footer", $"--print-to-pdf={pdf}", new Uri(page).AbsoluteUri,
        ];
        // the browser refuses its own sandbox to the superuser; the page has no script and fetches nothing
        if (Environment.UserName == "root") start.ArgumentList.Add("--no-sandbox");
        foreach (string argument in arguments) start.ArgumentList.Add(argument);
        try
        {
            using Process process = Process.Start(start) ?? throw new UserMistake($"{FileTrouble.Quoted(browser)} could not be started. Write the handout as .html and print it from a browser.");
            process.OutputDataReceived += (_, _) => { };
            process.ErrorDataReceived += (_, _) => { };
            process.BeginOutputReadLine();
            process.BeginErrorReadLine();
            using CancellationTokenRegistration stopping = stop.Register(() => End(process));
            if (!process.WaitForExit(Longest)) End(process);
        }
        catch (Exception error) when (error is ExternalException or InvalidOperationException)
        {
            throw new UserMistake($"{FileTrouble.Quoted(browser)} could not be started. Write the handout as .html and print it from a browser.");
        }
    }

    private static void End(Process process)
    {
        try
        {
            process.Kill(entireProcessTree: true);
        }
        catch (Exception error) when (error is ExternalException or InvalidOperationException or AggregateException)
        {
            // it has ended by itself meanwhile
        }
    }

    // what the browser still holds open is left for the system to clean up
    private static void Forget(string folder)
    {
        try
        {
            Directory.Delete(folder, recursive: true);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
        }
    }
}
