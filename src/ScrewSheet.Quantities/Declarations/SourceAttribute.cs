namespace ScrewSheet.Quantities.Declarations;

/// <summary>How well a formula or value is known to stand in its source.</summary>
public enum Standing
{
    /// <summary>Read in the source named.</summary>
    Read,

    /// <summary>Read in a text that quotes or transcribes the source named.</summary>
    SecondHand,

    /// <summary>From memory; to be checked against the source before use.</summary>
    FromMemory,

    /// <summary>Common practice, no source.</summary>
    CommonPractice,

    /// <summary>Derived here from first principles, as the text says.</summary>
    Derived,
}

/// <summary>Where a formula or value comes from.</summary>
/// <param name="work">Author, title, year, and the place in it.</param>
/// <param name="standing">How well it is known.</param>
[AttributeUsage(AttributeTargets.Method | AttributeTargets.Property | AttributeTargets.Class | AttributeTargets.Struct | AttributeTargets.Field, AllowMultiple = true)]
public sealed class SourceAttribute(string work, Standing standing) : Attribute
{
    /// <summary>Author, title, year, place.</summary>
    public string Work { get; } = work;

    /// <summary>How well it is known.</summary>
    public Standing Standing { get; } = standing;
}
