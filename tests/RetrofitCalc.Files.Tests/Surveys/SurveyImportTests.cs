using System.Globalization;
using System.Text;
using CsCheck;
using NodaTime;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Surveys;
using RetrofitCalc.Files.Surveys.Tables;
using RetrofitCalc.Files.Tests.Studies;
using RetrofitCalc.Files.Typing;

namespace RetrofitCalc.Files.Tests.Surveys;

public class A_survey_import
{
    private static readonly Study Study = SmallStudy.Make();
    private static readonly SurveyContext English = Context("en-US");

    private static SurveyContext Context(string culture) =>
        new(CultureInfo.GetCultureInfo(culture), SurveyContext.UsualUnit(CultureInfo.GetCultureInfo(culture)), Study.Areas, Study.Catalogue);

    private static ImportPreview Preview(string csv, SurveyContext? context = null)
    {
        var table = CsvTable.Read(new MemoryStream(Encoding.UTF8.GetBytes(csv))).Value!;
        return SurveyImport.Preview(table, ColumnMatch.Guess(table.Headers), Study, context ?? English);
    }

    [Fact]
    public void reads_every_fact_of_a_line()
    {
        var row = Assert.Single(Preview(
            "Room,Line name,Fixture type,Qty,Lamps out,Height (ft),Volts,Start type,Ballast year,Installed,Burn hours,Location,Emergency,Reading,Remark\n" +
            "Seedling racks,Rack B,2-lamp 4 ft T8 instant start,24,3,8.5,277,IS,2009,3/15/2021,\"12,500\",damp,exit route,57.5 W on 2026-03-04,=1+1 <b>\n").Rows);
        Assert.Empty(row.Problems);
        var line = row.Line!;
        Assert.Equal(("racks", "Rack B", "2x4ft-t8", 24, 3), (line.Area, line.Name, line.SetUp, line.Count, line.LampsOut));
        Assert.Equal((8.5, 277.0, StartMethod.Instant, 2009), (Math.Round(line.MountingHeight!.Value.Feet, 9), line.SupplyVolts, line.StartMethod, line.BallastYear));
        Assert.Equal((new LocalDate(2021, 3, 15), 12500.0), (line.LampsInstalled, line.BurnHours!.Value.Hours));
        Assert.Equal((LocationClass.Damp, EmergencyRole.ExitRoute, 57.5, "=1+1 <b>"), (line.Location, line.Emergency, line.Reading!.Power.Watts, line.Note));
    }

    [Fact]
    public void leaves_unknown_what_is_blank()
    {
        var line = Assert.Single(Preview("Area,Count,Lamps out,Emergency\nPacking hall,4,,\n").Rows).Line!;
        Assert.Null(line.LampsOut);
        Assert.Null(line.Emergency);
        Assert.Null(line.SetUp);
    }

    [Fact]
    public void takes_good_rows_and_keeps_bad_ones_as_typed_with_row_column_and_reason()
    {
        var preview = Preview("Area,Set-up,Count\nSeedling racks,2X4FT-T8,12\nPacking hall,2x4ft-t8,-3\n");
        var problem = Assert.Single(preview.Problems);
        Assert.Equal((3, 3, "Count"), (problem.Line, problem.Column, problem.Path));
        Assert.Contains("negative", problem.Message);
        var after = preview.AcceptGoodRows(Study);
        Assert.Equal(Study.Lines.Count + 1, after.Lines.Count);
        Assert.Equal(12, after.Lines[^1].Count);
        var draft = Assert.Single(preview.Rows[1].Drafts);
        Assert.Equal((preview.Rows[1].Line!.Id, "Count", "-3"), (draft.Line, draft.Field, draft.Text));
        Assert.Null(preview.Rows[1].Line!.Count);
        Assert.Equal("2x4ft-t8", preview.AcceptAllRows(Study).Lines[^1].SetUp);
    }

    [Fact]
    public void suggests_the_catalogue_name_that_was_meant()
    {
        var problem = Assert.Single(Preview("Area,Set-up,Count\nSeedling racks,2-lamp 4ft T8 instnt start,12\n").Problems);
        Assert.StartsWith("\"2-lamp 4ft T8 instnt start\" is not in the catalogue. Did you mean \"2-lamp 4 ft T8, instant start\"", problem.Message);
    }

    [Fact]
    public void makes_new_areas_only_for_rows_that_are_taken()
    {
        var preview = Preview("Area,Count\nNew room,1\nnew  ROOM,2\nOther room,x\n");
        Assert.Equal(["New room", "Other room"], preview.NewAreas.Select(a => a.Name));
        var after = preview.AcceptGoodRows(Study);
        Assert.Equal(Study.Areas.Count + 1, after.Areas.Count);
        Assert.All(after.Lines.TakeLast(2), l => Assert.Equal(after.Areas[^1].Id, l.Area));
        Assert.Equal(after.Lines.Count, after.Lines.Select(l => l.Id).Distinct().Count());
    }

    [Fact]
    public void without_an_area_takes_the_only_one_or_asks()
    {
        Assert.Contains("Name the area", Assert.Single(Preview("Set-up,Count\n2x4ft-t8,3\n").Problems).Message);
        var one = English with { Areas = [Study.Areas[1]] };
        Assert.Equal("hall", Assert.Single(Preview("Set-up,Count\n2x4ft-t8,3\n", one).Rows).Line!.Area);
    }

