using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace RetrofitCalc.Data.Seed;

/// <summary>Puts the shipped catalogue, tariffs and the worked example into a database, once. Running it again changes nothing.</summary>
internal sealed class Seeding(RetrofitContext db, Instant now)
{
    /// <summary>In one transaction, so that an interrupted start leaves nothing half done.</summary>
    public Task RunAsync(CancellationToken stop) => db.Database.CreateExecutionStrategy().ExecuteAsync(AddAsync, stop);

    private async Task AddAsync(CancellationToken stop)
    {
        db.ChangeTracker.Clear();
        await using var transaction = await db.Database.BeginTransactionAsync(stop);
        await new CatalogueSeeding(db, now).RunAsync(stop);
        await new TariffSeeding(db, now).RunAsync(stop);
        await new ExampleSeeding(db, now).RunAsync(stop);
        await db.SaveChangesAsync(stop);
        await transaction.CommitAsync(stop);
    }
}
