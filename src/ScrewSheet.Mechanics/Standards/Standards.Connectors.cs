using ScrewSheet.Quantities.Declarations;
using UnitsNet;

namespace ScrewSheet.Mechanics;

public static partial class Standards
{
    /// <summary>EN 12275:2013, connectors.</summary>
    [SheetValues("EN 12275:2013, connectors; current when read")]
    public static class En12275
    {
        /// <summary>The edition the values are from.</summary>
        [Member("", "", "the edition the values are from")]
        public static string Edition => "EN 12275:2013";

        /// <summary>What is known of its status.</summary>
        [Member("", "", "what is known of its status")]
        public static string Status => "current when read";

        /// <summary>Class B, basic: strength along the major axis, gate closed: 20 kN.</summary>
        [Member("F", "kN", "class B, basic: strength along the major axis, gate closed")]
        [Source("EN 12275:2013", Standing.Read)]
        public static Force BasicMajor => Force.FromKilonewtons(20);

        /// <summary>Class B, basic: strength along the major axis, gate open (waived with automatic locking): 7 kN.</summary>
        [Member("F", "kN", "class B, basic: strength along the major axis, gate open (waived with automatic locking)")]
        [Source("EN 12275:2013", Standing.Read)]
        public static Force BasicGateOpen => Force.FromKilonewtons(7);

        /// <summary>Class B, basic: strength across, along the minor axis: 7 kN.</summary>
        [Member("F", "kN", "class B, basic: strength across, along the minor axis")]
        [Source("EN 12275:2013", Standing.Read)]
        public static Force BasicMinor => Force.FromKilonewtons(7);

        /// <summary>Class H, for a belay hitch: strength along the major axis, gate closed: 20 kN.</summary>
        [Member("F", "kN", "class H, for a belay hitch: strength along the major axis, gate closed")]
        [Source("EN 12275:2013", Standing.Read)]
        public static Force HmsMajor => Force.FromKilonewtons(20);

        /// <summary>Class H, for a belay hitch: strength along the major axis, gate open (waived with automatic locking): 6 kN.</summary>
        [Member("F", "kN", "class H, for a belay hitch: strength along the major axis, gate open (waived with automatic locking)")]
        [Source("EN 12275:2013", Standing.Read)]
        public static Force HmsGateOpen => Force.FromKilonewtons(6);

        /// <summary>Class H, for a belay hitch: strength across, along the minor axis: 7 kN.</summary>
        [Member("F", "kN", "class H, for a belay hitch: strength across, along the minor axis")]
        [Source("EN 12275:2013", Standing.Read)]
        public static Force HmsMinor => Force.FromKilonewtons(7);

        /// <summary>Class K, via ferrata: strength along the major axis, gate closed: 25 kN.</summary>
        [Member("F", "kN", "class K, via ferrata: strength along the major axis, gate closed")]
        [Source("EN 12275:2013", Standing.Read)]
        public static Force ViaFerrataMajor => Force.FromKilonewtons(25);

        /// <summary>Class K, via ferrata: strength along the major axis, gate open (waived with automatic locking): 8 kN.</summary>
        [Member("F", "kN", "class K, via ferrata: strength along the major axis, gate open (waived with automatic locking)")]
        [Source("EN 12275:2013", Standing.Read)]
        public static Force ViaFerrataGateOpen => Force.FromKilonewtons(8);

        /// <summary>Class K, via ferrata: strength across, along the minor axis: 7 kN.</summary>
        [Member("F", "kN", "class K, via ferrata: strength across, along the minor axis")]
        [Source("EN 12275:2013", Standing.Read)]
        public static Force ViaFerrataMinor => Force.FromKilonewtons(7);

        /// <summary>Class A, specific anchor: strength along the major axis, gate closed: 20 kN.</summary>
        [Member("F", "kN", "class A, specific anchor: strength along the major axis, gate closed")]
        [Source("EN 12275:2013", Standing.Read)]
        public static Force SpecificAnchorMajor => Force.FromKilonewtons(20);

        /// <summary>Class A, specific anchor: strength along the major axis, gate open (waived with automatic locking): 7 kN.</summary>
        [Member("F", "kN", "class A, specific anchor: strength along the major axis, gate open (waived with automatic locking)")]
        [Source("EN 12275:2013", Standing.Read)]
        public static Force SpecificAnchorGateOpen => Force.FromKilonewtons(7);

        /// <summary>Class T, termination: strength along the major axis, gate closed: 20 kN.</summary>
        [Member("F", "kN", "class T, termination: strength along the major axis, gate closed")]
        [Source("EN 12275:2013", Standing.Read)]
        public static Force TerminationMajor => Force.FromKilonewtons(20);

        /// <summary>Class T, termination: strength along the major axis, gate open (waived with automatic locking): 7 kN.</summary>
        [Member("F", "kN", "class T, termination: strength along the major axis, gate open (waived with automatic locking)")]
        [Source("EN 12275:2013", Standing.Read)]
        public static Force TerminationGateOpen => Force.FromKilonewtons(7);

