using System.Text;
using ScrewSheet.Engine;
using ScrewSheet.Exports.Html;
using ScrewSheet.Exports.Markdown;
using ScrewSheet.Exports.Pages;
using ScrewSheet.Terminal.Files;

namespace ScrewSheet.Terminal.Handouts;

/// <summary>What kind of file a handout becomes, as the ending of its name says.</summary>
internal sealed class HandoutFile
{
    private readonly bool isMarkdown;
    private readonly string? browser;

    private HandoutFile(bool isMarkdown, string? browser) => (this.isMarkdown, this.browser) = (isMarkdown, browser);

    /// <summary>True where a browser prints it, which takes seconds.</summary>
    public bool IsPrinted => browser is not null;

    /// <summary>Looks before anything is computed whether it can be made.</summary>
    /// <exception cref="UserMistake">The ending says nothing, or there is no browser to print with.</exception>
    public static HandoutFile At(string path) => Path.GetExtension(path).ToLowerInvariant() switch
    {
        ".html" or ".htm" => new HandoutFile(false, null),
        ".md" => new HandoutFile(true, null),
        ".pdf" => new HandoutFile(false, Printing.Browser(Environment.GetEnvironmentVariable(Printing.Variable), Environment.GetEnvironmentVariable("PATH"))),
        _ => throw new UserMistake($"{FileTrouble.Quoted(path)} has no ending that says what to write. End it with .html, .md or .pdf."),
    };

    /// <summary>The bytes of the file.</summary>
    /// <param name="request">What it is made from.</param>
    /// <param name="stop">Stops the printing.</param>
    /// <exception cref="UserMistake">The browser did not print.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public byte[] Bytes(HandoutRequest request, CancellationToken stop)
    {
        string text = Calculator.WithRoom(() => isMarkdown ? HandoutMarkdown.Write(request) : HandoutHtml.Write(request));
        return browser is null ? Encoding.UTF8.GetBytes(text) : Printing.Pdf(text, browser, stop);
    }
}