    [Fact]
    public void refuses_a_decimal_comma_under_an_english_culture_and_takes_it_under_a_german_one()
    {
        Assert.Contains("could mean two things", Assert.Single(Preview("Area;Height\nPacking hall;4,2\n").Problems).Message);
        Assert.Equal(4.2, Assert.Single(Preview("Area;Height\nPacking hall;4,2\n", Context("de-DE")).Rows).Line!.MountingHeight!.Value.Metres);
    }

    [Fact]
    public void of_what_was_exported_gives_the_same_lines()
    {
        var gen = StudyGen.Lines.Select(StudyGen.Text, (line, text) => line with
        {
            Area = "hall", SetUp = line.SetUp is null ? null : "4x4ft-t8", Name = text.Trim(), Note = text.Trim() == "'" ? "'=x" : text.Trim(),
            BallastYear = line.BallastYear is null ? null : 2005, MountingHeight = line.MountingHeight is null ? null : RetrofitCalc.Engine.Quantities.Length.FromMetres(2.25),
            SupplyVolts = line.SupplyVolts is null ? null : 277.5, LampsInstalled = line.LampsInstalled is null ? null : new LocalDate(2020, 2, 29),
            Reading = line.Reading is null ? null : new PowerReading(RetrofitCalc.Engine.Quantities.Power.FromWatts(57.25), new LocalDate(2026, 3, 4)),
        });
        foreach (var culture in new[] { "en-US", "de-DE", "fr-FR" })
        {
            var context = Context(culture) with { Unit = LengthUnit.Metres };
            gen.Array[1, 4].Sample(lines => Preview(Encoding.UTF8.GetString(SurveyCsv.Write(lines, context))[1..], context).Rows
                .Select(r => r.Good ? r.Line! with { Id = "x" } : null).SequenceEqual(lines.Select(l => l with { Id = "x" })), iter: 100);
        }
    }

    [Fact]
    public void an_export_holds_what_was_typed_and_still_waits_to_be_mended()
    {
        var line = Study.Lines[0];
        var draft = new CellDraft(line.Id, nameof(SurveyField.Count), "1O", "has a letter O where a digit belongs");
        Assert.Contains(",1O,", Encoding.UTF8.GetString(SurveyCsv.Write([line], English, [draft])));
        Assert.DoesNotContain(",1O,", Encoding.UTF8.GetString(SurveyCsv.Write([line], English)));
    }

    [Theory, InlineData("=1+1"), InlineData("+1"), InlineData("-1"), InlineData("@SUM(A1)"), InlineData("'=x")]
    public void export_guards_text_that_a_spreadsheet_would_run(string note)
    {
        var csv = Encoding.UTF8.GetString(SurveyCsv.Write([Study.Lines[0] with { Note = note }], English));
        Assert.EndsWith($",'{note}\r\n", csv);
    }

    [Fact]
    public void never_throws_whatever_is_in_the_cells() =>
        Gen.Select(Gen.Int[0, SurveyHeadings.Fields.Count - 1], Gen.OneOf(StudyGen.Text, Gen.String)).Sample((field, text) =>
        {
            var read = SurveyCellParser.Apply(Study.Lines[0], SurveyHeadings.Fields[field], text, English);
            return (read.Value is null) == (read.Problems.Count > 0);
        }, iter: 5000);
}

public class A_column_match
{
    [Fact]
    public void has_a_field_for_every_fact_of_a_survey_line() =>
        Assert.Equal(typeof(SurveyLine).GetProperties().Select(p => p.Name).Where(n => n != "Id").Order(), SurveyHeadings.Fields.Select(f => f.ToString()).Order());

    [Theory]
    [InlineData("Room", SurveyField.Area)]
    [InlineData("QTY.", SurveyField.Count)]
    [InlineData("No.", SurveyField.Count)]
    [InlineData("Lamps Out", SurveyField.LampsOut)]
    [InlineData("mounting-height [m]", SurveyField.MountingHeight)]
    [InlineData("Voltage (V)", SurveyField.SupplyVolts)]
    [InlineData("Install date", SurveyField.LampsInstalled)]
    [InlineData("Comments", SurveyField.Note)]
    public void knows_the_words_people_use(string heading, SurveyField field) =>
        Assert.Equal(1, ColumnMatch.Guess(["Whatever", heading]).Columns[field]);

    [Fact]
    public void knows_all_our_own_headings() =>
        Assert.Equal(SurveyHeadings.Fields, ColumnMatch.Guess([.. SurveyHeadings.Fields.Select(SurveyHeadings.Of)]).Columns.OrderBy(c => c.Value).Select(c => c.Key));

    [Fact]
    public void takes_the_unit_of_heights_from_the_heading()
    {
        Assert.Equal(LengthUnit.Centimetres, ColumnMatch.Guess(["Height (cm)"]).HeightUnit);
        Assert.Null(ColumnMatch.Guess(["Height"]).HeightUnit);
    }

    [Fact]
    public void can_be_changed_by_the_user_and_uses_a_column_once()
    {
        var match = ColumnMatch.Guess(["Area", "Name", "Count"]).With(SurveyField.Note, 1);
        Assert.Equal(1, match.Columns[SurveyField.Note]);
        Assert.False(match.Columns.ContainsKey(SurveyField.Name));
        Assert.False(match.With(SurveyField.Note, null).Columns.ContainsKey(SurveyField.Note));
        Assert.Equal([1], match.With(SurveyField.Note, null).Unused(3));
    }
}
