using System.Globalization;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Files;
using RetrofitCalc.Files.Typing;

namespace RetrofitCalc.Web.Features.Light.Readings;

/// <summary>Height of the lamps over the sensor, as one types it.</summary>
public static class ReadingHeight
{
    /// <summary>Least height. [m]</summary>
    public const double Least = 0.02;

    /// <summary>Greatest height. [m]</summary>
    public const double Most = 20;

    public static Parsed<Length> Read(string typed, CultureInfo culture, LengthUnit own) => LengthText.Parse(typed, culture, own) switch
    {
        { Ok: false } wrong => new(default, wrong.Problems),
        { Value: null } => Parsed.Bad<Length>($"Type how far the lamps hang over the sensor, like {(own == LengthUnit.Inches ? "12 in" : "0.3 m")}."),
        { Value: { } height } when height.Metres is < Least or > Most => Parsed.Bad<Length>($"\"{typed.Trim()}\" is out of range. Type {LengthText.Write(Length.FromMetres(Least), culture, own)} to {LengthText.Write(Length.FromMetres(Most), culture, own)}."),
        { Value: { } height } => Parsed.Good(height),
    };
}
