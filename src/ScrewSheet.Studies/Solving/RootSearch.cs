namespace ScrewSheet.Studies.Solving;

/// <summary>Looks for all values in an interval at which a function is zero: a close look at many places, then each sign change cut in half until no double lies between.</summary>
/// <remarks>Halving needs some hundred evaluations where cleverer ways need ten, and cannot be led astray by a kink, a pole or a jump.</remarks>
internal sealed class RootSearch(Func<double, double> function)
{
    private const int Places = 400, MostRoots = 50;
    private const double Golden = 0.6180339887498949;

    private readonly List<(double Si, bool Touches)> roots = [];
    private readonly List<double> jumps = [];

    /// <summary>The zeros found; NaN-free, in order.</summary>
    public IReadOnlyList<(double Si, bool Touches)> Roots => roots;

    /// <summary>Where the sign changes without a zero.</summary>
    public IReadOnlyList<double> Jumps => jumps;

    /// <summary>The places looked at, in order, with the function there.</summary>
    public (double At, double Value)[] Looked { get; private set; } = [];

    /// <summary>Searches from one end to the other.</summary>
    public void Run(double from, double to)
    {
        Looked = [.. Grid(from, to).Distinct().Order().Select(at => (at, function(at)))];
        double scale = Looked.Where(place => !double.IsNaN(place.Value)).Select(place => Math.Abs(place.Value)).DefaultIfEmpty(0).Max();
        for (int i = 0; i < Looked.Length && roots.Count < MostRoots; i++)
        {
            if (Looked[i].Value == 0) Add(Looked[i].At, false);
            else if (i > 0 && Looked[i - 1].Value * Looked[i].Value < 0) Halve(Looked[i - 1], Looked[i], scale);
            else if (i > 1 && IsDip(i)) Touch(Looked[i - 2].At, Looked[i].At, scale);
        }
        roots.Sort((a, b) => a.Si.CompareTo(b.Si));
    }

    /// <summary>Evenly, and where the interval spans powers of ten also evenly over those.</summary>
    private static IEnumerable<double> Grid(double from, double to)
    {
        for (int i = 0; i <= Places; i++) yield return i == Places ? to : from + ((to - from) * i / Places);
        double low = from > 0 ? from : to > 0 ? to * 1e-6 : double.NaN;
        if (!(to > 100 * low)) yield break;
        for (int i = 0; i < Places / 2; i++) yield return low * Math.Pow(to / low, i / (Places / 2.0));
    }

    private bool IsDip(int i)
    {
        (double a, double b, double c) = (Looked[i - 2].Value, Looked[i - 1].Value, Looked[i].Value);
        return a * b > 0 && b * c > 0 && Math.Abs(b) <= Math.Abs(a) && Math.Abs(b) <= Math.Abs(c) && (Math.Abs(b) < Math.Abs(a) || Math.Abs(b) < Math.Abs(c));
    }

    private void Halve((double At, double Value) low, (double At, double Value) high, double scale)
    {
        while (true)
        {
            double middle = low.At + ((high.At - low.At) / 2);
            if (middle <= low.At || middle >= high.At) break;
            double value = function(middle);
            if (value == 0)
            {
                Add(middle, false);
                return;
            }
            if (double.IsNaN(value))
            {
                jumps.Add(middle);
                return;
            }
            if (value < 0 == low.Value < 0) low = (middle, value);
            else high = (middle, value);
        }
        (double at, double least) = Math.Abs(low.Value) <= Math.Abs(high.Value) ? low : high;
        // a pole and a jump change the sign as well, but come nowhere near zero
        if (Math.Abs(least) <= 1e-9 * scale) Add(at, false);
        else jumps.Add(at);
    }

    /// <summary>Golden section to the bottom of a dip; near enough to zero it touches.</summary>
    private void Touch(double from, double to, double scale)
    {
        double a = from, b = to;
        for (int i = 0; i < 100 && b - a > 1e-15 * Math.Max(Math.Abs(a), Math.Abs(b)); i++)
        {
            double c = b - (Golden * (b - a)), d = a + (Golden * (b - a));
            if (Math.Abs(function(c)) < Math.Abs(function(d))) b = d;
            else a = c;
        }
        double at = a + ((b - a) / 2);
        if (Math.Abs(function(at)) <= 1e-12 * scale) Add(at, true);
    }

    private void Add(double at, bool touches)
    {
        if (roots.TrueForAll(root => Math.Abs(root.Si - at) > 1e-7 * Math.Max(Math.Abs(at), Math.Abs(root.Si)))) roots.Add((at, touches));
    }
}