        /// <summary>Class Q, screw link: strength along the major axis, gate closed: 25 kN.</summary>
        [Member("F", "kN", "class Q, screw link: strength along the major axis, gate closed")]
        [Source("EN 12275:2013", Standing.Read)]
        public static Force ScrewLinkMajor => Force.FromKilonewtons(25);

        /// <summary>Class Q, screw link: strength across, along the minor axis: 10 kN.</summary>
        [Member("F", "kN", "class Q, screw link: strength across, along the minor axis")]
        [Source("EN 12275:2013", Standing.Read)]
        public static Force ScrewLinkMinor => Force.FromKilonewtons(10);

        /// <summary>Class X, oval: strength along the major axis, gate closed: 18 kN.</summary>
        [Member("F", "kN", "class X, oval: strength along the major axis, gate closed")]
        [Source("EN 12275:2013", Standing.Read)]
        public static Force OvalMajor => Force.FromKilonewtons(18);

        /// <summary>Class X, oval: strength along the major axis, gate open (waived with automatic locking): 5 kN.</summary>
        [Member("F", "kN", "class X, oval: strength along the major axis, gate open (waived with automatic locking)")]
        [Source("EN 12275:2013", Standing.Read)]
        public static Force OvalGateOpen => Force.FromKilonewtons(5);

        /// <summary>Class X, oval: strength across, along the minor axis: 7 kN.</summary>
        [Member("F", "kN", "class X, oval: strength across, along the minor axis")]
        [Source("EN 12275:2013", Standing.Read)]
        public static Force OvalMinor => Force.FromKilonewtons(7);
    }

    /// <summary>EN 567, rope clamps.</summary>
    [SheetValues("EN 567, rope clamps; edition not known here")]
    public static class En567
    {
        /// <summary>The edition the values are from.</summary>
        [Member("", "", "the edition the values are from")]
        public static string Edition => "EN 567";

        /// <summary>What is known of its status.</summary>
        [Member("", "", "what is known of its status")]
        public static string Status => "edition not known here";

        /// <summary>Load held, five times: 4 kN.</summary>
        [Member("F", "kN", "load held, five times")]
        [Source("EN 567", Standing.Read)]
        public static Force Strength => Force.FromKilonewtons(4);

        /// <summary>How often the load is applied: 5.</summary>
        [Member("", "", "how often the load is applied")]
        [Source("EN 567", Standing.Read)]
        public static double Loadings => 5;
    }

    /// <summary>UIAA 126, rope clamps.</summary>
    [SheetValues("UIAA 126, rope clamps; edition not known here")]
    public static class Uiaa126
    {
        /// <summary>The edition the values are from.</summary>
        [Member("", "", "the edition the values are from")]
        public static string Edition => "UIAA 126";

        /// <summary>What is known of its status.</summary>
        [Member("", "", "what is known of its status")]
        public static string Status => "edition not known here";

        /// <summary>Load held: 4 kN.</summary>
        [Member("F", "kN", "load held")]
        [Source("UIAA 126", Standing.FromMemory)]
        public static Force Strength => Force.FromKilonewtons(4);
    }

    /// <summary>EN 958:2017, via ferrata absorbers.</summary>
    [SheetValues("EN 958:2017, via ferrata absorbers; superseded by EN 958:2024")]
    public static class En958Of2017
    {
        /// <summary>The edition the values are from.</summary>
        [Member("", "", "the edition the values are from")]
        public static string Edition => "EN 958:2017";

        /// <summary>What is known of its status.</summary>
        [Member("", "", "what is known of its status")]
        public static string Status => "superseded by EN 958:2024";

        /// <summary>Peak force with 40 kg, at most: 3.5 kN.</summary>
        [Member("F", "kN", "peak force with 40 kg, at most")]
        [Source("EN 958:2017", Standing.SecondHand)]
        public static Force PeakForceLight => Force.FromKilonewtons(3.5);

        /// <summary>Peak force with 120 kg, at most: 6 kN.</summary>
        [Member("F", "kN", "peak force with 120 kg, at most")]
        [Source("EN 958:2017", Standing.SecondHand)]
        public static Force PeakForceHeavy => Force.FromKilonewtons(6);

        /// <summary>Brake length, at most: 2.2 m.</summary>
        [Member("s", "m", "brake length, at most")]
        [Source("EN 958:2017", Standing.SecondHand)]
        public static Length BrakeLength => Length.FromMeters(2.2);

        /// <summary>Peak force when wet, at most: 8 kN.</summary>
        [Member("F", "kN", "peak force when wet, at most")]
        [Source("EN 958:2017", Standing.SecondHand)]
        public static Force WetForce => Force.FromKilonewtons(8);

        /// <summary>Static load at which it starts, more than this: 1.3 kN.</summary>
        [Member("F", "kN", "static load at which it starts, more than this")]
        [Source("EN 958:2017", Standing.SecondHand)]
        public static Force Activation => Force.FromKilonewtons(1.3);

