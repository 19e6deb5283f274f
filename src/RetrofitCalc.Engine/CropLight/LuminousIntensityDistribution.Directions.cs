using static System.Math;

namespace RetrofitCalc.Engine.CropLight;

public sealed partial class LuminousIntensityDistribution
{
    /// <summary>Intensity in a direction given by its two angles. [cd]</summary>
    /// <param name="verticalDegrees">Vertical angle. [degrees]</param>
    /// <param name="horizontalDegrees">Horizontal angle; for type C any turn is brought into 0–360. [degrees]</param>
    public double IntensityAt(double verticalDegrees, double horizontalDegrees)
    {
        var vertical = Type != PhotometricType.C && _vertical.First >= 0 ? Abs(verticalDegrees) : verticalDegrees;
        if (!(vertical >= _vertical.First && vertical <= _vertical.Last)) return 0;
        var (low, high, share) = PlanesAround(horizontalDegrees);
        return InPlane(low, vertical) * (1 - share) + InPlane(high, vertical) * share;
    }

    /// <summary>Intensity towards a place below a luminaire that is aimed straight down. [cd]</summary>
    /// <param name="along">Along the luminaire, the direction of plane 0. [m]</param>
    /// <param name="across">Across it, the direction of plane 90. [m]</param>
    /// <param name="below">How far the place lies below; above when negative. [m]</param>
    /// <remarks>Types A and B: the direction 0, 0 is aimed down; the axis of type A lies across, that of type B along.</remarks>
    public double IntensityTowards(double along, double across, double below)
    {
        var away = Sqrt(along * along + across * across + below * below);
        if (away == 0) return 0;
        return Type switch
        {
            PhotometricType.C => IntensityAt(Degrees(Acos(Clamp(below / away, -1, 1))), Degrees(Atan2(across, along))),
            PhotometricType.B => below < 0 ? 0 : IntensityAt(Degrees(Atan2(across, below)), Degrees(Asin(Clamp(along / away, -1, 1)))),
            _ => below < 0 ? 0 : IntensityAt(Degrees(Asin(Clamp(across / away, -1, 1))), Degrees(Atan2(along, below))),
        };
    }

    private double InPlane(int plane, double vertical)
    {
        var (low, high, share) = _vertical.Around(vertical);
        return _candelas[plane][low] * (1 - share) + _candelas[plane][high] * share;
    }

    private (int Low, int High, double Share) PlanesAround(double horizontal)
    {
        if (Type != PhotometricType.C) return HalvesAround(horizontal);
        var turn = horizontal - 360 * Floor(horizontal / 360);
        var folded = Symmetry switch
        {
            DistributionSymmetry.Axial => _horizontal.First,
            DistributionSymmetry.Quadrant => turn > 270 ? 360 - turn : turn > 180 ? turn - 180 : turn > 90 ? 180 - turn : turn,
            DistributionSymmetry.Bilateral => turn > 180 ? 360 - turn : turn,
            DistributionSymmetry.BilateralAcross => turn < 90 ? 180 - turn : turn > 270 ? 540 - turn : turn,
            _ => turn,
        };
        return folded < _horizontal.First || folded > _horizontal.Last ? AcrossTheSeam(folded) : _horizontal.Around(folded);
    }

    /// <summary>Planes that stop short of a full turn: a line from the last on to the first.</summary>
    private (int Low, int High, double Share) AcrossTheSeam(double turn)
    {
        var past = turn < _horizontal.First ? turn + 360 : turn;
        return (_horizontal.Degrees.Count - 1, 0, (past - _horizontal.Last) / (_horizontal.First + 360 - _horizontal.Last));
    }

    private (int Low, int High, double Share) HalvesAround(double horizontal) =>
        _horizontal.Around(_horizontal.First >= 0 ? Abs(horizontal) : horizontal); // beyond the last angle its plane goes on

    private static double Degrees(double radians) => radians * 180 / PI;
}
