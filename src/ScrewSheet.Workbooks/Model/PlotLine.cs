using ScrewSheet.Workbooks.Diagnostics;

namespace ScrewSheet.Workbooks.Model;

/// <summary>A <c>plot</c> line, read: <c>plot F2 "Moment by length" of D2</c>.</summary>
/// <param name="At">The cell its top left corner stands at.</param>
/// <param name="Title">The words above it, or null for those of the table.</param>
/// <param name="Table">The top left cell of the what-if table it draws, on the same sheet.</param>
/// <param name="Place">Where the line stands.</param>
public sealed record PlotLine(CellAddress At, string? Title, CellAddress Table, Place Place);
