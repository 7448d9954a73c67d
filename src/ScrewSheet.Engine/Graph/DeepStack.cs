using System.Runtime.ExceptionServices;

namespace ScrewSheet.Engine.Graph;

/// <summary>Runs work on a thread with a large stack: parser, binder and translator recurse as deep as an expression is nested.</summary>
internal static class DeepStack
{
    private const int Bytes = 16 * 1024 * 1024;

    [ThreadStatic]
    private static bool inside;

    /// <summary>True on such a thread.</summary>
    public static bool Inside => inside;

    /// <summary>Runs it and hands back its value or its exception.</summary>
    public static T Run<T>(Func<T> work)
    {
        if (inside) return work();
        T? value = default;
        new Running(() => value = work()).End();
        return value!;
    }

    /// <summary>Runs work in parts side by side, the first on this thread where it has such a stack, and ends when all have ended.</summary>
    /// <param name="parts">How many.</param>
    /// <param name="work">The work, by the number of its part from 0; what it throws is thrown here.</param>
    public static void Run(int parts, Action<int> work)
    {
        Running[] others = [.. Enumerable.Range(1, parts - 1).Select(part => new Running(() => work(part)))];
        try
        {
            Run(() =>
            {
                work(0);
                return true;
            });
        }
        finally
        {
            foreach (Running other in others) other.Wait();
        }
        foreach (Running other in others) other.End();
    }

    /// <summary>Work that has begun.</summary>
    private sealed class Running
    {
        private readonly Thread thread;
        private ExceptionDispatchInfo? failure;

        public Running(Action work)
        {
            thread = new Thread(() =>
            {
                inside = true;
                try
                {
                    work();
                }
                catch (Exception exception)
                {
                    failure = ExceptionDispatchInfo.Capture(exception);
                }
            }, Bytes) { IsBackground = true };
            thread.Start();
        }

        /// <summary>Waits for it.</summary>
        public void Wait() => thread.Join();

        /// <summary>Waits for it; throws what it threw.</summary>
        public void End()
        {
            Wait();
            failure?.Throw();
        }
    }
}
