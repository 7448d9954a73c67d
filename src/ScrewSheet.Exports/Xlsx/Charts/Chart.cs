using System.Collections.Immutable;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Exports.Xlsx.Charts;

/// <summary>Cells a chart reads, and what they hold now.</summary>
/// <param name="Reference">The range, with its sheet.</param>
/// <param name="Values">The numbers; null for one that is not there.</param>
internal sealed record ChartRange(string Reference, ImmutableArray<double?> Values);

/// <summary>A line of a chart.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Y">Its values.</param>
internal sealed record ChartSeries(string Name, ChartRange Y);

/// <summary>A chart of numbers over numbers: lines through points, told apart by their markers and dashes.</summary>
/// <param name="At">The cell its top left corner stands at.</param>
/// <param name="Title">The words above it.</param>
/// <param name="XTitle">What goes across, with its unit.</param>
/// <param name="YTitle">What goes up, with its unit.</param>
/// <param name="X">The values across.</param>
/// <param name="Series">The lines.</param>
internal sealed record Chart(CellAddress At, string Title, string XTitle, string YTitle, ChartRange X, ImmutableArray<ChartSeries> Series);
