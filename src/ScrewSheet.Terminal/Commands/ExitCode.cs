namespace ScrewSheet.Terminal.Commands;

/// <summary>How the program ends; the highest counts for several files.</summary>
internal static class ExitCode
{
    /// <summary>All is well.</summary>
    public const int Fine = 0;

    /// <summary>A printed fault, a failing check or a changed result.</summary>
    public const int Bad = 1;

    /// <summary>Wrong usage, an unreadable or unwritable file, an unknown or ambiguous name.</summary>
    public const int Refused = 2;
}
