using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Files.Surveys;

/// <summary>Turns a table into survey lines, without changing the study: good rows ready to take, bad rows as they were typed.</summary>
public static class SurveyImport
{
    public static ImportPreview Preview(SurveyTable table, ColumnMatch match, Study study, SurveyContext context)
    {
        var areas = NewAreas(table, match, context);
        var reading = context with { Areas = [.. context.Areas, .. areas], Unit = match.HeightUnit ?? context.Unit };
        var ids = new NewIds("line", study.Lines.Select(l => l.Id));
        var rows = table.Rows.Select(row => Read(row, match, ids.Next(), reading)).ToList();
        var named = rows.Select(r => r.Line?.Area).ToHashSet();
        return new ImportPreview(table, match, rows, areas.Where(a => named.Contains(a.Id)).ToList());
    }

    private static List<Area> NewAreas(SurveyTable table, ColumnMatch match, SurveyContext context)
    {
        if (!match.Columns.TryGetValue(SurveyField.Area, out var column)) return [];
        var ids = new NewIds("area", context.Areas.Select(a => a.Id));
        return table.Rows.Select(row => row.Cell(column).Trim())
            .Where(name => NameIndex.Key(name).Length > 0 && name.Length <= SurveyCellParser.LongestName && context.AreaNames.Find(name) is null)
            .DistinctBy(NameIndex.Key)
            .Select(name => new Area { Id = ids.Next(), Name = name })
            .ToList();
    }

    private static ImportRow Read(SurveyRow row, ColumnMatch match, string id, SurveyContext context)
    {
        var line = new SurveyLine { Id = id, Area = context.Areas.Count == 1 ? context.Areas[0].Id : "" };
        var drafts = new List<CellDraft>();
        var problems = new List<FileProblem>();
        var texts = match.Columns.ToDictionary(c => c.Key, c => row.Cell(c.Value));
        foreach (var (field, text) in texts.Where(t => t.Key != SurveyField.Area || t.Value.Length > 0))
        {
            var applied = SurveyCellParser.Apply(line, field, text, context);
            line = applied.Value ?? line;
            if (applied.Ok) continue;
            var message = string.Join(" ", applied.Problems.Select(p => p.Message));
            drafts.Add(new CellDraft(id, field.ToString(), text, message));
            problems.Add(new FileProblem(row.Line, match.Columns[field] + 1, SurveyHeadings.Of(field), message));
        }
        if (line.Area.Length > 0) return new ImportRow(row.Line, line, texts, drafts, problems);
        problems.Add(new FileProblem(row.Line, null, SurveyHeadings.Of(SurveyField.Area), "Name the area this line belongs to."));
        return new ImportRow(row.Line, null, texts, drafts, problems);
    }
}
