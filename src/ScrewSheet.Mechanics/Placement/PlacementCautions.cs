namespace ScrewSheet.Mechanics;

/// <summary>What a reader of an assessment must know besides its numbers.</summary>
internal static class PlacementCautions
{
    private const double Degree = Math.PI / 180;

    public static IReadOnlyList<string> Of(ScrewPlacement placement, PlacementModes modes, PlacementLimit damage, PlacementLimit end)
    {
        List<string> said = [];
        Factors(placement, said);
        Geometry(placement, modes, said);
        Missing(placement, said);
        Tie("Damage begins", damage, said);
        Tie("Comes out or breaks", end, said);
        return said;
    }

    private static void Factors(ScrewPlacement placement, List<string> said)
    {
        foreach (FailureMode mode in Enum.GetValues<FailureMode>())
        {
            if (placement.Calibration.Of(mode) > 1) said.Add($"The calibration factor of {mode} is above 1: it raises the capacity beyond the model and needs tests of your own behind it.");
            if (placement.GammaM.Of(mode) < 1) said.Add($"The partial factor γ_M of {mode} is below 1: it raises the capacity.");
        }
        if (placement.GammaF < 1) said.Add("The partial factor γ_F is below 1: it lowers the load.");
        if (placement.Material.Basis == MaterialBasis.Typical) said.Add($"{placement.Material.Name} has typical, not minimum values: half of all tubes are weaker.");
    }

    private static void Geometry(ScrewPlacement placement, PlacementModes modes, List<string> said)
    {
        double angle = placement.SetAngle.Radians;
        if (angle > (15 * Degree) + 1e-9) said.Add("A set angle above 15° thins the lip of ice under the hanger; tests at 30° are mixed.");
        if (angle < -1e-9) said.Add("A negative set angle puts the hanger above the tip: the body is levered onto the lip of ice.");
        if (placement.IceLost.Meters == 0) said.Add("No ice is taken as lost; 30 to 50 mm of cone-out are common practice.");
        if (modes.Thread == 0) said.Add("No thread is left in sound ice.");
        if (placement.ReboredLength.Meters > 0) said.Add("Grooves of an old hole hold little; results in re-bored holes scatter widely.");
        double shearArm = 2 * Math.Sqrt(3) * placement.Tube.PlasticModulusSi / placement.Tube.ShearAreaSi;
        if (modes.Arm < shearArm) said.Add("At so short a lever arm shear lowers the plastic moment of the tube: see HingeLoadWithShear.");
    }

    private static void Missing(ScrewPlacement placement, List<string> said)
    {
        if (placement.IceLost.Meters > 0)
        {
            said.Add(placement.Tension is null
                ? "No tensile strength of the ice is given: the surface cone is not looked at."
                : "The surface cone is an analogue from concrete, for which no calibration in ice exists.");
        }
        if (placement.Rating is null) said.Add("No hanger rating is given: hanger, connector and sling are not looked at.");
        if (placement.Strain is null) said.Add("No strain at fracture is given: tearing at the hinge is not looked at.");
    }

    private static void Tie(string state, PlacementLimit limit, List<string> said)
    {
        if (limit.IsTie) said.Add($"{state}: {limit.Governing} and {limit.RunnerUp} lie within 10 % of each other; call neither the weaker.");
    }
}
