using NodaTime;

namespace RetrofitCalc.Data.Model;

/// <summary>An earlier state of a study. Rows are added and, when only kept for undoing, thinned out; never changed.</summary>
public sealed class StudyRevisionRow
{
    public required Guid Id { get; set; }
    public required Guid StudyId { get; set; }
    public required int Revision { get; set; }
    public required RevisionKind Kind { get; set; }
    public required string Note { get; set; }
    public required string StudyJson { get; set; }
    public required Instant At { get; set; }
}
