using UnitsNet;

namespace ScrewSheet.Quantities.Units;

/// <summary>Units on a number, as in <c>8.5.kN</c>: one property for each name of <see cref="Suffixes"/>.</summary>
public static class DoubleSuffixes
{
    extension(double value)
    {
        /// <summary>In N.</summary>
        public Force N => Written.As<Force>(value, "N");

        /// <summary>In kN.</summary>
        public Force kN => Written.As<Force>(value, "kN");

        /// <summary>In daN.</summary>
        public Force daN => Written.As<Force>(value, "daN");

        /// <summary>In MN.</summary>
        public Force MN => Written.As<Force>(value, "MN");

        /// <summary>In kgf.</summary>
        public Force kgf => Written.As<Force>(value, "kgf");

        /// <summary>In lbf.</summary>
        public Force lbf => Written.As<Force>(value, "lbf");

        /// <summary>In kip.</summary>
        public Force kip => Written.As<Force>(value, "kip");

        /// <summary>In mm.</summary>
        public Length mm => Written.As<Length>(value, "mm");

        /// <summary>In cm.</summary>
        public Length cm => Written.As<Length>(value, "cm");

        /// <summary>In m.</summary>
        public Length m => Written.As<Length>(value, "m");

        /// <summary>In in.</summary>
        public Length inch => Written.As<Length>(value, "in");

        /// <summary>In ft.</summary>
        public Length ft => Written.As<Length>(value, "ft");

        /// <summary>In mm².</summary>
        public Area mm2 => Written.As<Area>(value, "mm²");

        /// <summary>In cm².</summary>
        public Area cm2 => Written.As<Area>(value, "cm²");

        /// <summary>In m².</summary>
        public Area m2 => Written.As<Area>(value, "m²");

        /// <summary>In in².</summary>
        public Area in2 => Written.As<Area>(value, "in²");

        /// <summary>In mm³.</summary>
        public Volume mm3 => Written.As<Volume>(value, "mm³");

        /// <summary>In cm³.</summary>
        public Volume cm3 => Written.As<Volume>(value, "cm³");

        /// <summary>In m³.</summary>
        public Volume m3 => Written.As<Volume>(value, "m³");

        /// <summary>In mm⁴.</summary>
        public AreaMomentOfInertia mm4 => Written.As<AreaMomentOfInertia>(value, "mm⁴");

        /// <summary>In cm⁴.</summary>
        public AreaMomentOfInertia cm4 => Written.As<AreaMomentOfInertia>(value, "cm⁴");

        /// <summary>In m⁴.</summary>
        public AreaMomentOfInertia m4 => Written.As<AreaMomentOfInertia>(value, "m⁴");

        /// <summary>In Pa.</summary>
        public Pressure Pa => Written.As<Pressure>(value, "Pa");

        /// <summary>In kPa.</summary>
        public Pressure kPa => Written.As<Pressure>(value, "kPa");

        /// <summary>In MPa.</summary>
        public Pressure MPa => Written.As<Pressure>(value, "MPa");

        /// <summary>In GPa.</summary>
        public Pressure GPa => Written.As<Pressure>(value, "GPa");

        /// <summary>In psi.</summary>
        public Pressure psi => Written.As<Pressure>(value, "psi");

        /// <summary>In ksi.</summary>
        public Pressure ksi => Written.As<Pressure>(value, "ksi");

        /// <summary>In N/mm².</summary>
        public Pressure N_per_mm2 => Written.As<Pressure>(value, "N/mm²");

        /// <summary>In kN/m².</summary>
        public Pressure kN_per_m2 => Written.As<Pressure>(value, "kN/m²");

        /// <summary>In N·m.</summary>
        public Torque N_m => Written.As<Torque>(value, "N·m");

        /// <summary>In kN·m.</summary>
        public Torque kN_m => Written.As<Torque>(value, "kN·m");

        /// <summary>In N·mm.</summary>
        public Torque N_mm => Written.As<Torque>(value, "N·mm");

        /// <summary>In ft·lbf.</summary>
        public Torque ft_lbf => Written.As<Torque>(value, "ft·lbf");

        /// <summary>In in·lbf.</summary>
        public Torque in_lbf => Written.As<Torque>(value, "in·lbf");

        /// <summary>In N·m².</summary>
        public Quantity N_m2 => Written.Bare(value, "N·m²");

        /// <summary>In kPa·m^0.5.</summary>
        public Quantity kPa_sqrt_m => Written.Bare(value, "kPa·m^0.5");

