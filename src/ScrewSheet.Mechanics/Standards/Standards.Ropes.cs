using ScrewSheet.Quantities.Declarations;
using UnitsNet;

namespace ScrewSheet.Mechanics;

public static partial class Standards
{
    /// <summary>EN 892:2004, dynamic ropes.</summary>
    [SheetValues("EN 892:2004, dynamic ropes; EN 892:2012+A1:2016 was withdrawn in December 2021; the text after it was not read")]
    public static class En892
    {
        /// <summary>The edition the values are from.</summary>
        [Member("", "", "the edition the values are from")]
        public static string Edition => "EN 892:2004";

        /// <summary>What is known of its status.</summary>
        [Member("", "", "what is known of its status")]
        public static string Status => "EN 892:2012+A1:2016 was withdrawn in December 2021; the text after it was not read";

        /// <summary>Peak force in the first test drop, single rope, at most: 12 kN.</summary>
        [Member("F", "kN", "peak force in the first test drop, single rope, at most")]
        [Source("EN 892:2004, as quoted in the Alberta OHS Code guide, section 818", Standing.SecondHand)]
        public static Force PeakForceSingle => Force.FromKilonewtons(12);

        /// <summary>Peak force in the first test drop, half rope, one strand, at most: 8 kN.</summary>
        [Member("F", "kN", "peak force in the first test drop, half rope, one strand, at most")]
        [Source("EN 892:2004, as quoted in the Alberta OHS Code guide, section 818", Standing.SecondHand)]
        public static Force PeakForceHalf => Force.FromKilonewtons(8);

        /// <summary>Peak force in the first test drop, twin rope, both strands, at most: 12 kN.</summary>
        [Member("F", "kN", "peak force in the first test drop, twin rope, both strands, at most")]
        [Source("EN 892:2004, as quoted in the Alberta OHS Code guide, section 818", Standing.SecondHand)]
        public static Force PeakForceTwin => Force.FromKilonewtons(12);

        /// <summary>Mass of the test drop, single rope, one strand: 80 kg.</summary>
        [Member("m", "kg", "mass of the test drop, single rope, one strand")]
        [Source("EN 892, three texts agree", Standing.SecondHand)]
        public static Mass TestMassSingle => Mass.FromKilograms(80);

        /// <summary>Mass of the test drop, half rope, one strand: 55 kg.</summary>
        [Member("m", "kg", "mass of the test drop, half rope, one strand")]
        [Source("EN 892, three texts agree", Standing.SecondHand)]
        public static Mass TestMassHalf => Mass.FromKilograms(55);

        /// <summary>Mass of the test drop, twin rope, two strands: 80 kg.</summary>
        [Member("m", "kg", "mass of the test drop, twin rope, two strands")]
        [Source("EN 892, three texts agree", Standing.SecondHand)]
        public static Mass TestMassTwin => Mass.FromKilograms(80);

        /// <summary>Drops held without break, single rope, at least: 5.</summary>
        [Member("", "", "drops held without break, single rope, at least")]
        [Source("EN 892", Standing.SecondHand)]
        public static double DropsSingle => 5;

        /// <summary>Drops held without break, half rope, at least: 5.</summary>
        [Member("", "", "drops held without break, half rope, at least")]
        [Source("EN 892", Standing.SecondHand)]
        public static double DropsHalf => 5;

        /// <summary>Drops held without break, twin rope, at least: 12.</summary>
        [Member("", "", "drops held without break, twin rope, at least")]
        [Source("EN 892", Standing.SecondHand)]
        public static double DropsTwin => 12;

        /// <summary>Static elongation, single rope, at most: 0.10.</summary>
        [Member("", "", "static elongation, single rope, at most")]
        [Source("EN 892:2004", Standing.SecondHand)]
        public static double StaticElongationSingle => 0.10;

        /// <summary>Static elongation, half rope, at most: 0.12.</summary>
        [Member("", "", "static elongation, half rope, at most")]
        [Source("EN 892:2004", Standing.SecondHand)]
        public static double StaticElongationHalf => 0.12;

