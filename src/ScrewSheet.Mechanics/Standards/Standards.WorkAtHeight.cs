using ScrewSheet.Quantities.Declarations;
using UnitsNet;

namespace ScrewSheet.Mechanics;

public static partial class Standards
{
    /// <summary>EN 354:2010, lanyards.</summary>
    [SheetValues("EN 354:2010, lanyards; current when read")]
    public static class En354
    {
        /// <summary>The edition the values are from.</summary>
        [Member("", "", "the edition the values are from")]
        public static string Edition => "EN 354:2010";

        /// <summary>What is known of its status.</summary>
        [Member("", "", "what is known of its status")]
        public static string Status => "current when read";

        /// <summary>Static load over 3 min, textile: 22 kN.</summary>
        [Member("F", "kN", "static load over 3 min, textile")]
        [Source("EN 354:2010", Standing.Read)]
        public static Force StaticTextile => Force.FromKilonewtons(22);

        /// <summary>Static load over 3 min, metal: 15 kN.</summary>
        [Member("F", "kN", "static load over 3 min, metal")]
        [Source("EN 354:2010", Standing.Read)]
        public static Force StaticMetal => Force.FromKilonewtons(15);

        /// <summary>Length with connectors, at most: 2 m.</summary>
        [Member("L", "m", "length with connectors, at most")]
        [Source("EN 354:2010", Standing.SecondHand)]
        public static Length Length => Length.FromMeters(2);

        /// <summary>Slip of an adjuster at 6 kN over 3 min, at most: 50 mm.</summary>
        [Member("", "mm", "slip of an adjuster at 6 kN over 3 min, at most")]
        [Source("EN 354:2010", Standing.Read)]
        public static Length AdjusterSlip => Length.FromMillimeters(50);
    }

    /// <summary>EN 355:2002, energy absorbers.</summary>
    [SheetValues("EN 355:2002, energy absorbers; current when read")]
    public static class En355
    {
        /// <summary>The edition the values are from.</summary>
        [Member("", "", "the edition the values are from")]
        public static string Edition => "EN 355:2002";

        /// <summary>What is known of its status.</summary>
        [Member("", "", "what is known of its status")]
        public static string Status => "current when read";

        /// <summary>Peak force with 100 kg dropped twice the length, at most: 6 kN.</summary>
        [Member("F", "kN", "peak force with 100 kg dropped twice the length, at most")]
        [Source("EN 355:2002", Standing.Read)]
        public static Force PeakForce => Force.FromKilonewtons(6);

        /// <summary>Extension, at most: 1.75 m.</summary>
        [Member("x", "m", "extension, at most")]
        [Source("EN 355:2002", Standing.Read)]
        public static Length Extension => Length.FromMeters(1.75);

        /// <summary>Mass of the test drop: 100 kg.</summary>
        [Member("m", "kg", "mass of the test drop")]
        [Source("EN 355:2002", Standing.Read)]
        public static Mass TestMass => Mass.FromKilograms(100);

        /// <summary>Static load over 3 min: 15 kN.</summary>
        [Member("F", "kN", "static load over 3 min")]
        [Source("EN 355:2002", Standing.Read)]
        public static Force Static => Force.FromKilonewtons(15);
    }

    /// <summary>EN 361:2002, full-body harnesses.</summary>
    [SheetValues("EN 361:2002, full-body harnesses; current when read")]
    public static class En361
    {
        /// <summary>The edition the values are from.</summary>
        [Member("", "", "the edition the values are from")]
        public static string Edition => "EN 361:2002";

        /// <summary>What is known of its status.</summary>
        [Member("", "", "what is known of its status")]
        public static string Status => "current when read";

        /// <summary>Static load upward over 3 min: 15 kN.</summary>
        [Member("F", "kN", "static load upward over 3 min")]
        [Source("EN 361:2002", Standing.Read)]
        public static Force StaticUp => Force.FromKilonewtons(15);

        /// <summary>Static load downward over 3 min: 10 kN.</summary>
        [Member("F", "kN", "static load downward over 3 min")]
        [Source("EN 361:2002", Standing.Read)]
        public static Force StaticDown => Force.FromKilonewtons(10);

        /// <summary>Angle from upright after the drop, at most: 50°.</summary>
        [Member("", "°", "angle from upright after the drop, at most")]
        [Source("EN 361:2002", Standing.Read)]
        public static Angle Upright => Angle.FromDegrees(50);

        /// <summary>Mass of the test torso: 100 kg.</summary>
        [Member("m", "kg", "mass of the test torso")]
        [Source("EN 361:2002", Standing.Read)]
        public static Mass TestMass => Mass.FromKilograms(100);
    }

    /// <summary>EN 362:2004, connectors.</summary>
    [SheetValues("EN 362:2004, connectors; edition as quoted")]
    public static class En362
    {
        /// <summary>The edition the values are from.</summary>
        [Member("", "", "the edition the values are from")]
        public static string Edition => "EN 362:2004";

