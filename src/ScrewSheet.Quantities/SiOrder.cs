namespace ScrewSheet.Quantities;

/// <summary>How values in coherent SI are ordered: everything that compares quantities uses this.</summary>
public static class SiOrder
{
    /// <summary>How far above, relative to the larger, still counts as equal in <c>&lt;=</c> and <c>&gt;=</c>: 0.1 + 0.2 is at most 0.3.</summary>
    public const double Slack = 1e-12;

    /// <summary>True when <paramref name="left"/> is less or equal within <see cref="Slack"/>.</summary>
    public static bool AtMost(double left, double right) => left <= right || left - right <= Slack * Math.Max(Math.Abs(left), Math.Abs(right));

    /// <summary>True when <paramref name="left"/> is greater or equal within <see cref="Slack"/>.</summary>
    public static bool AtLeast(double left, double right) => AtMost(right, left);
}
