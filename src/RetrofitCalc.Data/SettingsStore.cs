using Microsoft.EntityFrameworkCore;
using RetrofitCalc.Data.Model;

namespace RetrofitCalc.Data;

/// <summary>What the workspace prefers.</summary>
/// <param name="Units">"us" or "si"; null when nobody chose.</param>
/// <param name="Culture">Culture of new studies, such as en-US; null when nobody chose.</param>
public sealed record WorkspaceSettings(string? Units, string? Culture);

public sealed class SettingsStore(IDbContextFactory<RetrofitContext> contexts)
{
    public async Task<WorkspaceSettings> ReadAsync(CancellationToken stop = default)
    {
        await using var db = await contexts.CreateDbContextAsync(stop);
        var values = await db.Settings.Where(s => s.WorkspaceId == WorkspaceRow.Local).ToDictionaryAsync(s => s.Name, s => s.Value, stop);
        return new WorkspaceSettings(values.GetValueOrDefault("units"), values.GetValueOrDefault("culture"));
    }

    public async Task WriteAsync(WorkspaceSettings settings, CancellationToken stop = default)
    {
        await using var db = await contexts.CreateDbContextAsync(stop);
        await SetAsync(db, "units", settings.Units, stop);
        await SetAsync(db, "culture", settings.Culture, stop);
        await db.SaveChangesAsync(stop);
    }

    private static async Task SetAsync(RetrofitContext db, string name, string? value, CancellationToken stop)
    {
        var row = await db.Settings.FindAsync([WorkspaceRow.Local, name], stop);
        if (value is null) { if (row is not null) db.Remove(row); }
        else if (row is null) db.Add(new SettingRow { WorkspaceId = WorkspaceRow.Local, Name = name, Value = value });
        else row.Value = value;
    }
}
