using System.Globalization;
using System.Text;
using System.Text.Json;
using CsCheck;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Files.Catalogues;
using RetrofitCalc.Files.Studies;
using RetrofitCalc.Files.Tests.Studies;

namespace RetrofitCalc.Files.Tests.Catalogues;

public class A_catalogue_file
{
    private static readonly CultureInfo English = CultureInfo.GetCultureInfo("en-US");

    private static Parsed<IReadOnlyList<T>> Read<T>(string csv) where T : CatalogueEntry => CatalogueCsv.Read<T>(new MemoryStream(Encoding.UTF8.GetBytes(csv)), English);

    private static string Json<T>(IReadOnlyList<T> entries) => JsonSerializer.Serialize(entries, RetrofitJson.Options);

    private static bool ComesBack<T>(IReadOnlyList<T> entries, CultureInfo culture) where T : CatalogueEntry
    {
        var read = CatalogueCsv.Read<T>(new MemoryStream(CatalogueCsv.Write(entries, culture)), culture);
        Assert.True(read.Ok, string.Join("\n", read.Problems));
        return Json(entries) == Json(read.Value!);
    }

    [Theory, InlineData("en-US"), InlineData("de-DE"), InlineData("fr-FR")]
    public void gives_back_the_shipped_catalogue_unchanged(string culture)
    {
        var its = CultureInfo.GetCultureInfo(culture);
        Assert.True(ComesBack(Shipped<Ballast>("ballasts"), its));
        Assert.True(ComesBack(Shipped<Lamp>("lamps"), its));
        Assert.True(ComesBack(Shipped<SetUp>("setups"), its));
        Assert.True(ComesBack(Shipped<DirectWireTube>("tubes"), its));
        Assert.True(ComesBack(Shipped<ReadyWiredLuminaire>("luminaires"), its));
    }

    private static IReadOnlyList<T> Shipped<T>(string kind)
    {
        var entries = JsonSerializer.Deserialize<List<T>>(File.ReadAllText(Repository.PathOf($"src/RetrofitCalc.Data/Seed/{kind}.json")), RetrofitJson.Options)!;
        Assert.NotEmpty(entries);
        return entries;
    }

    [Theory, InlineData("-5"), InlineData("0"), InlineData("1E+300")]
    public void refuses_a_tube_of_impossible_watts_at_its_cell(string watts)
    {
        var tube = Shipped<DirectWireTube>("tubes")[0];
        var csv = Encoding.UTF8.GetString(CatalogueCsv.Write([tube], English));
        var rows = csv.Split('\n');
        var column = rows[0].TrimStart('\uFEFF').Split(',').ToList().FindIndex(h => h.StartsWith("line power", StringComparison.Ordinal));
        var shipped = "," + tube.LinePower.Watts.ToString(CultureInfo.InvariantCulture) + ",";
        var read = Read<DirectWireTube>(csv.Replace(shipped, $",{watts},", StringComparison.Ordinal));
        Assert.Null(read.Value);
        Assert.Equal((2, column + 1), (read.Problems[0].Line, read.Problems[0].Column));
    }

    [Fact]
    public void gives_back_odd_texts_steps_and_lives_unchanged()
    {
        var odd = new Provenance(EvidenceKind.Measured, "=1+1; \"quoted\"\nnext line \\n, 5: 6", FromMemory: true);
        var ballasts = new[] { new BallastPosition("eb-2", 2), new BallastPosition(null, 1) };
        Assert.True(ComesBack<SetUp>([new SetUp
        {
            Id = "a", Name = "@name", Source = odd, Lamp = "l", Ballasts = ballasts, Note = "'quoted", Retired = true,
            Steps = [new LitStep("one: of\ntwo", [0, 1], Power.FromWatts(58.5)), new LitStep("none; but one", [1])],
            FieldSources = new Dictionary<string, Provenance> { ["TestedPower"] = odd, ["Lamp"] = Provenance.None },
        }], English));
        StudyGen.Studies.Sample(s => ComesBack([.. Cleaned(s.Catalogue.Lamps).Select(Possible)], English)
            && ComesBack([.. Cleaned(s.Catalogue.Tubes).Select(Possible)], English), iter: 60);
    }

    /// <summary>Any number within what an entry may hold.</summary>
    private static Lamp Possible(Lamp lamp) => lamp with
    {
        MeanOverInitial = lamp.MeanOverInitial is { } mean ? Math.Clamp(mean, 0.3, 1) : null,
        ArcPower = lamp.ArcPower is { } arc ? Power.FromWatts(Math.Clamp(arc.Watts, 0.1, 1e6)) : null,
        Price = lamp.Price is { } price ? Money.FromUnits(Math.Clamp(price.Units, 0, 1e6)) : null,
        Lives = [.. lamp.Lives.Select(life => life with { Life = OperatingTime.FromHours(Math.Clamp(life.Life.Hours, 100, 1e6)) })],
    };

