namespace RetrofitCalc.Data.Model;

/// <summary>Whose studies these are. There is a single local workspace; a second one needs no new schema.</summary>
public sealed class WorkspaceRow
{
    public static readonly Guid Local = new("5f0d1b52-6d1e-4c39-9d0a-0a6f3f2f7c01");

    public required Guid Id { get; set; }
    public required string Name { get; set; }
}
