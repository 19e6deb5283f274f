using Microsoft.EntityFrameworkCore;
using NodaTime;
using RetrofitCalc.Data.Model;
using RetrofitCalc.Files.Examples;

namespace RetrofitCalc.Data.Seed;

/// <summary>Adds the worked example the first time only: a user who deletes it is not given it again.</summary>
internal sealed class ExampleSeeding(RetrofitContext db, Instant now)
{
    private const string Mark = "example-added";
    private static readonly Guid ExampleId = new("0a3c1c52-93f4-4f0e-8a53-6d5f7f1c0001");

    public async Task RunAsync(CancellationToken stop)
    {
        if (await db.Settings.AnyAsync(s => s.WorkspaceId == WorkspaceRow.Local && s.Name == Mark, stop)) return;
        db.Add(new SettingRow { WorkspaceId = WorkspaceRow.Local, Name = Mark, Value = "true" });
        db.Add(StudyStore.NewRow(ExampleId, WorkedExample.Load(), now));
    }
}
