using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;
using UnitsNet;

namespace ScrewSheet.Mechanics.Anchors;

/// <summary>What each leg of an anchor carries and how the master point moves.</summary>
[SheetRecord("what each leg of an anchor carries and how the master point moves")]
public sealed class LegSharing : ICautioned, IEquatable<LegSharing>
{
    private readonly double[] tensions;
    private readonly Vector moved;

    internal LegSharing(double[] tensions, Vector moved, params IEnumerable<string> cautions)
    {
        this.tensions = tensions;
        this.moved = moved;
        Tensions = Series.Of<Force>(tensions);
        Cautions = [.. cautions];
    }

    /// <summary>Tension in each leg, in the order given; 0 for a slack leg.</summary>
    [Member("T", "kN", "tension in each leg, in the order given; 0 for a slack one")]
    public Series<Force> Tensions { get; }

    /// <summary>The largest tension.</summary>
    [Member("T_max", "kN", "the largest tension")]
    public Force Largest => Force.FromNewtons(tensions.Max());

    /// <summary>Number of the leg with the largest tension, counted from 1.</summary>
    [Member("", "", "number of the leg that carries most, counted from 1")]
    public double LargestLeg => Array.IndexOf(tensions, tensions.Max()) + 1;

    /// <summary>How many legs are slack.</summary>
    [Member("", "", "how many legs are slack")]
    public double SlackLegs => tensions.Count(tension => tension <= 0);

    /// <summary>How far the master point moves along the first direction.</summary>
    [Member("d_x", "mm", "movement of the master point in the x direction")]
    public Length MovedX => Length.FromMeters(moved.X);

    /// <summary>How far the master point moves along the second direction.</summary>
    [Member("d_y", "mm", "movement of the master point in the y direction")]
    public Length MovedY => Length.FromMeters(moved.Y);

    /// <summary>How far the master point moves along the third direction; 0 in a plane.</summary>
    [Member("d_z", "mm", "movement of the master point in the z direction, 0 in a plane")]
    public Length MovedZ => Length.FromMeters(moved.Z);

    /// <inheritdoc/>
    public IReadOnlyList<string> Cautions { get; }

    internal ReadOnlySpan<double> Si => tensions;

    internal Vector Moved => moved;

    /// <summary>Equal when all tensions and movements are.</summary>
    public bool Equals(LegSharing? other) => other is not null && moved.Equals(other.moved) && tensions.AsSpan().SequenceEqual(other.tensions);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as LegSharing);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(moved, tensions.Length, tensions[0]);
}
