using ScrewSheet.Quantities.Declarations;
using UnitsNet;

namespace ScrewSheet.Mechanics;

/// <summary>
/// Requirement values of standards, each with its edition, status and source. A requirement passed by a frozen-in sample is no promise for a placement in other ice.
/// Where sources differ, or no value was seen, asking for it is refused with what is known.
/// </summary>
[SheetValues("requirement values of standards, with edition, status and source")]
public static partial class Standards
{
    /// <summary>EN 568:2015, ice anchors.</summary>
    [SheetValues("EN 568:2015, ice anchors; current; a revision draft was out for enquiry in 2025")]
    public static class En568
    {
        /// <summary>The edition the values are from.</summary>
        [Member("", "", "the edition the values are from")]
        public static string Edition => "EN 568:2015";

        /// <summary>What is known of its status.</summary>
        [Member("", "", "what is known of its status")]
        public static string Status => "current; a revision draft was out for enquiry in 2025";

        /// <summary>Radial load the anchor holds, sample frozen in (not screwed in), load parallel to the face, body square to it: 10 kN.</summary>
        [Member("F", "kN", "radial load the anchor holds, sample frozen in (not screwed in), load parallel to the face, body square to it")]
        [Source("EN 568:2015", Standing.Read)]
        public static Force Radial => Force.FromKilonewtons(10);

        /// <summary>Temperature of the ice in the radial test: -18 °C.</summary>
        [Member("T", "°C", "temperature of the ice in the radial test")]
        [Source("EN 568:2015", Standing.Read)]
        public static Temperature TestTemperature => Temperature.FromDegreesCelsius(-18);

        /// <summary>Axial load the anchor holds; not known here.</summary>
        /// <exception cref="DomainException">Always: it lists what the sources say.</exception>
        [Member("F", "kN", "axial load the anchor holds; not known here")]
        [Source("EN 568:2007, list of changes", Standing.Read)]
        public static Force Axial => throw Unsettled("EN 568:2015", "Axial", "EN 568:2007 added an axial requirement and test; its value was not seen");
    }

    /// <summary>UIAA 151, ice anchors.</summary>
    [SheetValues("UIAA 151, ice anchors; edition not known here; sources differ, check the current text")]
    public static class Uiaa151
    {
        /// <summary>The edition the values are from.</summary>
        [Member("", "", "the edition the values are from")]
        public static string Edition => "UIAA 151";

        /// <summary>What is known of its status.</summary>
        [Member("", "", "what is known of its status")]
        public static string Status => "edition not known here; sources differ, check the current text";

        /// <summary>Radial load the anchor holds; sources differ.</summary>
        /// <exception cref="DomainException">Always: it lists what the sources say.</exception>
        [Member("F", "kN", "radial load the anchor holds; sources differ")]
        [Source("texts that report UIAA 151", Standing.Read)]
        public static Force Radial => throw Unsettled("UIAA 151", "Radial", "15 kN (a 2005 article and a later explainer, tests in ice with deliberate air content)", "10 kN (other texts, for both marks)");

        /// <summary>Axial load the anchor holds; sources differ.</summary>
        /// <exception cref="DomainException">Always: it lists what the sources say.</exception>
        [Member("F", "kN", "axial load the anchor holds; sources differ")]
        [Source("texts that report UIAA 151", Standing.Read)]
        public static Force Axial => throw Unsettled("UIAA 151", "Axial", "5 kN (a 2005 article and a later explainer)", "no axial value (other texts)");
    }

    /// <summary>EN 959:2018, rock anchors.</summary>
    [SheetValues("EN 959:2018, rock anchors; current when read")]
    public static class En959
    {
        /// <summary>The edition the values are from.</summary>
        [Member("", "", "the edition the values are from")]
        public static string Edition => "EN 959:2018";

        /// <summary>What is known of its status.</summary>
        [Member("", "", "what is known of its status")]
        public static string Status => "current when read";

        /// <summary>Radial load the anchor holds: 25 kN.</summary>
        [Member("F", "kN", "radial load the anchor holds")]
        [Source("EN 959:2018", Standing.Read)]
        public static Force Radial => Force.FromKilonewtons(25);

        /// <summary>Axial load the anchor holds: 15 kN.</summary>
        [Member("F", "kN", "axial load the anchor holds")]
        [Source("EN 959:2018", Standing.Read)]
        public static Force Axial => Force.FromKilonewtons(15);

        /// <summary>Load linked belay parts hold: 25 kN.</summary>
        [Member("F", "kN", "load linked belay parts hold")]
        [Source("EN 959:2018", Standing.Read)]
        public static Force LinkedParts => Force.FromKilonewtons(25);

        /// <summary>Least embedment of a glued anchor: 70 mm.</summary>
        [Member("h", "mm", "least embedment of a glued anchor")]
        [Source("EN 959:2018", Standing.Read)]
        public static Length GluedEmbedment => Length.FromMillimeters(70);

        /// <summary>Least embedment of a mechanical anchor over its hole diameter: 5.</summary>
        [Member("h/d", "", "least embedment of a mechanical anchor over its hole diameter")]
        [Source("EN 959:2018", Standing.Read)]
        public static double MechanicalEmbedmentRatio => 5;
    }

