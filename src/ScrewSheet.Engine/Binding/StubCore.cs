namespace ScrewSheet.Engine.Binding;

/// <summary>
/// The part of the core library that the compiler cannot do without, and the four members of a text. It stands in place of a reference to the real one, whose thousands
/// of names would be loaded at every start only to be kept out of cells.
/// </summary>
internal static class StubCore
{
    /// <summary>Its source.</summary>
    public const string Text = """
        namespace System
        {
            public class Object { }
            public abstract class ValueType { }
            public abstract class Enum : ValueType { }
            public struct Void { }
            public struct Boolean { } public struct Char { } public struct SByte { } public struct Byte { } public struct Int16 { } public struct UInt16 { } public struct Int32 { }
            public struct UInt32 { } public struct Int64 { } public struct UInt64 { } public struct IntPtr { } public struct UIntPtr { } public struct Single { } public struct Double { }
            public struct Decimal { }
            public sealed class String
            {
                public int Length => 0;
                public bool Contains(string value) => true; public bool StartsWith(string value) => true; public bool EndsWith(string value) => true;
            }
            public abstract class Array { }
            public abstract class Attribute { }
            public sealed class ParamArrayAttribute : Attribute { }
            public abstract class Delegate { }
            public abstract class MulticastDelegate : Delegate { }
            public delegate R Func<in T, out R>(T value);
            public struct Nullable<T> where T : struct { }
            public abstract class Type { }
            public interface IEquatable<T> { }
        }

        """;
}
