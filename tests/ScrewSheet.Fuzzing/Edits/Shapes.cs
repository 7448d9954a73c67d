namespace ScrewSheet.Fuzzing.Edits;

/// <summary>The workbooks that walks begin with.</summary>
internal static class Shapes
{
    /// <summary>One text each.</summary>
    public static IReadOnlyList<string> All { get; } =
    [
        // a chain, and a fan out of its first cell
        """
        sheet S
        A1 first = 1
        A2 => A1 + A1
        A3 => A2 * A1
        A4 => A3 - first
        A5 => A4 > A3 ? A2 : A1
        B1 => A1 * A1
        B2 => A1 / A3
        C3 "words"
        """,
        // runs over and beside each other
        """
        sheet S
        A1 = 1
        A2 = 2
        A3 = 3
        A5 = 5
        A6 => Sum(Series(A1, A5))
        B2 = 4
        B3 => Sum(Series(A1, B2))
        B6 => Sum(Series(A1, A6))
        C1 => Sum(Series(B2, B3))
        """,
        // two sheets that read each other
        """
        sheet S
        A1 peak = 8 kN
        A2 => peak * 2 + 1 kN
        A3 => T.B1 + A2
        B2 => T.low + A1
        B3 => Sum(Series(T.A1, T.A3))

        sheet T
        A1 low = 2 kN
        A2 => S.A1
        A3 => S.peak - low
        B1 => A3 > A1 ? A3 : A1
        """,
        // what stands between cells travels with them, or stays
        """
        // of the first sheet
        sheet S "Words about A1"
        widths A 20, C 9

        // travels with its cell
        A1   first   = 1   // a remark on A2
        A2 => A1 + A1 gives 2
        // two lines
        // above
        B1 => A2 * first
        what-if E2 "A1 in a title"
          vary A1: 1, 2, 3
          show B1

        plot F2 "Moments" of E2
        B3 note "a named note"
        C1 = 40m
        C2 => C1 + A1

        // at the end
        """,
        // columns by name
        """
        sheet S
        column C loads [kN]
        C1 "Loads"
        C2 = 2 kN
        C3 = 3 kN
        C5 = 4 kN
        A1 => Sum(loads)
        A2 => Sum(S.loads)
        A3 => C2 + C3
        B1 [kN, 1 decimal] => C5 - C2

        sheet T
        A1 => Sum(S.loads)
        A2 => S.C2
        """,
        // circles, empty places and faults
        """
        sheet S
        A1 => B1 + C1
        B1 => A2 + C1
        A2 => A1
        C1 = 1
        C2 => D9 + C1
        C3 => missing + C1
        D1 => Sum(Series(D2, D4))
        D3 = 3 kN
        D4 = 4
        B4 => C1 / B5
        B5 = 0
        """,
        // own functions, and nothing else on the second sheet
        """
        function double Twice(double a) => a + a
        sheet S
        A1 = 2
        A2 => Twice(A1)
        A3 => Twice(A2) + Twice(A1)
        B1 "left"
        B2 => A3 - A2
        sheet Empty
        """,
        // tables that name cells of their own sheet, of another, and the only one of a name
        """
        sheet S
        A1 first = 1
        A2 = 2
        what-if D1
          vary A2: 1, 2
          show T.B1, first
        A3 => A2 + first
        B1 => A3 * A2

        sheet T
        A1 => S.A2 + S.first
        what-if D2 "A1 of the other"
          vary S.A2: 1, 2 // A2 again
          vary first: 1, 2
          show B1, A4, S.A3
        B1 => A1 * A1
        A4 total => B1 + S.B1
        what-if G1
          vary S.first: 3, 4
          show total
        """,
        // a filled table
        """
        sheet S
        A1 = 1
        A2 = 2
        A3 = 3
        A4 = 4
        B1 = 10
        B2 = 20
        B3 = 30
        B4 = 40
        C1 => A1 * B1
        C2 => A2 * B2
        C3 => A3 * B3
        C4 => A4 * B4
        D4 total => Sum(Series(C1, C4))
        D1 => C1 / total
        D2 => C2 / total
        """,
    ];
}
