using System.Runtime.ExceptionServices;
using ScrewSheet.Engine;

namespace ScrewSheet.Studies.Scenarios;

/// <summary>Does numbered pieces of work on several threads. Which thread does which piece makes no difference to what comes out.</summary>
internal static class Workers
{
    /// <summary>Does them all, or stops at the first exception.</summary>
    /// <typeparam name="TState">What each thread keeps for itself.</typeparam>
    /// <param name="pieces">How many pieces.</param>
    /// <param name="threads">How many threads at most.</param>
    /// <param name="make">Makes a thread's own state.</param>
    /// <param name="work">Does one piece.</param>
    /// <param name="progress">Told what share is done, from 0 to 1; null for nobody.</param>
    /// <param name="stop">Stops between pieces.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static void Run<TState>(long pieces, int threads, Func<TState> make, Action<TState, long> work, IProgress<double>? progress, CancellationToken stop)
    {
        long next = -1, done = 0;
        Exception? failure = null;
        int used = (int)Math.Clamp(Math.Min(threads, pieces), 1, 64);
        if (used == 1) Work();
        else
        {
            Thread[] others = [.. Enumerable.Range(1, used - 1).Select(_ => new Thread(() => Calculator.WithRoom(Work)) { IsBackground = true })];
            foreach (Thread other in others) other.Start();
            Work();
            foreach (Thread other in others) other.Join();
        }
        if (failure is not null) ExceptionDispatchInfo.Throw(failure);
        stop.ThrowIfCancellationRequested();

        bool Work()
        {
            try
            {
                TState state = make();
                for (long piece = Interlocked.Increment(ref next); piece < pieces && Volatile.Read(ref failure) is null; piece = Interlocked.Increment(ref next))
                {
                    stop.ThrowIfCancellationRequested();
                    work(state, piece);
                    progress?.Report(Interlocked.Increment(ref done) / (double)pieces);
                }
            }
            catch (Exception exception)
            {
                Interlocked.CompareExchange(ref failure, exception, null);
            }
            return true;
        }
    }
}
