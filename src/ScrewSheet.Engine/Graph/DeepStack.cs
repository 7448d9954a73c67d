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
        ExceptionDispatchInfo? failure = null;
        Thread thread = new(() =>
        {
            inside = true;
            try
            {
                value = work();
            }
            catch (Exception exception)
            {
                failure = ExceptionDispatchInfo.Capture(exception);
            }
        }, Bytes) { IsBackground = true };
        thread.Start();
        thread.Join();
        failure?.Throw();
        return value!;
    }
}
