// the least a .NET program can do and still be seen to have run: what a cold start is measured against
Console.WriteLine("one line");
