namespace RetrofitCalc.Files.Photometry;

/// <summary>The first thirteen numbers below the tilt.</summary>
internal sealed record Lm63Sheet
{
    public required int Lamps { get; init; }
    public required double LumensPerLamp { get; init; }
    public required double Multiplier { get; init; }
    public required int Verticals { get; init; }
    public required int Horizontals { get; init; }
    public required int Type { get; init; }
    public required int Units { get; init; }
    public required (double Width, double Length, double Height) Opening { get; init; }
    public required double BallastFactor { get; init; }
    public required double Second { get; init; }
    public required double Watts { get; init; }

    private const double Largest = PhotometricLimits.LargestNumber;
    private const double LeastFactor = 1e-6;
    private const double MostFactor = 1e6;
    private const double LongestSide = 1000;

    public static Lm63Sheet Of(Lm63Numbers numbers, List<string> notes)
    {
        var lamps = numbers.Whole("The number of lamps", 0, 100_000);
        var first = numbers.Line;
        return new Lm63Sheet
        {
            Lamps = lamps,
            LumensPerLamp = numbers.Within("The lumens per lamp", -1e6, Largest),
            Multiplier = numbers.Within("The candela multiplier", LeastFactor, MostFactor),
            Verticals = numbers.Whole("The number of vertical angles", 2, PhotometricLimits.Angles),
            Horizontals = numbers.Whole("The number of horizontal angles", 1, PhotometricLimits.Angles),
            Type = numbers.Whole("The photometric type", 1, 3),
            Units = numbers.Whole("The units", 1, 2),
            Opening = (Side(numbers, "width"), Side(numbers, "length"), Side(numbers, "height")),
            BallastFactor = NoteBreaks(numbers, first, notes).Within("The ballast factor", LeastFactor, MostFactor),
            Second = numbers.Within("The number after the ballast factor", 0, MostFactor),
            Watts = numbers.Within("The input watts", 0, Largest),
        };
    }

    private static double Side(Lm63Numbers numbers, string name) => numbers.Within($"The luminous {name}", -LongestSide, LongestSide);

    /// <summary>Called between the tenth number and the eleventh.</summary>
    private static Lm63Numbers NoteBreaks(Lm63Numbers numbers, int first, List<string> notes)
    {
        if (numbers.Problem is null && numbers.Line > first)
            notes.Add($"line {first}: the ten numbers below TILT= do not stand on one line; they were read one after another.");
        return numbers;
    }
}
