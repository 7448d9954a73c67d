using System.Globalization;
using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;

namespace ScrewSheet.Mechanics.Anchors;

/// <summary>Checks of series that hold one value for each leg.</summary>
internal static class LegInputs
{
    /// <summary>More legs than any anchor has; keeps the work of a cell small.</summary>
    public const int MostLegs = 100;

    /// <summary>Refuses fewer than <paramref name="least"/> or more than <see cref="MostLegs"/> values.</summary>
    public static int Count(Series legs, string name, int least)
    {
        if (legs.Count < least || legs.Count > MostLegs)
        {
            throw new DomainException(string.Create(CultureInfo.InvariantCulture, $"{name} must have at least {least} and at most {MostLegs} values, one for each leg; it has {legs.Count}."), name);
        }
        return legs.Count;
    }

    /// <summary>Refuses a series with another number of values than there are legs.</summary>
    public static void Same(Series values, string name, int legs)
    {
        if (values.Count != legs)
        {
            throw new DomainException(string.Create(CultureInfo.InvariantCulture, $"{name} must have one value for each of the {legs} legs; it has {values.Count}."), name);
        }
    }
}
