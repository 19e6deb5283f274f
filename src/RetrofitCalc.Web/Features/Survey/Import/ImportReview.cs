using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files;
using RetrofitCalc.Files.Surveys;
using RetrofitCalc.Web.Features.Survey.Edits;
using RetrofitCalc.Web.Shared;

namespace RetrofitCalc.Web.Features.Survey.Import;

/// <summary>A table on its way into the survey: how its columns are understood, what its rows would become, and what is wrong.</summary>
public sealed class ImportReview
{
    private readonly Study _study;
    private readonly SurveyContext _context;
    private readonly string? _area;

    private ImportReview(SurveyTable table, ColumnMatch match, Study study, SurveyContext context, string? area)
    {
        (_study, _context, _area) = (study, context, area);
        var reading = NeedsArea(match) && area is not null ? context with { Areas = [.. context.Areas.Where(a => a.Id == area)] } : context;
        var preview = SurveyImport.Preview(table, match, study, reading);
        Preview = preview with { Rows = Refused(preview, context) };
    }

    public ImportPreview Preview { get; }

    /// <summary>Area of rows that name none; null when they must name one.</summary>
    public string? Area => _area;

    public IReadOnlyList<ImportRow> Good => [.. Preview.Rows.Where(r => r.Good)];

    public IReadOnlyList<ImportRow> Bad => [.. Preview.Rows.Where(r => !r.Good)];

    /// <summary>Bad rows that can be taken with their texts kept as typed; the others name no area.</summary>
    public int Keepable => Bad.Count(r => r.Line is not null);

    public bool AsksArea => NeedsArea(Preview.Match);

    public static ImportReview Of(SurveyTable table, Study study, SurveyContext context) =>
        new(table, ColumnMatch.Guess(table.Headers), study, context, study.Areas.Count > 0 ? study.Areas[0].Id : null);

    public ImportReview Match(SurveyField field, int? column) => new(Preview.Table, Preview.Match.With(field, column), _study, _context, _area);

    public ImportReview Into(string area) => new(Preview.Table, Preview.Match, _study, _context, area);

    /// <summary>The study with the good rows, and with the others too, their unread texts kept, when <paramref name="keepBad"/>.</summary>
    public EditState Accept(EditState state, bool keepBad) => keepBad
        ? new EditState(Preview.AcceptAllRows(state.Study), [.. state.Drafts, .. Preview.Rows.Where(r => r.Line is not null).SelectMany(r => r.Drafts)])
        : state with { Study = Preview.AcceptGoodRows(state.Study) };

    private static bool NeedsArea(ColumnMatch match) => !match.Columns.ContainsKey(SurveyField.Area);

    /// <summary>Rows whose cells can be read one by one but cannot be true together, such as more lamps out than there are.</summary>
    private static IReadOnlyList<ImportRow> Refused(ImportPreview preview, SurveyContext context)
    {
        var rows = preview.Rows.ToArray();
        int[] read = [.. rows.Index().Where(r => r.Item.Line is not null).Select(r => r.Index)];
        var reading = context with { Areas = [.. context.Areas, .. preview.NewAreas] };
        foreach (var refused in LineRules.Of([.. read.Select(i => rows[i].Line!)], reading))
            rows[read[refused.Index]] = Keep(rows[read[refused.Index]], refused, preview.Match, reading);
        return rows;
    }

    private static ImportRow Keep(ImportRow row, LineRules.Refusal refused, ColumnMatch match, SurveyContext context)
    {
        var line = row.Line!;
        var text = row.Texts.GetValueOrDefault(refused.Field) ?? SurveyCellText.Of(line, refused.Field, context);
        var column = match.Columns.TryGetValue(refused.Field, out var at) ? at + 1 : (int?)null;
        return row with
        {
            Line = SurveyCellParser.Apply(line, refused.Field, "", context).Value ?? line,
            Drafts = [.. row.Drafts, new CellDraft(line.Id, refused.Field.ToString(), text, refused.Message)],
            Problems = [.. row.Problems, new FileProblem(row.Source, column, SurveyHeadings.Of(refused.Field), refused.Message)],
        };
    }
}
