using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Luminaires;

/// <summary>A counted survey line with what is fitted on it, catalogue rows looked up: as surveyed, or after a measure.</summary>
/// <param name="Line">The survey line.</param>
/// <param name="Area">Its area.</param>
/// <param name="Fitting">What is fitted.</param>
/// <param name="Luminaires">Luminaires fitted. [count; a fraction when one new luminaire replaces several]</param>
public sealed record FittedLine(SurveyLine Line, Area Area, Fitting Fitting, double Luminaires);

/// <summary>What is fitted in one luminaire.</summary>
public abstract record Fitting;

/// <summary>Lamps on ballasts.</summary>
/// <param name="SetUp">The set-up.</param>
/// <param name="Lamp">Its lamp.</param>
/// <param name="Ballasts">Its ballasts, in order; null where nobody has looked inside.</param>
/// <param name="Renewed">True when lamps and ballasts are new at the start.</param>
public sealed record BallastedFitting(SetUp SetUp, Lamp Lamp, IReadOnlyList<Ballast?> Ballasts, bool Renewed = false) : Fitting;

/// <summary>Direct-wire tubes, no ballast.</summary>
/// <param name="Tube">The tube.</param>
/// <param name="TubesPerLuminaire">Tubes in one luminaire. [count]</param>
public sealed record TubeFitting(DirectWireTube Tube, int TubesPerLuminaire) : Fitting;

/// <summary>A ready-wired luminaire.</summary>
/// <param name="Luminaire">The luminaire.</param>
public sealed record LuminaireFitting(ReadyWiredLuminaire Luminaire) : Fitting;
