namespace ScrewSheet.Statistics.Tests.Checks;

/// <summary>The sources of printed rows.</summary>
internal static class Works
{
    public const string Cmh17Batch = "validation batch of 18 strengths shipped with an open statistics library; its results come from the program that belongs to CMH-17";
    public const string Cmh17 = "CMH-17-1G, 2012, chapter 8";
    public const string Nist = "NIST/SEMATECH e-Handbook of Statistical Methods, ";
    public const string En1990 = "EN 1990, Annex D, table D1";
}
