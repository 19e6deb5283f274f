namespace RetrofitCalc.Web.Features.Light.Maps;

/// <summary>The bench on paper: as long as there is room, true to its shape unless it would be too flat or too high to read.</summary>
/// <param name="Length">Of the bench. [m]</param>
/// <param name="Width">Of the bench. [m]</param>
/// <param name="Across">Room for its length. [px]</param>
public sealed record MapFrame(double Length, double Width, double Across)
{
    private const double Flattest = 0.28, Highest = 0.9;

    public double Down => Across * Math.Clamp(Width / Length, Flattest, Highest);

    public double X(double metres) => (metres / Length + 0.5) * Across;

    public double Y(double metres) => (metres / Width + 0.5) * Down;
}
