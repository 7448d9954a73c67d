using System.Globalization;
using System.Runtime.CompilerServices;

namespace ScrewSheet.Tests.Everywhere;

/// <summary>
/// Puts the tests of a project under the culture named in <c>SCREWSHEET_CULTURE</c>, before any of them runs and on every thread. Compiled into each
/// test project. Where the culture is not to be had, no test passes: none may seem to have been tried under it.
/// </summary>
internal static class TestCulture
{
    [ModuleInitializer]
    internal static void Set()
    {
        if (Environment.GetEnvironmentVariable("SCREWSHEET_CULTURE") is not { Length: > 0 } name) return;
        CultureInfo culture = CultureInfo.GetCultureInfo(name, predefinedOnly: true);
        CultureInfo.DefaultThreadCurrentCulture = CultureInfo.DefaultThreadCurrentUICulture = culture;
        CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = culture;
        // each culture of tests/cultures writes the decimals of one and a half with another sign than a point
        if (1.5.ToString(CultureInfo.CurrentCulture) == "1.5") throw new CultureNotFoundException(nameof(name), name, "Its numerals are those of the invariant culture: nothing would be tried.");
    }
}
