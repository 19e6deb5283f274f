namespace RetrofitCalc.Engine.CropLight;

/// <summary>Which part of a distribution stands for the whole.</summary>
public enum DistributionSymmetry
{
    /// <summary>Every direction has its own value.</summary>
    None,

    /// <summary>The same all around: one plane.</summary>
    Axial,

    /// <summary>A quarter, mirrored twice.</summary>
    Quadrant,

    /// <summary>A half, mirrored left to right: planes 0–180, or horizontal angles from 0.</summary>
    Bilateral,

    /// <summary>A half, mirrored along: planes 90–270, or vertical angles from 0 for types A and B.</summary>
    BilateralAcross,
}