        /// <summary>What is known of its status.</summary>
        [Member("", "", "what is known of its status")]
        public static string Status => "edition as quoted";

        /// <summary>Strength along the major axis, at least: 20 kN.</summary>
        [Member("F", "kN", "strength along the major axis, at least")]
        [Source("EN 362:2004", Standing.SecondHand)]
        public static Force Major => Force.FromKilonewtons(20);
    }

    /// <summary>EN 358, belts and work-positioning lanyards.</summary>
    [SheetValues("EN 358, belts and work-positioning lanyards; edition not known here")]
    public static class En358
    {
        /// <summary>The edition the values are from.</summary>
        [Member("", "", "the edition the values are from")]
        public static string Edition => "EN 358";

        /// <summary>What is known of its status.</summary>
        [Member("", "", "what is known of its status")]
        public static string Status => "edition not known here";

        /// <summary>Static load of belt and lanyard: 15 kN.</summary>
        [Member("F", "kN", "static load of belt and lanyard")]
        [Source("EN 358", Standing.FromMemory)]
        public static Force Static => Force.FromKilonewtons(15);

        /// <summary>Static load of a textile lanyard: 22 kN.</summary>
        [Member("F", "kN", "static load of a textile lanyard")]
        [Source("EN 358", Standing.FromMemory)]
        public static Force TextileLanyard => Force.FromKilonewtons(22);
    }

    /// <summary>EN 795:2012, anchor devices.</summary>
    [SheetValues("EN 795:2012, anchor devices; current when read; not for sport")]
    public static class En795
    {
        /// <summary>The edition the values are from.</summary>
        [Member("", "", "the edition the values are from")]
        public static string Edition => "EN 795:2012";

        /// <summary>What is known of its status.</summary>
        [Member("", "", "what is known of its status")]
        public static string Status => "current when read; not for sport";

        /// <summary>Static load over 3 min: 12 kN.</summary>
        [Member("F", "kN", "static load over 3 min")]
        [Source("EN 795:2012", Standing.Read)]
        public static Force Static => Force.FromKilonewtons(12);

        /// <summary>Static load over 3 min with load-bearing parts that are not metal: 18 kN.</summary>
        [Member("F", "kN", "static load over 3 min with load-bearing parts that are not metal")]
        [Source("EN 795:2012", Standing.Read)]
        public static Force StaticTextile => Force.FromKilonewtons(18);

        /// <summary>How long the static load is held, at least: 3 min.</summary>
        [Member("t", "min", "how long the static load is held, at least")]
        [Source("EN 795:2012", Standing.Read)]
        public static Duration HoldingTime => Duration.FromMinutes(3);

        /// <summary>Force on the user, at most: 6 kN.</summary>
        [Member("F", "kN", "force on the user, at most")]
        [Source("EN 795:2012", Standing.SecondHand)]
        public static Force UserForce => Force.FromKilonewtons(6);
    }

    /// <summary>EN 353-1, guided fall arresters on a rigid line.</summary>
    [SheetValues("EN 353-1, guided fall arresters on a rigid line; edition not known here")]
    public static class En353_1
    {
        /// <summary>The edition the values are from.</summary>
        [Member("", "", "the edition the values are from")]
        public static string Edition => "EN 353-1";

        /// <summary>What is known of its status.</summary>
        [Member("", "", "what is known of its status")]
        public static string Status => "edition not known here";

        /// <summary>Static load: 15 kN.</summary>
        [Member("F", "kN", "static load")]
        [Source("EN 353-1", Standing.SecondHand)]
        public static Force Static => Force.FromKilonewtons(15);

        /// <summary>Static load, textile: 22 kN.</summary>
        [Member("F", "kN", "static load, textile")]
        [Source("EN 353-1", Standing.SecondHand)]
        public static Force StaticTextile => Force.FromKilonewtons(22);
    }

    /// <summary>EN 12841, rope access devices.</summary>
    [SheetValues("EN 12841, rope access devices; edition not known here")]
    public static class En12841
    {
        /// <summary>The edition the values are from.</summary>
        [Member("", "", "the edition the values are from")]
        public static string Edition => "EN 12841";

        /// <summary>What is known of its status.</summary>
        [Member("", "", "what is known of its status")]
        public static string Status => "edition not known here";

        /// <summary>Static load, type A: 15 kN.</summary>
        [Member("F", "kN", "static load, type A")]
        [Source("EN 12841", Standing.Read)]
        public static Force StaticA => Force.FromKilonewtons(15);

        /// <summary>Static load, type B: 4 kN.</summary>
        [Member("F", "kN", "static load, type B")]
        [Source("EN 12841", Standing.Read)]
        public static Force StaticB => Force.FromKilonewtons(4);

        /// <summary>Static load, type C: 12 kN.</summary>
        [Member("F", "kN", "static load, type C")]
        [Source("EN 12841", Standing.Read)]
        public static Force StaticC => Force.FromKilonewtons(12);
    }
}
