using System.Diagnostics.CodeAnalysis;

namespace ScrewSheet.Fuzzing;

/// <summary>A door that bytes from outside come in by, and what must hold whatever the bytes are.</summary>
internal abstract class Target
{
    /// <summary>The processor time one input may take, in seconds; several times the program's own budgets.</summary>
    private const double MostSeconds = 8;

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Target> All { get; } = [new FileTarget(), new ExpressionTarget(), new TableTarget()];

    /// <summary>Its name, which is that of its folder of seeds.</summary>
    public abstract string Name { get; }

    /// <summary>The target of that name, or null.</summary>
    public static Target? Named(string name) => All.FirstOrDefault(target => target.Name == name);

    /// <summary>Tries one input.</summary>
    /// <exception cref="BrokenPromiseException">Something did not hold.</exception>
    public void Try(byte[] input)
    {
        TimeSpan before = Environment.CpuUsage.TotalTime;
        Run(input);
        double seconds = (Environment.CpuUsage.TotalTime - before).TotalSeconds;
        Promise(seconds < MostSeconds, $"one input took {seconds:0.0} s");
    }

    /// <summary>Does what the program does with such bytes, and looks at what comes of it.</summary>
    protected abstract void Run(byte[] input);

    /// <summary>Throws where something does not hold.</summary>
    public static void Promise([DoesNotReturnIf(false)] bool holds, string otherwise)
    {
        if (!holds) throw new BrokenPromiseException(otherwise);
    }
}

/// <summary>Something a target promises does not hold.</summary>
internal sealed class BrokenPromiseException(string what) : Exception(what);
