namespace ScrewSheet.Workbooks.Model;

/// <summary>Holds something that takes no part in comparing the record it stands in: where it came from, or what was worked out from it.</summary>
/// <typeparam name="T">What is held.</typeparam>
/// <param name="value">The value, or null.</param>
internal readonly struct Unseen<T>(T? value) : IEquatable<Unseen<T>> where T : class
{
    public T? Value => value;

    public bool Equals(Unseen<T> other) => true;

    public override bool Equals(object? obj) => obj is Unseen<T>;

    public override int GetHashCode() => 0;
}
