namespace RetrofitCalc.Engine.CropLight;

/// <summary>A place on the level of the crop, seen from above. Every finite number is legal.</summary>
/// <param name="X">Along the bench. [m]</param>
/// <param name="Y">Across the bench. [m]</param>
public readonly record struct PlanePoint(double X, double Y);
