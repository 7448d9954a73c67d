using MathNet.Numerics.LinearAlgebra;

namespace ScrewSheet.Mechanics.Anchors;

/// <summary>A place, direction or force in space, in coherent SI.</summary>
internal readonly record struct Vector(double X, double Y, double Z)
{
    public double Length => Math.Sqrt(Dot(this));

    public static Vector operator +(Vector a, Vector b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);

    public static Vector operator -(Vector a, Vector b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);

    public static Vector operator -(Vector a) => new(-a.X, -a.Y, -a.Z);

    public static Vector operator *(double factor, Vector a) => new(factor * a.X, factor * a.Y, factor * a.Z);

    public double Dot(Vector other) => (X * other.X) + (Y * other.Y) + (Z * other.Z);

    public Vector Cross(Vector b) => new((Y * b.Z) - (Z * b.Y), (Z * b.X) - (X * b.Z), (X * b.Y) - (Y * b.X));

    /// <summary>Coefficients c with c₁ a + c₂ b + c₃ c = this, or null when the three directions nearly lie in a plane.</summary>
    public Vector? In(Vector a, Vector b, Vector c)
    {
        double volume = a.Dot(b.Cross(c));
        if (Math.Abs(volume) <= 1e-10 * a.Length * b.Length * c.Length) return null;
        return new Vector(Dot(b.Cross(c)) / volume, Dot(c.Cross(a)) / volume, Dot(a.Cross(b)) / volume);
    }
}

/// <summary>A symmetric 3 × 3 stiffness.</summary>
internal struct Stiffness
{
    private double xx, yy, zz, xy, xz, yz;

    /// <summary>Adds k u uᵀ.</summary>
    public void Add(double k, Vector u)
    {
        xx += k * u.X * u.X;
        yy += k * u.Y * u.Y;
        zz += k * u.Z * u.Z;
        xy += k * u.X * u.Y;
        xz += k * u.X * u.Z;
        yz += k * u.Y * u.Z;
    }

    /// <summary>Adds the same stiffness in every direction.</summary>
    public void AddAll(double k)
    {
        xx += k;
        yy += k;
        zz += k;
    }

    /// <summary>The displacement that <paramref name="force"/> causes, or null when some direction has next to no stiffness (a determinant of the scaled matrix up to <paramref name="least"/>).</summary>
    public readonly Vector? Solve(Vector force, double least = 1e-14)
    {
        double scale = Math.Max(xx, Math.Max(yy, zz));
        if (!(scale > 0)) return null;
        Vector a = new(xx / scale, xy / scale, xz / scale), b = new(xy / scale, yy / scale, yz / scale), c = new(xz / scale, yz / scale, zz / scale);
        double volume = a.Dot(b.Cross(c));
        if (!(volume > least)) return null;
        Vector load = 1 / scale * force;
        return new Vector(load.Dot(b.Cross(c)) / volume, load.Dot(c.Cross(a)) / volume, load.Dot(a.Cross(b)) / volume);
    }

    /// <summary>The smallest displacement that answers <paramref name="force"/> in the directions that have stiffness; the rest of the force stays unanswered.</summary>
    public readonly Vector LeastMovement(Vector force)
    {
        var parts = Matrix<double>.Build.DenseOfArray(new[,] { { xx, xy, xz }, { xy, yy, yz }, { xz, yz, zz } }).Evd(Symmetricity.Symmetric);
        double most = parts.EigenValues.Max(value => value.Real);
        Vector moved = default;
        for (int mode = 0; mode < 3; mode++)
        {
            double stiffness = parts.EigenValues[mode].Real;
            if (stiffness <= 1e-12 * most) continue;
            Vector direction = new(parts.EigenVectors[0, mode], parts.EigenVectors[1, mode], parts.EigenVectors[2, mode]);
            moved += force.Dot(direction) / stiffness * direction;
        }
        return moved;
    }
}
