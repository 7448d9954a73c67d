namespace ScrewSheet.Saver;

/// <summary>A text that tells which it is and where it ends.</summary>
internal static class NumberedText
{
    /// <summary>The text of that number.</summary>
    public static string Of(int number) => $"number {number}\n{string.Concat(Enumerable.Range(0, 3000).Select(i => $"line {i} of {number}\n"))}end {number}\n";
}
