using ScrewSheet.Engine.Tests.Support;

namespace ScrewSheet.Engine.Tests.Units;

/// <summary>What units make of operators: the gap other unit libraries leave, and the rules of torque, angle and temperature.</summary>
public sealed class QuantityRulesTests
{
    [Theory]
    [InlineData("3 MPa * 2 mm", 6000, "ForcePerLength")] // Pressure * Length: a public request to UnitsNet
    [InlineData("200 N·m / (2 cm3)", 1e8, "Pressure")] // Torque / Volume is a bending stress
    [InlineData("Sqrt(3 kN * 3 kN + 4 kN * 4 kN)", 5000, "Force")]
    [InlineData("Sqrt(9 m2)", 3, "Length")]
    [InlineData("Cbrt(27 m3)", 3, "Length")]
    [InlineData("Root(16 m4, 4)", 2, "Length")]
    [InlineData("Pow(2 m, 4)", 16, "AreaMomentOfInertia")]
    [InlineData("3 m2 * 2 m * 1 m", 6, "AreaMomentOfInertia")] // Area * Length * Length: read as a second moment of area
    [InlineData("Pow(4 m2, 1 / 2)", 2, "Length")]
    [InlineData("Pow(2 m, -1)", 0.5, "Quantity")]
    [InlineData("1 kN * 3 m * 2 m / (4 kN)", 1.5, "Area")] // three quantities, no named intermediate
    [InlineData("9 kN / 3 kN", 3, "number")]
    [InlineData("2 * 3 kN", 6000, "Force")]
    [InlineData("10 kN / 2", 5000, "Force")]
    [InlineData("10.kN", 10000, "Force")]
    [InlineData("40.5.mm", 0.0405, "Length")]
    [InlineData("200 N·m * 2", 400, "Torque")]
    [InlineData("5 %", 0.05, "number")]
    [InlineData("200 N * 5 %", 10, "Force")]
    [InlineData("10 kN + 1 lbf", 10004.4482216152605, "Force")]
    [InlineData("30 ° * 2", Math.PI / 3, "Angle")]
    [InlineData("2 m * 90 °", Math.PI, "Length")] // in a product an angle has no dimension
    [InlineData("Sin(30 °)", 0.5, "number")]
    [InlineData("20 °C - 5 °C", 15, "TemperatureDelta")]
    [InlineData("Toughness(100 MPa, 25 mm) / (100 MPa)", 0.15811388300841897, "Quantity")]
    [InlineData("Crack(Toughness(100 MPa, 25 mm), 100 MPa)", 0.025, "Length")]
    public void APartOfArithmeticHasItsUnit(string expression, double si, string type) => Book.Eval(expression).Gives(si, type);

    [Fact]
    public void AnAngularAccelerationTimesAnInertiaReadsAsATorque() => Book.Of("A1 Torque spin => 3 kg·m2 * 2 rad/s2")["A1"].Gives(6, "Torque");

    [Theory]
    [InlineData("200 N·m + 3 kN", "A torque and a force cannot be added.")]
    [InlineData("200 N·m + 3 J", "A torque and an energy cannot be added. Both are in N·m yet differ; Work(force, distance) makes an energy.")]
    [InlineData("3 kN - 2", "A force and a number cannot be subtracted. Give the number a unit.")]
    [InlineData("3 kN < 2 mm", "A force and a length cannot be compared.")]
    [InlineData("3 kN == 3 kN", "Two quantities are never exactly equal. Write Near(a, b, tolerance).")]
    [InlineData("3 kN != 3 kN", "Two quantities are never exactly equal. Write Near(a, b, tolerance).")]
    [InlineData("30 ° + 1", "An angle and a number cannot be added. An angle alone is no number; divide it by 1 rad.")]
    [InlineData("20 °C + 5 °C", "Temperatures on a scale with a zero have no sums, products or powers. Write a difference in K.")]
    [InlineData("20 °C * 2", "Temperatures on a scale with a zero have no sums, products or powers. Write a difference in K.")]
    [InlineData("true ? 1 kN : 1 mm", "The branches give a force and a length. Let both give the same.")]
    [InlineData("true ? 1 kN : 1", "The branches give a force and a number. Let both give the same.")]
    [InlineData("Pow(2 m, 1 + 1)", "The exponent of a value with a unit is written as a number or a quotient of two. Write it out, such as Pow(x, 1 / 3), or divide the base by a unit first.")]
    [InlineData("Moment(3 mm, 4 mm)", "The parameter force of Moment is a force; a length was given.")]
    [InlineData("Joules(3 N·m)", "The parameter energy of Joules is an energy; a torque was given. Both are in N·m yet differ; Work(force, distance) makes an energy.")]
    [InlineData("Sin(30)", "The parameter angle of Sin is an angle; a number was given. An angle alone is no number; divide it by 1 rad.")]
    [InlineData("Larger(1 kN, 1 mm)", "Larger takes values of one kind; a force and a length were given.")]
    [InlineData("Larger(30 °, 1)", "Larger takes values of one kind; an angle and a number were given.")]
    public void AMismatchIsSaidInWordsAPersonKnows(string expression, string sentence) => Book.Eval(expression).FaultsWith(sentence);

    [Fact]
    public void AWrittenProductInNewtonMetresFitsTorqueAndEnergyButTheTwoNeverMix()
    {
        Book book = Book.Of("A1 => 3 kN * 2 m", "A2 Torque t => A1", "A3 Energy e => A1", "A4 => t + A1", "A5 => Joules(A1)", "A6 => t + e", "A7 => 3 kN * 2 m + 1 J");
        book["A1"].Gives(6000, "Quantity");
        book["A2"].Gives(6000, "Torque");
        book["A3"].Gives(6000, "Energy");
        book["A4"].Gives(12000, "Torque");
        book["A5"].Gives(6000, "number");
        book["A6"].FaultsWith("A torque and an energy cannot be added. Both are in N·m yet differ; Work(force, distance) makes an energy.");
        book["A7"].Gives(6001, "Energy");
    }

    [Fact]
    public void ComparisonsAllowAHairBetweenQuantities()
    {
        Book.Eval("0.1 m + 0.2 m <= 0.3 m").Gives("holds");
        Book.Eval("0.3 m >= 0.1 m + 0.2 m").Gives("holds");
        Book.Eval("1 m >= 100 cm").Gives("holds");
        Book.Eval("1 m <= 99.9 cm").Gives("fails");
    }

    [Fact]
    public void ADeclaredTypeAndAUnitInBracketsAreChecked()
    {
        Book book = Book.Of("A1 Force f => 2 mm", "A2 [kN] => 2 mm", "A3 Farce g => 2 kN", "A4 Torque h [N·m] => 2 kN * 10 mm");
        book["A1"].FaultsWith("The cell is declared Force; its expression gives a length. Change the type or the expression.");
        book["A2"].FaultsWith("The cell is shown in kN; its value is a length. Change the unit in the brackets.");
        Assert.StartsWith("Farce is no type. Did you mean Force?", book["A3"].Fault!.Sentence, StringComparison.Ordinal);
        book["A4"].Gives("20 N·m");
    }
}
