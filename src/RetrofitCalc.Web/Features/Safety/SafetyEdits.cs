using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Web.Features.Safety;

/// <summary>What the safety page changes in a study; each is one step of undo.</summary>
public static class SafetyEdits
{
    /// <summary>A later answer to the same question about the same line replaces the earlier.</summary>
    public static Study Answer(this Study study, NoticeAnswer answer) => study.With(safety => safety with
    {
        Answers = [.. safety.Answers.Where(a => a.Rule != answer.Rule || a.Line != answer.Line), answer],
    });

    public static Study TakeBack(this Study study, NoticeAnswer answer) =>
        study.With(safety => safety with { Answers = [.. safety.Answers.Where(a => a != answer)] });

    /// <summary>Null takes the fact back: it is then not known.</summary>
    public static Study SetFact(this Study study, string? line, string field, string? value) => study.With(safety => safety with
    {
        Facts =
        [
            .. safety.Facts.Where(f => f.Line != line || f.Field != field),
            .. value is null ? Array.Empty<SafetyFact>() : [new SafetyFact(line, field, value)],
        ],
    });

    public static Study Tick(this Study study, ChecklistAnswer answer) => study.With(safety => safety with
    {
        Checklist = [.. safety.Checklist.Where(a => a.Item != answer.Item), answer],
    });

    public static Study Untick(this Study study, string item) =>
        study.With(safety => safety with { Checklist = [.. safety.Checklist.Where(a => a.Item != item)] });

    private static Study With(this Study study, Func<SafetyRecord, SafetyRecord> change) => study with { Safety = change(study.Safety) };
}
