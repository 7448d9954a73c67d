using ScrewSheet.Quantities.Declarations;
using UnitsNet;

namespace ScrewSheet.Mechanics;

/// <summary>What one failure mode carries, or that it does not act.</summary>
/// <remarks>Never infinite. <c>default</c> does not act.</remarks>
[SheetRecord("what one failure mode carries, or that it does not act")]
public readonly record struct Capacity
{
    private readonly double newtons;
    private readonly string? reason;

    private Capacity(bool acts, double newtons, string? reason)
    {
        Acts = acts;
        this.newtons = newtons;
        this.reason = reason;
    }

    /// <summary>True where the mode acts.</summary>
    [Member("", "", "true where the mode acts at all")]
    public bool Acts { get; }

    /// <summary>The load at which the mode occurs.</summary>
    /// <exception cref="DomainException">The mode does not act.</exception>
    [Member("R", "kN", "the load at the hanger at which the mode occurs; a fault where it does not act")]
    public Force Force => Acts ? Force.FromNewtons(newtons) : throw new DomainException($"This mode does not act: {Reason}.");

    /// <summary>Why it does not act; empty where it does.</summary>
    [Member("", "", "why the mode does not act; empty where it does")]
    public string Reason => Acts ? "" : reason ?? "it was not asked for";

    /// <summary>The load in N, for code that has asked <see cref="Acts"/>.</summary>
    internal double Newtons => newtons;

    /// <summary>A mode that acts at a load in N.</summary>
    internal static Capacity Of(double newtons) => new(true, Require.Finite(newtons, "The capacity"), null);

    /// <summary>A mode that does not act.</summary>
    internal static Capacity DoesNotAct(string reason) => new(false, 0, reason);
}
