internal static class Program { private static int Main() { Console.WriteLine("screwsheet"); return 0; } }
