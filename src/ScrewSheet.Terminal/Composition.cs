using System.Reflection;
using ScrewSheet.Studies;
using ScrewSheet.Workbooks.Expressions;

namespace ScrewSheet.Terminal;

/// <summary>The one place where the library, the engine and the terminal meet.</summary>
internal static class Composition
{
    /// <summary>Loads the compiler beside whatever the program does first.</summary>
    public static void WarmUp() => new Thread(Engine.Calculator.WarmUp) { IsBackground = true }.Start();

    /// <summary>The same, and what studies need behind it.</summary>
    public static void WarmUpStudies() => new Thread(() =>
    {
        Engine.Calculator.WarmUp();
        StudyRunner.WarmUp();
    }) { IsBackground = true }.Start();

    /// <summary>The engine with everything the program ships.</summary>
    public static ICalculator Calculator() => new EngineCalculator(Library());

    /// <summary>Everything the program ships that a cell may use.</summary>
    public static FunctionLibrary Library() => FunctionLibrary.Of(Assembly.Load("ScrewSheet.Mechanics"), Assembly.Load("ScrewSheet.Statistics"));
}