        /// <summary>Static elongation, twin rope, at most: 0.10.</summary>
        [Member("", "", "static elongation, twin rope, at most")]
        [Source("EN 892:2004", Standing.SecondHand)]
        public static double StaticElongationTwin => 0.10;

        /// <summary>Dynamic elongation in the first drop, at most: 0.40.</summary>
        [Member("", "", "dynamic elongation in the first drop, at most")]
        [Source("EN 892:2004", Standing.SecondHand)]
        public static double DynamicElongation => 0.40;

        /// <summary>Sheath slippage, at most: 20 mm.</summary>
        [Member("", "mm", "sheath slippage, at most")]
        [Source("EN 892:2004", Standing.SecondHand)]
        public static Length SheathSlip => Length.FromMillimeters(20);
    }

    /// <summary>UIAA water repellent, water-repellent ropes.</summary>
    [SheetValues("UIAA water repellent, water-repellent ropes; edition not known here")]
    public static class UiaaWaterRepellent
    {
        /// <summary>The edition the values are from.</summary>
        [Member("", "", "the edition the values are from")]
        public static string Edition => "UIAA water repellent";

        /// <summary>What is known of its status.</summary>
        [Member("", "", "what is known of its status")]
        public static string Status => "edition not known here";

        /// <summary>Water taken up after soaking over the mass of the rope, at most; untreated ropes about 0.50: 0.05.</summary>
        [Member("", "", "water taken up after soaking over the mass of the rope, at most; untreated ropes about 0.50")]
        [Source("UIAA water repellent", Standing.Read)]
        public static double WaterUptake => 0.05;
    }

    /// <summary>EN 1891:1998, low-stretch ropes.</summary>
    [SheetValues("EN 1891:1998, low-stretch ropes; edition as quoted")]
    public static class En1891
    {
        /// <summary>The edition the values are from.</summary>
        [Member("", "", "the edition the values are from")]
        public static string Edition => "EN 1891:1998";

        /// <summary>What is known of its status.</summary>
        [Member("", "", "what is known of its status")]
        public static string Status => "edition as quoted";

        /// <summary>Peak force in a fall of factor 0.3, less than this: 6 kN.</summary>
        [Member("F", "kN", "peak force in a fall of factor 0.3, less than this")]
        [Source("EN 1891:1998", Standing.SecondHand)]
        public static Force PeakForce => Force.FromKilonewtons(6);

        /// <summary>Mass of the test fall, type A: 100 kg.</summary>
        [Member("m", "kg", "mass of the test fall, type A")]
        [Source("EN 1891:1998", Standing.SecondHand)]
        public static Mass TestMassA => Mass.FromKilograms(100);

        /// <summary>Mass of the test fall, type B: 80 kg.</summary>
        [Member("m", "kg", "mass of the test fall, type B")]
        [Source("EN 1891:1998", Standing.SecondHand)]
        public static Mass TestMassB => Mass.FromKilograms(80);

        /// <summary>Falls of factor 1 held, at least: 5.</summary>
        [Member("", "", "falls of factor 1 held, at least")]
        [Source("EN 1891", Standing.SecondHand)]
        public static double DropsHeld => 5;

        /// <summary>Static strength, type A: 22 kN.</summary>
        [Member("F", "kN", "static strength, type A")]
        [Source("EN 1891", Standing.SecondHand)]
        public static Force StaticA => Force.FromKilonewtons(22);

        /// <summary>Static strength, type B: 18 kN.</summary>
        [Member("F", "kN", "static strength, type B")]
        [Source("EN 1891", Standing.SecondHand)]
        public static Force StaticB => Force.FromKilonewtons(18);

        /// <summary>With terminations over 3 min, type A: 15 kN.</summary>
        [Member("F", "kN", "with terminations over 3 min, type A")]
        [Source("EN 1891", Standing.SecondHand)]
        public static Force WithTerminationsA => Force.FromKilonewtons(15);

