using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Data;

/// <summary>One save of a study.</summary>
/// <param name="ExpectedRevision">The revision the edit began from.</param>
/// <param name="Headline">Figures for the list; null when the study could not be evaluated.</param>
public sealed record StudyEdit(Guid Id, int ExpectedRevision, Study Study, string DraftsJson, StudyHeadlineFigures? Headline);
