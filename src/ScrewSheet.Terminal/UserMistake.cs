namespace ScrewSheet.Terminal;

/// <summary>A user's request that cannot be done: one plain sentence with what to do, shown on the error stream; the program ends with 2.</summary>
internal sealed class UserMistake(string sentence) : Exception(sentence);
