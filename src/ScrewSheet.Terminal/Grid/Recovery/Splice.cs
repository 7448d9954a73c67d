namespace ScrewSheet.Terminal.Grid.Recovery;

/// <summary>One change from a text to another: bytes taken out at a place, and others put there.</summary>
/// <param name="At">Where, from 0.</param>
/// <param name="Removed">How many bytes are taken out.</param>
/// <param name="Put">What is put there.</param>
internal readonly record struct Splice(int At, int Removed, ReadOnlyMemory<byte> Put)
{
    /// <summary>The change that leaves what both begin and end with.</summary>
    public static Splice Between(ReadOnlyMemory<byte> before, ReadOnlyMemory<byte> after)
    {
        ReadOnlySpan<byte> old = before.Span, now = after.Span;
        int start = old.CommonPrefixLength(now), most = Math.Min(old.Length, now.Length) - start, end = 0;
        while (end < most && old[^(end + 1)] == now[^(end + 1)]) end++;
        return new Splice(start, old.Length - start - end, after[start..^end]);
    }

    /// <summary>True where a text of that length has such a place.</summary>
    public bool Fits(int length) => At >= 0 && Removed >= 0 && (long)At + Removed <= length;

    /// <summary>The text with the change.</summary>
    public byte[] On(ReadOnlySpan<byte> text) => [.. text[..At], .. Put.Span, .. text[(At + Removed)..]];
}
