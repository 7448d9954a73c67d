using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Terminal.Grid.State;

/// <summary>Finds the cell a written place means.</summary>
internal static class Places
{
    /// <summary>The cell that a name or address means on a sheet; <c>Fall.peak</c> and <c>Fall.B7</c> name another sheet. An address need hold nothing.</summary>
    public static CellId? Find(Workbook workbook, string sheet, string written)
    {
        int dot = written.IndexOf('.', StringComparison.Ordinal);
        string on = dot < 0 ? sheet : written[..dot], name = written[(dot + 1)..];
        if (workbook.Find(on) is not { } found) return null;
        if (found.Names.TryGetValue(name, out CellAddress named)) return new CellId(on, named);
        return CellAddress.TryParse(name, out CellAddress address) && address.IsValid ? new CellId(on, address) : null;
    }

    /// <summary>The same for what a reader types: small letters will do for an address, a sheet's name alone goes to it, and a name that only another sheet has is found there.</summary>
    public static CellId? FindTyped(Session session, string typed)
    {
        string text = typed.Trim();
        if (session.Workbook.Find(text) is not null) return new CellId(text, session.Places.GetValueOrDefault(text, new CellAddress(1, 1)));
        if (Find(session.Workbook, session.SheetName, text) is { } exact) return exact;
        foreach (Sheet sheet in session.Workbook.Sheets)
        {
            if (sheet.Names.TryGetValue(text, out CellAddress at)) return new CellId(sheet.Name, at);
        }
        int dot = text.IndexOf('.', StringComparison.Ordinal);
        string raised = text[..(dot + 1)] + text[(dot + 1)..].ToUpperInvariant();
        return Find(session.Workbook, session.SheetName, raised);
    }
}
