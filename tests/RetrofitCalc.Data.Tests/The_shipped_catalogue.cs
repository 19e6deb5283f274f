using RetrofitCalc.Engine.Catalogue;

namespace RetrofitCalc.Data.Tests;

public sealed class The_shipped_catalogue
{
    private static readonly CatalogueExtract Shipped = Seed.Shipped.Catalogue();

    [Fact]
    public void has_the_sixty_standard_rows_and_enough_to_replace_them()
    {
        var standard = Shipped.SetUps.Where(s => s.Source.Source.StartsWith("Statewide standard-wattage tables", StringComparison.Ordinal));
        Assert.Equal(60, standard.Count());
        Assert.True(Shipped.Tubes.Count >= 20, $"{Shipped.Tubes.Count} tubes");
        Assert.True(Shipped.Luminaires.Count >= 8, $"{Shipped.Luminaires.Count} luminaires");
    }

    [Fact]
    public void uses_every_id_once_and_spells_it_in_the_agreed_letters()
    {
        Assert.All(Shipped.All, e => Assert.Matches("^[a-z0-9]+(-[a-z0-9]+)*$", e.Id));
        Assert.Equal(Shipped.All.Count(), Shipped.All.Select(e => e.Id).Distinct().Count());
        Assert.Equal(Shipped.All.Count(), Shipped.All.Select(e => e.Name).Distinct().Count());
    }

    [Fact]
    public void names_only_lamps_and_ballasts_it_holds()
    {
        var lamps = Shipped.Lamps.Select(l => l.Id).ToHashSet();
        var ballasts = Shipped.Ballasts.Select(b => b.Id).ToHashSet();
        Assert.All(Shipped.SetUps, s => Assert.Contains(s.Lamp, lamps));
        Assert.All(Shipped.SetUps.SelectMany(s => s.Ballasts), b => Assert.True(b.Ballast is null || ballasts.Contains(b.Ballast), b.Ballast));
        var used = Shipped.SetUps.SelectMany(s => s.Ballasts).Select(b => b.Ballast).ToHashSet();
        Assert.All(ballasts, b => Assert.Contains(b, used));
    }

    [Fact]
    public void says_where_every_value_comes_from() => Assert.All(Shipped.All, entry =>
    {
        var properties = entry.GetType().GetProperties().ToDictionary(p => p.Name);
        Assert.All(entry.FieldSources.Keys, name => Assert.NotNull(properties[name].GetValue(entry)));
        Assert.All(properties.Keys.Select(entry.SourceOf).Append(entry.Source), source =>
            Assert.Equal(source.Kind == EvidenceKind.Unsourced, source.Source.Length == 0));
    });

    [Fact]
    public void says_so_where_a_value_rests_on_memory() => Assert.All(
        Shipped.All.SelectMany(e => e.FieldSources.Values.Append(e.Source)),
        source => Assert.True(source.FromMemory || !source.Source.Contains("from memory", StringComparison.Ordinal), source.Source));

    [Fact]
    public void prices_are_all_labelled_invented() => Assert.All(
        Shipped.All.Where(e => e.FieldSources.ContainsKey("Price")), e => Assert.Equal(EvidenceKind.Invented, e.SourceOf("Price").Kind));

    [Fact]
    public void has_prices_for_whatever_can_be_bought() =>
        Assert.All(Shipped.All.Where(e => e is not SetUp), e => Assert.Contains("Price", e.FieldSources.Keys));

    // Coding of lamp designations: F17 to F32T8 and F40T12 are 2, 3 and 4 ft with base G13, T5 has G5, 8 ft slimline Fa8, 8 ft high output R17d.
    [Theory]
    [InlineData("G13", 2, 3, 4)]
    [InlineData("G5", 2, 3, 4)]
    [InlineData("Fa8", 8)]
    [InlineData("R17d", 8)]
    public void gives_each_base_only_lengths_it_is_made_in(string @base, params int[] feet)
    {
        var lengths = Shipped.Lamps.Where(l => l.Base == @base).Select(l => l.Length.Feet).ToList();
        Assert.NotEmpty(lengths);
        Assert.All(lengths, l => Assert.Contains((int)Math.Round(l), feet));
        Assert.All(lengths, l => Assert.Equal(Math.Round(l), l, 3));
    }

