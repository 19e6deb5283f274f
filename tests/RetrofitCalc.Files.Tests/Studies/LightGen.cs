using CsCheck;
using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Spectra;
using RetrofitCalc.Engine.Studies;
using static RetrofitCalc.Files.Tests.Studies.StudyGen;

namespace RetrofitCalc.Files.Tests.Studies;

/// <summary>Light of a study in every shape the types allow; the figures need not make sense.</summary>
internal static class LightGen
{
    private static readonly Gen<Length> Metres = Number.Select(Length.FromMetres);
    private static readonly Gen<double> Signed = Gen.Double[-1e3, 1e3];
    private static readonly Gen<PlanePoint> Points = Gen.Select(Signed, Signed, (x, y) => new PlanePoint(x, y));
    private static readonly Gen<LuxConversion> Conversions = Gen.Select(Number, Share, Source, (lux, off, source) => new LuxConversion(lux, off, source));
    private static readonly Gen<PhotonFluxDensity> Photons = Number.Select(PhotonFluxDensity.FromMicromolesPerSquareMetre);

    private static readonly Gen<LuminairePlace> Places = Gen.Select(Text, Points, Signed, Metres, (line, centre, n, spacing) =>
        new LuminairePlace(line, centre, n) { LampSpacing = spacing, HigherBy = n, TiltDegrees = -n });

    private static readonly Gen<ReadingSet> Sets = Gen.Select(
        Gen.Select(Text, Enum<ReadingPattern>(), Enum<LightUnit>(), MaybeRef(Conversions), Metres),
        List(Signed), List(Signed), List(List(Maybe(Number))), MaybeRef(Text), Maybe(Date), Maybe(Gen.Bool), List(Gen.Int[0, 99]),
        (what, columns, rows, values, step, date, dark, confirmed) => new ReadingSet
        {
            Id = what.Item1, Pattern = what.Item2, Unit = what.Item3, Conversion = what.Item4, Height = what.Item5, Columns = columns, Rows = rows, Values = values,
            LitStep = step, Date = date, RoomDark = dark, SensorLevel = dark, MeterUncertainty = 0.07, Note = what.Item1, Confirmed = confirmed,
        });

    private static readonly Gen<Surroundings> Boxes =
        Gen.Select(Metres, Share, Share, Share, (height, a, b, c) => new Surroundings(height, new CavityShare(a, b, c)));

    private static readonly Gen<PeopleLight> People = Gen.Select(MaybeRef(Text), Maybe(Number.Select(Illuminance.FromLux)), Maybe(Metres),
        (task, lux, above) => new PeopleLight(task, lux) { LampsAbovePlane = above });

    public static readonly Gen<AreaLight> Areas = Gen.Select(Maybe(Metres), MaybeRef(Boxes), List(Places), List(Sets), Maybe(Signed), Share, MaybeRef(People),
        List(Gen.Select(Text, Photons, (onto, light) => new StrayLight(onto, light))),
        (bench, box, places, sets, air, dirt, people, stray) => new AreaLight
        {
            BenchLength = bench, BenchWidth = bench, Surroundings = box, Layout = places, Readings = sets, AirAtLamps = air, DirtLoss = dirt, CleaningMonths = 6, People = people, Stray = stray,
        });

    public static readonly Gen<LightTarget> Targets = Gen.Select(Text, Maybe(Number), Maybe(Photons), Enum<DayLengthResponse>(), Source, Gen.Bool,
        (crop, n, light, days, source, weak) => new LightTarget
        {
            Crop = crop, LeastDaily = n is { } d ? DailyLight.FromMolesPerSquareMetre(d) : null, MostDaily = n is { } m ? DailyLight.FromMolesPerSquareMetre(m) : null,
            LeastLight = light, MostLight = light, FewestHours = n is { } h ? OperatingTime.FromHours(h) : null, MostHours = n is { } o ? OperatingTime.FromHours(o) : null,
            DayLength = days, Source = source, WeakSource = weak, Note = crop,
        });

    public static readonly Gen<ProductLight> Products = Gen.Select(Text, Maybe(Enum<TubeEmission>()), MaybeRef(Text), MaybeRef(Conversions),
        (id, emission, other, conversion) => new ProductLight(id) { Emission = emission, Distribution = other, Spectrum = other, Conversion = conversion });

    public static readonly Gen<StudyDistribution> Distributions = Gen.Select(Text, Source, Enum<PhotometricType>(), List(Signed), List(List(Number)), Signed, Maybe(Number),
        (id, source, type, angles, candelas, side, watts) => new StudyDistribution(id, id, source)
        {
            Type = type, Vertical = angles, Horizontal = angles, Candelas = candelas, Opening = new LuminousOpening(side, -side, 0),
            InputPower = watts is { } w ? Power.FromWatts(w) : null,
        });

    public static readonly Gen<StudySpectrum> Spectra = Gen.Select(Text, Source, Enum<SpectralScale>(), List(Number),
        (id, source, scale, numbers) => new StudySpectrum(id, id, source) { Scale = scale, Nanometres = numbers, Values = numbers });

    public static readonly Gen<StageChange> Changes = Gen.Select(Text, Maybe(Time), MaybeRef(Text), Maybe(Share),
        (name, time, step, dimming) => new StageChange(name, name, name) { LightsOn = time, LightsOff = time, LitStep = step, Dimming = dimming });
}