        /// <summary>With terminations over 3 min, type B: 12 kN.</summary>
        [Member("F", "kN", "with terminations over 3 min, type B")]
        [Source("EN 1891", Standing.SecondHand)]
        public static Force WithTerminationsB => Force.FromKilonewtons(12);

        /// <summary>Elongation from 50 to 150 kg, at most: 0.05.</summary>
        [Member("", "", "elongation from 50 to 150 kg, at most")]
        [Source("EN 1891", Standing.SecondHand)]
        public static double Elongation => 0.05;
    }

    /// <summary>EN 564, accessory cord.</summary>
    [SheetValues("EN 564, accessory cord; edition not known here")]
    public static class En564
    {
        /// <summary>The edition the values are from.</summary>
        [Member("", "", "the edition the values are from")]
        public static string Edition => "EN 564";

        /// <summary>What is known of its status.</summary>
        [Member("", "", "what is known of its status")]
        public static string Status => "edition not known here";

        /// <summary>Strength of 4 mm cord, 0.2 d² kN: 3.2 kN.</summary>
        [Member("F", "kN", "strength of 4 mm cord, 0.2 d² kN")]
        [Source("EN 564", Standing.SecondHand)]
        public static Force Cord4 => Force.FromKilonewtons(3.2);

        /// <summary>Strength of 5 mm cord, 0.2 d² kN: 5.0 kN.</summary>
        [Member("F", "kN", "strength of 5 mm cord, 0.2 d² kN")]
        [Source("EN 564", Standing.SecondHand)]
        public static Force Cord5 => Force.FromKilonewtons(5.0);

        /// <summary>Strength of 6 mm cord, 0.2 d² kN: 7.2 kN.</summary>
        [Member("F", "kN", "strength of 6 mm cord, 0.2 d² kN")]
        [Source("EN 564", Standing.SecondHand)]
        public static Force Cord6 => Force.FromKilonewtons(7.2);

        /// <summary>Strength of 7 mm cord, 0.2 d² kN: 9.8 kN.</summary>
        [Member("F", "kN", "strength of 7 mm cord, 0.2 d² kN")]
        [Source("EN 564", Standing.SecondHand)]
        public static Force Cord7 => Force.FromKilonewtons(9.8);

        /// <summary>Strength of 8 mm cord, 0.2 d² kN: 12.8 kN.</summary>
        [Member("F", "kN", "strength of 8 mm cord, 0.2 d² kN")]
        [Source("EN 564", Standing.SecondHand)]
        public static Force Cord8 => Force.FromKilonewtons(12.8);
    }

    /// <summary>EN 565:2017, tape.</summary>
    [SheetValues("EN 565:2017, tape; current when read")]
    public static class En565
    {
        /// <summary>The edition the values are from.</summary>
        [Member("", "", "the edition the values are from")]
        public static string Edition => "EN 565:2017";

        /// <summary>What is known of its status.</summary>
        [Member("", "", "what is known of its status")]
        public static string Status => "current when read";

        /// <summary>Strength of tape, at least: 10 kN.</summary>
        [Member("F", "kN", "strength of tape, at least")]
        [Source("EN 565:2017", Standing.Read)]
        public static Force Strength => Force.FromKilonewtons(10);

        /// <summary>Strength for each marker line: 5 kN.</summary>
        [Member("F", "kN", "strength for each marker line")]
        [Source("EN 565", Standing.FromMemory)]
        public static Force PerMarkerLine => Force.FromKilonewtons(5);
    }

    /// <summary>EN 566, slings.</summary>
    [SheetValues("EN 566, slings; edition not known here")]
    public static class En566
    {
        /// <summary>The edition the values are from.</summary>
        [Member("", "", "the edition the values are from")]
        public static string Edition => "EN 566";

        /// <summary>What is known of its status.</summary>
        [Member("", "", "what is known of its status")]
        public static string Status => "edition not known here";

        /// <summary>Strength of a sling, at least: 22 kN.</summary>
        [Member("F", "kN", "strength of a sling, at least")]
        [Source("EN 566", Standing.SecondHand)]
        public static Force Strength => Force.FromKilonewtons(22);
    }
}