        /// <summary>In MPa·m^0.5.</summary>
        public Quantity MPa_sqrt_m => Written.Bare(value, "MPa·m^0.5");

        /// <summary>In kg.</summary>
        public Mass kg => Written.As<Mass>(value, "kg");

        /// <summary>In g.</summary>
        public Mass g => Written.As<Mass>(value, "g");

        /// <summary>In t.</summary>
        public Mass t => Written.As<Mass>(value, "t");

        /// <summary>In lb.</summary>
        public Mass lb => Written.As<Mass>(value, "lb");

        /// <summary>In kg/m³.</summary>
        public Density kg_per_m3 => Written.As<Density>(value, "kg/m³");

        /// <summary>In kg/m³.</summary>
        public Density kg_m3 => Written.As<Density>(value, "kg/m³");

        /// <summary>In g/cm³.</summary>
        public Density g_per_cm3 => Written.As<Density>(value, "g/cm³");

        /// <summary>In g/cm³.</summary>
        public Density g_cm3 => Written.As<Density>(value, "g/cm³");

        /// <summary>In lb/ft³.</summary>
        public Density lb_per_ft3 => Written.As<Density>(value, "lb/ft³");

        /// <summary>In lb/ft³.</summary>
        public Density lb_ft3 => Written.As<Density>(value, "lb/ft³");

        /// <summary>In lb/in³.</summary>
        public Density lb_per_in3 => Written.As<Density>(value, "lb/in³");

        /// <summary>In lb/in³.</summary>
        public Density lb_in3 => Written.As<Density>(value, "lb/in³");

        /// <summary>In N/m.</summary>
        public ForcePerLength N_per_m => Written.As<ForcePerLength>(value, "N/m");

        /// <summary>In kN/m.</summary>
        public ForcePerLength kN_per_m => Written.As<ForcePerLength>(value, "kN/m");

        /// <summary>In N/mm.</summary>
        public ForcePerLength N_per_mm => Written.As<ForcePerLength>(value, "N/mm");

        /// <summary>In lbf/in.</summary>
        public ForcePerLength lbf_per_in => Written.As<ForcePerLength>(value, "lbf/in");

        /// <summary>In N/m³.</summary>
        public SpecificWeight N_per_m3 => Written.As<SpecificWeight>(value, "N/m³");

        /// <summary>In m/s.</summary>
        public Speed m_per_s => Written.As<Speed>(value, "m/s");

        /// <summary>In km/h.</summary>
        public Speed km_per_h => Written.As<Speed>(value, "km/h");

        /// <summary>In ft/s.</summary>
        public Speed ft_per_s => Written.As<Speed>(value, "ft/s");

        /// <summary>In m/s².</summary>
        public Acceleration m_per_s2 => Written.As<Acceleration>(value, "m/s²");

        /// <summary>In gn.</summary>
        public Acceleration gn => Written.As<Acceleration>(value, "gn");

        /// <summary>In s.</summary>
        public Duration s => Written.As<Duration>(value, "s");

        /// <summary>In ms.</summary>
        public Duration ms => Written.As<Duration>(value, "ms");

        /// <summary>In min.</summary>
        public Duration min => Written.As<Duration>(value, "min");

        /// <summary>In h.</summary>
        public Duration h => Written.As<Duration>(value, "h");

        /// <summary>In 1/s.</summary>
        public Frequency per_s => Written.As<Frequency>(value, "1/s");

        /// <summary>In rad/s.</summary>
        public RotationalSpeed rad_per_s => Written.As<RotationalSpeed>(value, "rad/s");

        /// <summary>In J.</summary>
        public Energy J => Written.As<Energy>(value, "J");

        /// <summary>In kJ.</summary>
        public Energy kJ => Written.As<Energy>(value, "kJ");

        /// <summary>In W.</summary>
        public Power W => Written.As<Power>(value, "W");

        /// <summary>In °.</summary>
        public Angle deg => Written.As<Angle>(value, "°");

        /// <summary>In rad.</summary>
        public Angle rad => Written.As<Angle>(value, "rad");

        /// <summary>In °C.</summary>
        public Temperature degC => Written.As<Temperature>(value, "°C");

        /// <summary>In K.</summary>
        public TemperatureDelta K => Written.As<TemperatureDelta>(value, "K");

        /// <summary>In %.</summary>
        public Quantity percent => Written.Bare(value, "%");
    }
}
