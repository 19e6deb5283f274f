using RetrofitCalc.Engine.Cases;
using RetrofitCalc.Engine.Checks;
using RetrofitCalc.Engine.Luminaires;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>Illuminance of an area now and after, and how it was found or what is missing.</summary>
internal readonly record struct PeopleLightFigures(Illuminance? Now, Illuminance? After, string Basis)
{
    public static PeopleLightFigures Of(StudyContext context, (Area Area, AreaLight Light, PeopleLight People) place, List<(FittedLine Now, FittedLine After)> lines)
    {
        if (lines.Count == 0) return Missing($"the luminaires of {place.Area.Name}: none is counted");
        var room = RoomUtilisation.Of(place.Light, place.People.LampsAbovePlane ?? Lowest(lines));
        var lit = new AreaLumens(context, place.Light, room);
        var read = ReadLight.Of(place.Light, place.People.LampsAbovePlane);
        return read is { } reading ? Scaled(lit, lines, reading) : Computed(lit, place, lines);
    }

    /// <summary>After over now is that of the lamps' light, reaching the plane as now where the room is not known.</summary>
    private static PeopleLightFigures Scaled(AreaLumens lit, List<(FittedLine Now, FittedLine After)> lines, ReadLight read)
    {
        var seen = $"Read: {Text(read.Mean.Lux)} lx, {read.Count} readings with the lamps {Text(read.Height.Metres)} m up";
        if (lit.Missing(lines.SelectMany(pair => new[] { pair.Now, pair.After })) is { } missing) return new(read.Mean, null, $"{seen}. Missing for after: {missing}.");
        var before = lines.Sum(pair => lit.Reaching(pair.Now, pair.Now, read.Step, read));
        if (!(before > 0)) return new(read.Mean, null, $"{seen}. No light was lit that the survey counts.");
        var later = lines.Sum(pair => lit.Reaching(pair.Now, pair.After, read.Step, null));
        return new(read.Mean, read.Mean * (later / before), $"{seen}; after in proportion to the light of the lamps, worn and dirty.");
    }

    private static PeopleLightFigures Computed(AreaLumens lit, (Area Area, AreaLight Light, PeopleLight People) place, List<(FittedLine Now, FittedLine After)> lines)
    {
        if (lit.Room is not { } room)
            return Missing(place.Light.BenchLength is null || place.Light.BenchWidth is null
                ? $"length and width of {place.Area.Name}" : "height of the lamps over the plane people work on");
        if (lit.Missing(lines.Select(pair => pair.Now)) is { } missing) return Missing(missing);
        var now = lines.Sum(pair => lit.Reaching(pair.Now, pair.Now, null, null)) / room.SquareMetres;
        var size = $"{Text(room.Room.Length.Metres)} by {Text(room.Room.Width.Metres)} m, lamps {Text(room.Room.Height.Metres)} m up";
        var taken = room.ReflectancesTaken ? " Reflectances of 0.7, 0.5 and 0.2 of ceiling, walls and floor are taken, as is usual." : "";
        var basis = $"Lumen method: {size}; lamps worn as when due, luminaires dirty as before cleaning.{taken}";
        if (lit.Missing(lines.Select(pair => pair.After)) is { } unknown) return new(Illuminance.FromLux(now), null, $"{basis} Missing for after: {unknown}.");
        return new(Illuminance.FromLux(now), Illuminance.FromLux(lines.Sum(pair => lit.Reaching(pair.Now, pair.After, null, null)) / room.SquareMetres), basis);
    }

    private static Length? Lowest(List<(FittedLine Now, FittedLine After)> lines) =>
        lines.Select(pair => pair.Now.Line.MountingHeight).OfType<Length>().Select(height => (Length?)height).DefaultIfEmpty(null).Min();

    private static PeopleLightFigures Missing(string what) => new(null, null, $"Missing: {what}.");

    private static string Text(double number) => Problems.Text(Math.Round(number, 2));
}