        /// <summary>Strength of an arm after 50,000 cycles, more than this: 12 kN.</summary>
        [Member("F", "kN", "strength of an arm after 50,000 cycles, more than this")]
        [Source("EN 958:2017", Standing.SecondHand)]
        public static Force WornArm => Force.FromKilonewtons(12);
    }

    /// <summary>EN 958:2024, via ferrata absorbers.</summary>
    [SheetValues("EN 958:2024, via ferrata absorbers; current when read; impact limit and mass changed against 2017, values not read")]
    public static class En958
    {
        /// <summary>The edition the values are from.</summary>
        [Member("", "", "the edition the values are from")]
        public static string Edition => "EN 958:2024";

        /// <summary>What is known of its status.</summary>
        [Member("", "", "what is known of its status")]
        public static string Status => "current when read; impact limit and mass changed against 2017, values not read";

        /// <summary>Lightest user: 40 kg.</summary>
        [Member("m", "kg", "lightest user")]
        [Source("EN 958:2024", Standing.Read)]
        public static Mass LightestUser => Mass.FromKilograms(40);

        /// <summary>Heaviest user: 120 kg.</summary>
        [Member("m", "kg", "heaviest user")]
        [Source("EN 958:2024", Standing.Read)]
        public static Mass HeaviestUser => Mass.FromKilograms(120);

        /// <summary>Peak force with the light mass; editions differ.</summary>
        /// <exception cref="DomainException">Always: it lists what the sources say.</exception>
        [Member("F", "kN", "peak force with the light mass; editions differ")]
        [Source("EN 958:2017 and EN 958:2024", Standing.Read)]
        public static Force PeakForceLight => throw Unsettled("EN 958:2024", "PeakForceLight", "3.5 kN with 40 kg (EN 958:2017)", "changed in EN 958:2024, value not read");

        /// <summary>Peak force with the heavy mass; editions differ.</summary>
        /// <exception cref="DomainException">Always: it lists what the sources say.</exception>
        [Member("F", "kN", "peak force with the heavy mass; editions differ")]
        [Source("EN 958:2017 and EN 958:2024", Standing.Read)]
        public static Force PeakForceHeavy => throw Unsettled("EN 958:2024", "PeakForceHeavy", "6 kN with 120 kg (EN 958:2017)", "changed in EN 958:2024, value not read");
    }

    /// <summary>EN 15151-2:2012, manual brakes.</summary>
    [SheetValues("EN 15151-2:2012, manual brakes; current when quoted")]
    public static class En15151_2
    {
        /// <summary>The edition the values are from.</summary>
        [Member("", "", "the edition the values are from")]
        public static string Edition => "EN 15151-2:2012";

        /// <summary>What is known of its status.</summary>
        [Member("", "", "what is known of its status")]
        public static string Status => "current when quoted";

        /// <summary>Load held on a fixed rope: 7 kN.</summary>
        [Member("F", "kN", "load held on a fixed rope")]
        [Source("EN 15151-2:2012", Standing.SecondHand)]
        public static Force FixedRope => Force.FromKilonewtons(7);

        /// <summary>Load held in guide mode: 8 kN.</summary>
        [Member("F", "kN", "load held in guide mode")]
        [Source("EN 15151-2:2012", Standing.SecondHand)]
        public static Force GuideMode => Force.FromKilonewtons(8);
    }

    /// <summary>EN 12277, harnesses.</summary>
    [SheetValues("EN 12277, harnesses; edition not known here")]
    public static class En12277
    {
        /// <summary>The edition the values are from.</summary>
        [Member("", "", "the edition the values are from")]
        public static string Edition => "EN 12277";

        /// <summary>What is known of its status.</summary>
        [Member("", "", "what is known of its status")]
        public static string Status => "edition not known here";

        /// <summary>Load held, sit or full-body harness: 15 kN.</summary>
        [Member("F", "kN", "load held, sit or full-body harness")]
        [Source("EN 12277", Standing.FromMemory)]
        public static Force Upright => Force.FromKilonewtons(15);

        /// <summary>Load held head down: 10 kN.</summary>
        [Member("F", "kN", "load held head down")]
        [Source("EN 12277", Standing.FromMemory)]
        public static Force HeadDown => Force.FromKilonewtons(10);
    }

    /// <summary>EN 12278, pulleys.</summary>
    [SheetValues("EN 12278, pulleys; edition not known here")]
    public static class En12278
    {
        /// <summary>The edition the values are from.</summary>
        [Member("", "", "the edition the values are from")]
        public static string Edition => "EN 12278";

        /// <summary>What is known of its status.</summary>
        [Member("", "", "what is known of its status")]
        public static string Status => "edition not known here";

        /// <summary>Load held, at least: 12 kN.</summary>
        [Member("F", "kN", "load held, at least")]
        [Source("EN 12278", Standing.FromMemory)]
        public static Force Strength => Force.FromKilonewtons(12);
    }
}
