namespace ScrewSheet.Terminal;

/// <summary>A user's request that cannot be done: one plain sentence with what to do, shown on the error stream; the program ends with 2.</summary>
internal class UserMistake(string sentence) : Exception(sentence);

/// <summary>A file that holds what it should, while nobody can promise that it still does after a loss of power.</summary>
internal sealed class WrittenNotFlushed(string sentence) : UserMistake(sentence);
