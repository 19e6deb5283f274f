using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Surveys;
using RetrofitCalc.Web.Shared;

namespace RetrofitCalc.Web.Features.Survey.Edits;

/// <summary>Changes of survey lines: each takes the state as it stands and returns a new one.</summary>
public static class LineEdits
{
    public static EditState Set(EditState state, string line, SurveyField field, string text, SurveyContext context)
    {
        var writer = new CellWriter(state, context);
        var index = writer.IndexOf(line);
        if (index < 0) return state;
        writer.Write(index, field, text);
        return writer.Finish();
    }

    /// <summary>A new line at the end of an area, or below another line.</summary>
    public static EditState Add(EditState state, SurveyLine line, string? below = null)
    {
        var lines = state.Study.Lines.ToList();
        var at = below is null ? lines.FindLastIndex(l => l.Area == line.Area) : lines.FindIndex(l => l.Id == below);
        lines.Insert(at < 0 ? lines.Count : at + 1, line);
        return WithLines(state, lines);
    }

    /// <summary>The same again below, with what the options do there.</summary>
    public static EditState Duplicate(EditState state, string line, string newId)
    {
        if (Find(state, line) is not { } original) return state;
        var added = Add(state, original with { Id = newId }, line);
        return added with
        {
            Study = added.Study with { Options = [.. added.Study.Options.Select(o => Repeat(o, line, newId))] },
            Drafts = [.. added.Drafts, .. added.Drafts.Where(d => d.Line == line).Select(d => d with { Line = newId })],
        };
    }

    /// <summary>Without the line and without what options, layouts and safety answers say of it.</summary>
    public static EditState Delete(EditState state, string line)
    {
        if (Find(state, line) is null) return state;
        var (study, safety) = (state.Study, state.Study.Safety);
        return new EditState(
            study with
            {
                Areas = LightFollows.WithoutLine(study.Areas, line),
                Lines = [.. study.Lines.Where(l => l.Id != line)],
                Options = [.. study.Options.Select(o => o with { Measures = [.. o.Measures.Where(m => m.Line != line)] })],
                Safety = safety with
                {
                    Facts = [.. safety.Facts.Where(f => f.Line != line)],
                    Answers = [.. safety.Answers.Where(a => a.Line != line)],
                },
            },
            [.. state.Drafts.Where(d => d.Line != line)]);
    }

    /// <summary>Changes places with the line before (−1) or after (+1) it in its area.</summary>
    public static EditState Move(EditState state, string line, int step)
    {
        if (Find(state, line) is not { } moved) return state;
        var lines = state.Study.Lines.ToList();
        var mates = lines.Where(l => l.Area == moved.Area).ToList();
        var place = mates.IndexOf(moved) + step;
        if (place < 0 || place >= mates.Count) return state;
        var (from, to) = (lines.IndexOf(moved), lines.IndexOf(mates[place]));
        (lines[from], lines[to]) = (lines[to], lines[from]);
        return WithLines(state, lines);
    }

    /// <summary>To the end of another area; it no longer hangs over a bench of the old one.</summary>
    public static EditState MoveTo(EditState state, string line, string area)
    {
        if (Find(state, line) is not { } moved || moved.Area == area) return state;
        var rest = WithLines(state, state.Study.Lines.Where(l => l.Id != line));
        var added = Add(rest, moved with { Area = area });
        return added with { Study = added.Study with { Areas = LightFollows.WithoutLine(added.Study.Areas, line) } };
    }

    private static SurveyLine? Find(EditState state, string line) => state.Study.Lines.FirstOrDefault(l => l.Id == line);

    private static RetrofitOption Repeat(RetrofitOption option, string line, string newId) =>
        option with { Measures = [.. option.Measures, .. option.Measures.Where(m => m.Line == line).Select(m => m with { Line = newId })] };

    private static EditState WithLines(EditState state, IEnumerable<SurveyLine> lines) =>
        state with { Study = state.Study with { Lines = [.. lines] } };
}
