using System.Text;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Terminal.Output;

/// <summary>Makes text from a file harmless to a terminal, as <see cref="VisibleText"/> says.</summary>
internal static class PlainText
{
    /// <summary>The same text when nothing in it is dangerous.</summary>
    public static string Of(string text) => VisibleText.Of(text);

    /// <summary>True for what a reader would not see, or what a terminal would obey.</summary>
    public static bool IsHidden(Rune rune) => VisibleText.IsHidden(rune);
}
