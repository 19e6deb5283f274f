using NodaTime;

namespace RetrofitCalc.Data.Model;

public sealed class StudyRow
{
    public required Guid Id { get; set; }
    public required Guid WorkspaceId { get; set; }
    public required string Name { get; set; }
    public required bool Invented { get; set; }

    /// <summary>The study in the format of the study file, without its envelope.</summary>
    public required string StudyJson { get; set; }

    /// <summary>What was typed but is not yet a value.</summary>
    public required string DraftsJson { get; set; }

    /// <summary>Figures of the list of studies; null until the study was evaluated.</summary>
    public string? HeadlineJson { get; set; }

    /// <summary>Counts saves; a writer who read an older number is refused.</summary>
    public required int Revision { get; set; }

    public required Instant Created { get; set; }
    public required Instant Updated { get; set; }
    public required bool Archived { get; set; }
}
