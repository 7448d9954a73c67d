using System.Collections.Immutable;
using ScrewSheet.Quantities.Formatting;

namespace ScrewSheet.Exports.Drawing;

/// <summary>Curves over an axis.</summary>
/// <param name="Across">What the horizontal axis shows, with its unit.</param>
/// <param name="Up">What the vertical axis shows, with its unit.</param>
/// <param name="Curves">The curves.</param>
/// <param name="Blanks">True where only the axes are drawn and the values are left to the reader.</param>
internal sealed record Plot(string Across, string Up, ImmutableArray<Curve> Curves, bool Blanks)
{
    /// <summary>The least and the greatest value shown, as text; null where there is none.</summary>
    public (string Least, string Most)? Ends()
    {
        double[] values = [.. Curves.SelectMany(curve => curve.Points).Select(point => point.Y).OfType<double>()];
        return values.Length == 0 ? null : (NumberText.Format(values.Min(), null), NumberText.Format(values.Max(), null));
    }
}

/// <summary>A curve: its name, its points; a point without a value is a gap.</summary>
internal sealed record Curve(string Name, ImmutableArray<(double X, double? Y)> Points);
