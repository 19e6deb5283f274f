namespace RetrofitCalc.Data.Model;

public sealed class SettingRow
{
    public required Guid WorkspaceId { get; set; }
    public required string Name { get; set; }
    public required string Value { get; set; }
}
