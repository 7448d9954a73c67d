namespace ScrewSheet.Terminal.Files;

/// <summary>What saving asks of the file system, each a step after which the program may be cut off; tests cut it off at every one.</summary>
internal interface IDisk
{
    /// <summary>True where anything of that name is: a file, a folder, a link to nothing.</summary>
    bool Exists(string path);

    /// <summary>The whole path of the file that is meant, symbolic links followed.</summary>
    string Target(string path);

    /// <summary>The bytes of a file, <see cref="BoundedRead.MostBytes"/> at most.</summary>
    byte[] Read(string path);

    /// <summary>Throws where the file may not be written.</summary>
    void AskToWrite(string path);

    /// <summary>Waits until no other saving program holds the folder, and holds it.</summary>
    /// <returns>Null where another held it all the while.</returns>
    IHeldFolder? Hold(string folder);

    /// <summary>The names of the files in a folder.</summary>
    IEnumerable<string> Names(string folder);

    /// <summary>A file that was not there.</summary>
    /// <param name="path">The file.</param>
    /// <param name="secret">True where nobody but its owner may open it for now.</param>
    INewFile Create(string path, bool secret);

    /// <summary>Adds to the end of a file and has it on the disk.</summary>
    void Append(string path, ReadOnlyMemory<byte> bytes);

    /// <summary>Gives a file another name in its folder, in place of the file that has that name.</summary>
    void Rename(string from, string to);

    /// <summary>Gives a file another name in its folder, which no other file may have.</summary>
    void Place(string from, string to);

    /// <summary>Removes a file, or nothing.</summary>
    void Delete(string path);
}

/// <summary>A file being written for the first time.</summary>
internal interface INewFile : IDisposable
{
    /// <summary>Writes on.</summary>
    void Write(ReadOnlyMemory<byte> bytes);

    /// <summary>Takes on the permissions of another file, and its owner and group as far as the system allows.</summary>
    void BeLike(string path);

    /// <summary>Has it on the disk.</summary>
    void Flush();
}

/// <summary>A folder in which no other saving program replaces files meanwhile.</summary>
internal interface IHeldFolder : IDisposable
{
    /// <summary>False where the file system knows no such hold, and others may be at work.</summary>
    bool IsAlone { get; }

    /// <summary>Has the names in it on the disk.</summary>
    void Flush();
}
