using System.Globalization;
using ScrewSheet.Quantities.Declarations;
using UnitsNet;

namespace ScrewSheet.Mechanics;

/// <summary>One limit state of a placement: which of its modes governs, which comes next, and how far the load uses it up.</summary>
[SheetRecord("one limit state: the governing mode, the runner-up and how far the load uses it up")]
public sealed record PlacementLimit
{
    /// <summary>Modes whose resistances lie within this share of each other are a tie.</summary>
    internal const double TieShare = 0.1;

    private readonly string state;
    private readonly double load;
    private readonly (FailureMode Mode, double Newtons)[] ranked;

    internal PlacementLimit(string state, double load, IEnumerable<(FailureMode Mode, Capacity Capacity)> modes)
    {
        this.state = state;
        this.load = load;
        ranked = [.. modes.Where(mode => mode.Capacity.Acts).Select(mode => (mode.Mode, mode.Capacity.Newtons)).OrderBy(mode => mode.Newtons)];
    }

    /// <summary>The mode with the least design resistance.</summary>
    /// <exception cref="DomainException">No mode of this limit state acts.</exception>
    [Member("", "", "the mode with the least design resistance")]
    public FailureMode Governing => Ranked(0).Mode;

    /// <summary>Its design resistance.</summary>
    /// <exception cref="DomainException">No mode of this limit state acts.</exception>
    [Member("R_d", "kN", "design resistance of the governing mode")]
    public Force Resistance => Force.FromNewtons(Ranked(0).Newtons);

    /// <summary>True where a second mode acts.</summary>
    [Member("", "", "true where a second mode acts")]
    public bool HasRunnerUp => ranked.Length > 1;

    /// <summary>The mode that comes next.</summary>
    /// <exception cref="DomainException">Fewer than two modes of this limit state act.</exception>
    [Member("", "", "the mode that comes next")]
    public FailureMode RunnerUp => Ranked(1).Mode;

    /// <summary>Its design resistance.</summary>
    /// <exception cref="DomainException">Fewer than two modes of this limit state act.</exception>
    [Member("R_d", "kN", "design resistance of the runner-up")]
    public Force RunnerUpResistance => Force.FromNewtons(Ranked(1).Newtons);

    /// <summary>True where the runner-up lies within 10 % of the governing mode: then neither may be called the weaker.</summary>
    [Member("", "", "true where the runner-up lies within 10 % of the governing mode")]
    public bool IsTie => HasRunnerUp && ranked[1].Newtons <= ranked[0].Newtons * (1 + TieShare);

    /// <summary>Every mode that acts with its design resistance in kN, the weakest first.</summary>
    [Member("", "", "every mode that acts with its design resistance in kN, the weakest first")]
    public string Ranking => string.Join(", ", ranked.Select(mode => string.Create(CultureInfo.InvariantCulture, $"{mode.Mode} {mode.Newtons / 1000:F2} kN")));

    /// <summary>Design load over design resistance; above 1 the limit state is reached.</summary>
    /// <exception cref="DomainException">No mode acts, or the resistance is zero.</exception>
    [Member("η", "", "design load over design resistance; above 1 the limit state is reached")]
    public double Utilisation =>
        Ranked(0).Newtons > 0 ? load / ranked[0].Newtons : throw new DomainException($"{state}: the resistance is zero, so no share of it can be given.");

    /// <summary>True while the design load does not exceed the design resistance. An estimate, not permission.</summary>
    /// <exception cref="DomainException">No mode of this limit state acts.</exception>
    [Member("", "", "true while the design load does not exceed the design resistance; an estimate, not permission")]
    public bool Holds => load <= Ranked(0).Newtons * (1 + 1e-12);

    private (FailureMode Mode, double Newtons) Ranked(int place) =>
        place < ranked.Length ? ranked[place] : throw new DomainException(ranked.Length == 0 ? $"{state}: no mode acts." : $"{state}: only one mode acts, there is no runner-up.");
}