    /// <summary>UIAA 123, rock anchors.</summary>
    [SheetValues("UIAA 123, rock anchors; edition not known here")]
    public static class Uiaa123
    {
        /// <summary>The edition the values are from.</summary>
        [Member("", "", "the edition the values are from")]
        public static string Edition => "UIAA 123";

        /// <summary>What is known of its status.</summary>
        [Member("", "", "what is known of its status")]
        public static string Status => "edition not known here";

        /// <summary>Axial load the anchor holds: 20 kN.</summary>
        [Member("F", "kN", "axial load the anchor holds")]
        [Source("UIAA 123", Standing.Read)]
        public static Force Axial => Force.FromKilonewtons(20);
    }

    /// <summary>EN 569, pitons.</summary>
    [SheetValues("EN 569, pitons; edition not known here")]
    public static class En569
    {
        /// <summary>The edition the values are from.</summary>
        [Member("", "", "the edition the values are from")]
        public static string Edition => "EN 569";

        /// <summary>What is known of its status.</summary>
        [Member("", "", "what is known of its status")]
        public static string Status => "edition not known here";

        /// <summary>Load a safety piton holds along the main direction: 25 kN.</summary>
        [Member("F", "kN", "load a safety piton holds along the main direction")]
        [Source("EN 569", Standing.Read)]
        public static Force SafetyAlong => Force.FromKilonewtons(25);

        /// <summary>Load a progression piton holds along the main direction: 12.5 kN.</summary>
        [Member("F", "kN", "load a progression piton holds along the main direction")]
        [Source("EN 569", Standing.Read)]
        public static Force ProgressionAlong => Force.FromKilonewtons(12.5);

        /// <summary>Share of the load in the main direction that the reverse direction may fall to: 0.4.</summary>
        [Member("", "", "share of the load in the main direction that the reverse direction may fall to")]
        [Source("EN 569", Standing.Read)]
        public static double ReverseShare => 0.4;

        /// <summary>Load a safety piton holds in the reverse direction: 10 kN.</summary>
        [Member("F", "kN", "load a safety piton holds in the reverse direction")]
        [Source("EN 569", Standing.FromMemory)]
        public static Force SafetyReverse => Force.FromKilonewtons(10);

        /// <summary>Load a safety piton holds across: 15 kN.</summary>
        [Member("F", "kN", "load a safety piton holds across")]
        [Source("EN 569", Standing.FromMemory)]
        public static Force SafetyAcross => Force.FromKilonewtons(15);
    }

    /// <summary>EN 12270, chocks.</summary>
    [SheetValues("EN 12270, chocks; edition not known here")]
    public static class En12270
    {
        /// <summary>The edition the values are from.</summary>
        [Member("", "", "the edition the values are from")]
        public static string Edition => "EN 12270";

        /// <summary>What is known of its status.</summary>
        [Member("", "", "what is known of its status")]
        public static string Status => "edition not known here";

        /// <summary>Load a chock holds at least: 2 kN.</summary>
        [Member("F", "kN", "load a chock holds at least")]
        [Source("EN 12270", Standing.FromMemory)]
        public static Force Strength => Force.FromKilonewtons(2);
    }

    /// <summary>EN 12276, camming devices.</summary>
    [SheetValues("EN 12276, camming devices; edition not known here")]
    public static class En12276
    {
        /// <summary>The edition the values are from.</summary>
        [Member("", "", "the edition the values are from")]
        public static string Edition => "EN 12276";

        /// <summary>What is known of its status.</summary>
        [Member("", "", "what is known of its status")]
        public static string Status => "edition not known here";

        /// <summary>Load a camming device holds at least: 5 kN.</summary>
        [Member("F", "kN", "load a camming device holds at least")]
        [Source("EN 12276", Standing.FromMemory)]
        public static Force Strength => Force.FromKilonewtons(5);

        /// <summary>Least strength quoted for a running belay (Annex A): 7 kN.</summary>
        [Member("F", "kN", "least strength quoted for a running belay (Annex A)")]
        [Source("EN 12276, Annex A", Standing.SecondHand)]
        public static Force RunningBelay => Force.FromKilonewtons(7);
    }

    /// <summary>EN 12572, artificial climbing structures.</summary>
    [SheetValues("EN 12572, artificial climbing structures; not verified")]
    public static class En12572
    {
        /// <summary>The edition the values are from.</summary>
        [Member("", "", "the edition the values are from")]
        public static string Edition => "EN 12572";

        /// <summary>What is known of its status.</summary>
        [Member("", "", "what is known of its status")]
        public static string Status => "not verified";

        /// <summary>Load a protection point holds; not known here.</summary>
        /// <exception cref="DomainException">Always: it lists what the sources say.</exception>
        [Member("F", "kN", "load a protection point holds; not known here")]
        [Source("EN 12572", Standing.FromMemory)]
        public static Force ProtectionPoint => throw Unsettled("EN 12572", "ProtectionPoint", "EN 12572 sets load classes for protection points; no value could be verified");
    }

    private static DomainException Unsettled(string edition, string member, params ReadOnlySpan<string> reports)
    {
        string known = string.Join("; ", reports.ToArray());
        return new DomainException($"{edition}, {member.ToLowerInvariant()}: {known}. Write the value of your edition as a given, with its source beside it.");
    }
}
