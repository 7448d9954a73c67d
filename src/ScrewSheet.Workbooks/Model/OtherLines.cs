using System.Collections.Immutable;
using ScrewSheet.Workbooks.Diagnostics;

namespace ScrewSheet.Workbooks.Model;

/// <summary>A piece of a line and where it begins.</summary>
/// <param name="Text">Without blanks around it and without a remark.</param>
/// <param name="Place">Where it stands; its line in the file and the column of its first character.</param>
public sealed record PlacedText(string Text, Place Place);

/// <summary>A what-if table as written: <c>what-if D2 "Moment by exposed length"</c> and the indented lines after it.</summary>
/// <param name="Anchor">Its top left cell.</param>
/// <param name="Title">The words after the address, or null.</param>
/// <param name="Vary">What follows each <c>vary</c>, in order.</param>
/// <param name="Show">What follows each <c>show</c>, in order; usually one.</param>
/// <param name="Place">Where the address stands.</param>
public sealed record WhatIfBlock(CellAddress Anchor, string? Title, ImmutableArray<PlacedText> Vary, ImmutableArray<PlacedText> Show, Place Place);

/// <summary>A line that begins with a word of its own; who gives it effect reads it.</summary>
/// <param name="Word"><c>correlate</c>, <c>plot</c> or <c>reviewed</c>.</param>
/// <param name="Text">The whole line.</param>
/// <param name="Block">The indented lines after it.</param>
/// <param name="Place">Where the line stands.</param>
public sealed record ReservedLine(string Word, string Text, ImmutableArray<PlacedText> Block, Place Place);

/// <summary>A line that could not be read and belongs to no cell; kept and saved back unchanged.</summary>
/// <param name="Text">The whole line.</param>
/// <param name="Fault">What is wrong with it.</param>
public sealed record BrokenLine(string Text, Fault Fault);
