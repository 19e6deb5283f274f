using System.Globalization;
using RetrofitCalc.Data;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Files;
using RetrofitCalc.Files.Catalogues;

namespace RetrofitCalc.Web.Features.Catalogue;

/// <summary>One kind of entry as the catalogue shows, reads and writes it.</summary>
public abstract record KindView(CatalogueKind Kind, string Path, string Many, string One)
{
    /// <summary>Headings of the values that stand in the list.</summary>
    public required IReadOnlyList<string> Listed { get; init; }

    public static IReadOnlyList<KindView> All { get; } =
    [
        new KindView<SetUp>(CatalogueKind.SetUp, "setups", "Existing set-ups", "set-up") { Listed = ["tested power [W]", "lamp", "ballasts"] },
        new KindView<Lamp>(CatalogueKind.Lamp, "lamps", "Lamps", "lamp") { Listed = ["family", "base", "length [m]", "nominal power [W]", "initial flux [lm]"] },
        new KindView<Ballast>(CatalogueKind.Ballast, "ballasts", "Ballasts", "ballast") { Listed = ["technology", "start method", "ballast factor", "rated life [h]"] },
        new KindView<DirectWireTube>(CatalogueKind.Tube, "tubes", "Direct-wire tubes", "tube") { Listed = ["base", "length [m]", "line power [W]", "flux [lm]", "feed"] },
        new KindView<ReadyWiredLuminaire>(CatalogueKind.Luminaire, "luminaires", "Ready-wired luminaires", "luminaire") { Listed = ["length [m]", "line power [W]", "flux [lm]", "photon flux [µmol/s]"] },
    ];

    public static KindView? Find(string? path) => All.FirstOrDefault(kind => kind.Path == path);

    public abstract IReadOnlyList<EntryCell> Blank();

    public abstract Parsed<CatalogueEntry> Read(IReadOnlyList<EntryCell> cells, CultureInfo culture);

    public abstract byte[] WriteCsv(IEnumerable<CatalogueEntry> entries, CultureInfo culture);

    public abstract Parsed<IReadOnlyList<CatalogueEntry>> ReadCsv(Stream file, CultureInfo culture);
}

/// <inheritdoc/>
public sealed record KindView<T>(CatalogueKind Kind, string Path, string Many, string One) : KindView(Kind, Path, Many, One) where T : CatalogueEntry
{
    public override IReadOnlyList<EntryCell> Blank() => EntryCells.Blank<T>();

    public override Parsed<CatalogueEntry> Read(IReadOnlyList<EntryCell> cells, CultureInfo culture)
    {
        var read = EntryCells.Read<T>(cells, culture);
        return new Parsed<CatalogueEntry>(read.Value, read.Problems);
    }

    public override byte[] WriteCsv(IEnumerable<CatalogueEntry> entries, CultureInfo culture) => CatalogueCsv.Write([.. entries.OfType<T>()], culture);

    public override Parsed<IReadOnlyList<CatalogueEntry>> ReadCsv(Stream file, CultureInfo culture)
    {
        var read = CatalogueCsv.Read<T>(file, culture);
        return new Parsed<IReadOnlyList<CatalogueEntry>>(read.Value, read.Problems);
    }
}