    private static DirectWireTube Possible(DirectWireTube tube) => tube with
    {
        LinePower = Power.FromWatts(Math.Clamp(tube.LinePower.Watts, 0.1, 1e6)),
        Price = tube.Price is { } price ? Money.FromUnits(Math.Clamp(price.Units, 0, 1e6)) : null,
        RatedLife = tube.RatedLife is { } life ? OperatingTime.FromHours(Math.Clamp(life.Hours, 100, 1e6)) : null,
    };

    /// <summary>A file needs at least one row, ids that differ and names that are not blank.</summary>
    private static IReadOnlyList<T> Cleaned<T>(IReadOnlyList<T> entries) where T : CatalogueEntry => entries.Count == 0
        ? Cleaned(StudyGen.Studies.Where(s => s.Catalogue.All.OfType<T>().Any()).Single().Catalogue.All.OfType<T>().ToList())
        : [.. entries.DistinctBy(e => e.Id).Select(e => e with { Name = $"n{e.Name}", Note = e.Note.Trim(), Source = e.Source with { Source = e.Source.Source.Trim() } })];

    private const string Heads = "id,name,evidence,source,technology,start method,ballast factor,price\n";

    [Fact]
    public void may_leave_out_columns_nobody_filled()
    {
        var ballast = Assert.Single(Read<Ballast>(Heads + "eb-9,Electronic,tested,Sheet 4,electronic,instant,0.88,\n").Value!);
        Assert.Equal((0.88, null, EvidenceKind.Tested), (ballast.BallastFactor, ballast.Price, ballast.Source.Kind));
    }

    [Fact]
    public void marks_an_entry_without_a_source_as_unsourced() =>
        Assert.Equal(EvidenceKind.Unsourced, Assert.Single(Read<Ballast>(Heads + "eb-9,Electronic,,,electronic,instant,,\n").Value!).Source.Kind);

    [Theory]
    [InlineData("eb-9,Electronic,tested,S,electronic,instant,\"0,88\",", 2, 7, "could mean two things")]
    [InlineData("eb-9,Electronic,tested,S,electric,instant,,", 2, 5, "none of: magnetic, electronic")]
    [InlineData("EB 9,Electronic,tested,S,electronic,instant,,", 2, null, "cannot be an id")]
    [InlineData("eb-9,,tested,S,electronic,instant,,", 2, null, "may not be blank")]
    [InlineData("eb-9,Electronic,,Sheet 4,electronic,instant,,", 2, null, "what kind of evidence")]
    [InlineData("eb-9,Electronic,tested,S,electronic,instant,,1,2", 2, 9, "more cells than headings")]
    public void with_a_mistake_is_refused_whole_with_line_and_column(string row, int line, int? column, string words)
    {
        var read = Read<Ballast>(Heads + row + "\neb-10,Good,tested,S,electronic,instant,,\n");
        Assert.Null(read.Value);
        var problem = Assert.Single(read.Problems);
        Assert.Equal((line, column), (problem.Line, problem.Column));
        Assert.Contains(words, problem.Message);
    }

    [Fact]
    public void with_one_id_twice_or_an_unknown_column_is_refused()
    {
        var twice = Assert.Single(Read<Ballast>(Heads + "eb-9,A,,,electronic,instant,,\neb-9,B,,,electronic,instant,,\n").Problems);
        Assert.Equal((3, "\"eb-9\" is already on line 2. Each entry needs its own id."), (twice.Line, twice.Message));
        Assert.Contains("There is no column \"wattage\"", Assert.Single(Read<Ballast>("id,wattage\na,1\n").Problems).Message);
        Assert.Contains("another table", Assert.Single(Read<Ballast>("name\na\n").Problems).Message);
    }

    [Fact]
    public void names_the_line_of_a_life_that_is_not_understood()
    {
        var problem = Assert.Single(Read<Lamp>("id,name,family,base,length [m],nominal power [W],lives\na,A,T8,G13,1.2,32,long\n").Problems);
        Assert.Equal((2, 7, "lives"), (problem.Line, problem.Column, problem.Path));
        Assert.Contains("3 h per start, instant: 24000 h", problem.Message);
    }

    [Fact]
    public void with_anything_in_its_cells_never_throws() =>
        Gen.Select(StudyGen.Text, StudyGen.Text, StudyGen.Text).Sample((a, b, c) =>
        {
            var cells = new[] { "id", a, b, c }.Select(t => "\"" + t.Replace("\"", "\"\"") + "\"");
            var read = Read<SetUp>("id,ballasts,steps,field sources\n" + string.Join(',', cells) + "\n");
            return read.Value is not null || read.Problems.Count > 0;
        }, iter: 1000);
}
