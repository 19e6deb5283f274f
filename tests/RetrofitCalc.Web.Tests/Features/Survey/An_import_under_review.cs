using System.Text;
using RetrofitCalc.Files.Surveys;
using RetrofitCalc.Files.Surveys.Tables;
using RetrofitCalc.Web.Features.Survey.Import;
using RetrofitCalc.Web.Shared;

namespace RetrofitCalc.Web.Tests.Features.Survey;

public class An_import_under_review
{
    private static readonly EditState Start = SurveySamples.State(SurveySamples.HallAndBarn());

    private static readonly string Table =
        "Room\tFixture\tQty\tLamps out\n" +
        $"Barn\t{SurveySamples.TwoLamps}\t5\t1\n" +
        $"Loft\t{SurveySamples.OneLamp}\tfive\t0\n" +
        $"Hall\t{SurveySamples.OneLamp}\t3\t4\n" +
        $"\t{SurveySamples.OneLamp}\t2\t0\n";

    private static ImportReview Review(string text) =>
        ImportReview.Of(PastedTable.Read(text).Value!, Start.Study, SurveySamples.Context(Start.Study));

    [Fact]
    public void tells_good_rows_from_those_with_a_cell_to_mend_and_those_without_an_area()
    {
        var review = Review(Table);
        Assert.Equal([2], review.Good.Select(r => r.Source));
        Assert.Equal([3, 4, 5], review.Bad.Select(r => r.Source));
        Assert.Equal(2, review.Keepable);
        Assert.Equal(["Loft"], review.Preview.NewAreas.Select(a => a.Name));
        Assert.Contains(review.Preview.Problems, p => p.Line == 4 && p.Message == "This line has only 3 lamps (3 luminaires × 1). Type 0 to 3.");
    }

    [Fact]
    public void takes_the_good_rows_and_nothing_else()
    {
        var after = Review(Table).Accept(Start, keepBad: false);
        Assert.Equal([10, 4, 6, 5], after.Study.Lines.Select(l => l.Count));
        Assert.Equal(["Hall", "Barn"], after.Study.Areas.Select(a => a.Name));
        Assert.Empty(after.Drafts);
    }

    [Fact]
    public void takes_the_others_with_their_texts_as_typed_when_asked()
    {
        var after = Review(Table).Accept(Start, keepBad: true);
        Assert.Equal([10, 4, 6, 5, null, 3], after.Study.Lines.Select(l => l.Count));
        Assert.Equal(["Hall", "Barn", "Loft"], after.Study.Areas.Select(a => a.Name));
        Assert.Equal([("Count", "five"), ("LampsOut", "4")], after.Drafts.Select(d => (d.Field, d.Text)));
        Assert.Empty(Engine.StudyEvaluation.Check(after.Study));
    }

    [Fact]
    public void can_be_told_which_column_holds_what()
    {
        var review = Review(Table).Match(SurveyField.Count, null).Match(SurveyField.Note, 2);
        Assert.Equal("5", review.Preview.Rows[0].Line!.Note);
        Assert.Null(review.Preview.Rows[0].Line!.Count);
    }

    [Fact]
    public void asks_for_an_area_when_no_column_names_one()
    {
        var review = Review($"Fixture\tQty\n{SurveySamples.OneLamp}\t3\n");
        Assert.True(review.AsksArea);
        Assert.Equal("hall", Assert.Single(review.Good).Line!.Area);
        Assert.Equal("barn", Assert.Single(review.Into("barn").Good).Line!.Area);
    }

    [Fact]
    public void reads_a_file_of_another_culture_by_its_own_marks()
    {
        var bytes = Encoding.UTF8.GetBytes($"Area;Fixture;Qty;Height (m)\nHall;{SurveySamples.OneLamp};3;2,5\n");
        var context = SurveySamples.Context(Start.Study) with { Culture = System.Globalization.CultureInfo.GetCultureInfo("de-DE") };
        var table = SurveyFile.Read(new MemoryStream(bytes), context.Culture).Value!;
        Assert.Equal(2.5, Assert.Single(ImportReview.Of(table, Start.Study, context).Good).Line!.MountingHeight!.Value.Metres);
    }
}