    [Fact]
    public void has_a_tube_for_every_base_and_length_but_the_three_foot_high_output()
    {
        var without = Shipped.Lamps.Where(l => !Shipped.Tubes.Any(t => t.Base == l.Base && Math.Abs(t.Length.Feet - l.Length.Feet) < 0.01));
        Assert.Equal(["f39t5ho"], without.Select(l => l.Id));
    }

    // Two equal ballasts draw twice what one draws: 117, 234, 468 W for F54T5HO. One row from memory is unsure (175 for 178 W) and says so.
    [Fact]
    public void counts_equal_ballasts_in_proportion()
    {
        var single = Shipped.SetUps.Where(s => s.Ballasts is [{ Ballast: not null }] && s.TestedPower is not null)
            .GroupBy(s => s.Ballasts[0].Ballast).ToDictionary(g => g.Key!, g => g.First().TestedPower!.Value.Watts);
        var several = Shipped.SetUps.Where(s => s.Ballasts.Count > 1 && s.TestedPower is not null
            && s.Ballasts.All(b => b.Ballast is not null && single.ContainsKey(b.Ballast))).ToList();
        Assert.True(several.Count >= 12, $"{several.Count} rows");
        Assert.All(several, s =>
        {
            var sum = s.Ballasts.Sum(b => single[b.Ballast!]);
            Assert.Equal(sum, s.TestedPower!.Value.Watts, s.Note.StartsWith("Unsure", StringComparison.Ordinal) ? 0.02 * sum : 0);
        });
    }

    // From one lamp to several on one ballast of the same kind the watts of each lamp fall or stay.
    [Theory]
    [InlineData("f32t8-{0}-is-nlo", 4)]
    [InlineData("f32t8-{0}-is-rlo", 4)]
    [InlineData("f17t8-{0}-is-nlo", 4)]
    [InlineData("f25t8-{0}-is-nlo", 4)]
    [InlineData("f40t12-{0}-mag", 2)]
    [InlineData("f34t12-{0}-es", 2)]
    [InlineData("f54t5ho-{0}-ps", 2)]
    public void draws_no_more_for_each_lamp_when_a_ballast_feeds_more(string pattern, int most)
    {
        var each = Enumerable.Range(1, most)
            .Select(n => Shipped.SetUps.Single(s => s.Id == string.Format(null, pattern, n)).TestedPower!.Value.Watts / n).ToList();
        // Tables are rounded to a watt: three F32T8 at 89 W come out a little above two at 59 W.
        Assert.All(each.Zip(each.Skip(1)), pair => Assert.True(pair.Second <= pair.First + 0.5, $"{pair}"));
    }

    [Fact]
    public void never_claims_a_lamp_takes_more_than_the_luminaire_draws()
    {
        var lamps = Shipped.Lamps.ToDictionary(l => l.Id);
        var ballasts = Shipped.Ballasts.ToDictionary(b => b.Id);
        Assert.All(Shipped.Ballasts, b => Assert.InRange(b.LuminousEfficiency ?? 0.8, 0.6, 0.95));
        Assert.All(Shipped.SetUps.Where(s => s.TestedPower is not null), s =>
        {
            var arc = s.Ballasts.Sum(b => b.LampsDriven * (lamps[s.Lamp].ArcPower?.Watts ?? 0)
                * (b.Ballast is null ? 0 : ballasts[b.Ballast].BallastFactor ?? 0));
            Assert.True(arc < s.TestedPower!.Value.Watts, s.Id);
        });
    }

    [Fact]
    public void splits_a_three_lamp_rack_light_over_two_ballasts()
    {
        var split = Shipped.SetUps.Single(s => s.Id == "f25t8-3-split");
        Assert.Equal([1, 2], split.Ballasts.Select(b => b.LampsDriven));
        Assert.Equal([[0], [1]], split.Steps.Select(s => s.BallastIndexes));
    }

    // White at 4100 K: 69.8 lm per µmol/s (CIE LED-B3); F32T8/850: 73.9 (NIST sample spectrum).
    [Fact]
    public void counts_photons_from_lumens_by_a_spectrum()
    {
        Assert.Equal(2950 / 73.9, Shipped.Lamps.Single(l => l.Id == "f32t8").PhotonFlux!.Value.MicromolesPerSecond, 0.05);
        Assert.All(Shipped.Tubes.Where(t => t.Flux is not null), t =>
            Assert.Equal(t.Flux!.Value.Lumens / 69.8, t.PhotonFlux!.Value.MicromolesPerSecond, 0.05));
    }
}
