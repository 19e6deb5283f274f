using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Surveys;
using RetrofitCalc.Web.Features.Survey.Grid;
using RetrofitCalc.Web.Shared;

namespace RetrofitCalc.Web.Features.Survey.Edits;

/// <summary>A range of cells copied from a spreadsheet: fills right and down from the cell one stands on, in the order of the page.</summary>
public static class RangePaste
{
    /// <summary>What pasting did.</summary>
    public sealed record Outcome(EditState State, int Filled, int Added, int Unread);

    public static Outcome Apply(EditState state, string line, SurveyField field, IReadOnlyList<IReadOnlyList<string>> cells, SurveyContext context)
    {
        var ordered = InOrderOfThePage(state);
        var writer = new CellWriter(ordered, context);
        var (first, column) = (writer.IndexOf(line), SurveyColumn.All.ToList().FindIndex(c => c.Field == field));
        if (first < 0 || column < 0) return new Outcome(state, 0, 0, 0);
        var ids = new NewIds("line", ordered.Study.Lines.Select(l => l.Id));
        var added = 0;
        for (var row = 0; row < cells.Count; row++)
        {
            var index = first + row;
            if (index == writer.Lines.Count)
            {
                writer.Insert(index, new SurveyLine { Id = ids.Next(), Area = writer.Lines[^1].Area });
                added++;
            }
            foreach (var (text, target) in cells[row].Zip(SurveyColumn.All.Skip(column))) writer.Write(index, target.Field, text.Trim());
        }
        var after = writer.Finish();
        return new Outcome(ReferenceEquals(after, ordered) ? state : after, cells.Count - added, added, after.Drafts.Except(state.Drafts).Count());
    }

    /// <summary>Lines stand area by area on the page; a range fills them in that order.</summary>
    private static EditState InOrderOfThePage(EditState state)
    {
        var place = state.Study.Areas.Select((area, index) => (area.Id, index)).ToDictionary(p => p.Id, p => p.index);
        var lines = state.Study.Lines.OrderBy(l => place.GetValueOrDefault(l.Area, int.MaxValue)).ToList();
        return lines.SequenceEqual(state.Study.Lines) ? state : state with { Study = state.Study with { Lines = lines } };
    }
}
