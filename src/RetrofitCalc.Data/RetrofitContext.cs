using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Storage.ValueConversion;
using NodaTime;
using RetrofitCalc.Data.Model;

namespace RetrofitCalc.Data;

/// <summary>The one model both databases share. What differs between them stays in their own contexts.</summary>
public abstract class RetrofitContext(DbContextOptions options) : DbContext(options)
{
    public DbSet<WorkspaceRow> Workspaces => Set<WorkspaceRow>();
    public DbSet<StudyRow> Studies => Set<StudyRow>();
    public DbSet<StudyRevisionRow> StudyRevisions => Set<StudyRevisionRow>();
    public DbSet<CatalogueRow> CatalogueRows => Set<CatalogueRow>();
    public DbSet<CatalogueHistoryRow> CatalogueHistory => Set<CatalogueHistoryRow>();
    public DbSet<TariffRow> Tariffs => Set<TariffRow>();
    public DbSet<TariffHistoryRow> TariffHistory => Set<TariffHistoryRow>();
    public DbSet<SettingRow> Settings => Set<SettingRow>();

    /// <summary>Makes the database ready to be migrated by this process alone.</summary>
    public abstract Task<IAsyncDisposable> ClaimAsync(CancellationToken stop);

    /// <summary>A sentence when the database holds something that is not ours or is damaged; null when it is sound or new.</summary>
    public abstract Task<DatabaseProblem?> InspectAsync(CancellationToken stop);

    protected override void ConfigureConventions(ModelConfigurationBuilder conventions)
    {
        conventions.Properties<Instant>().HaveConversion<InstantConverter>();
        conventions.Properties<RevisionKind>().HaveConversion<string>().HaveMaxLength(20);
        conventions.Properties<CatalogueKind>().HaveConversion<string>().HaveMaxLength(20);
        conventions.Properties<CatalogueChange>().HaveConversion<string>().HaveMaxLength(20);
    }

    protected override void OnModelCreating(ModelBuilder model)
    {
        model.Entity<WorkspaceRow>().HasData(new WorkspaceRow { Id = WorkspaceRow.Local, Name = "This computer" });
        model.Entity<StudyRow>(study =>
        {
            study.HasOne<WorkspaceRow>().WithMany().HasForeignKey(s => s.WorkspaceId);
            study.HasIndex(s => new { s.WorkspaceId, s.Archived, s.Updated });
            study.Property(s => s.Id).ValueGeneratedNever();
            study.Property(s => s.Revision).IsConcurrencyToken();
        });
        model.Entity<StudyRevisionRow>(revision =>
        {
            revision.HasOne<StudyRow>().WithMany().HasForeignKey(r => r.StudyId).OnDelete(DeleteBehavior.Cascade);
            revision.HasIndex(r => new { r.StudyId, r.At });
            revision.Property(r => r.Id).ValueGeneratedNever();
        });
        model.Entity<CatalogueRow>(row =>
        {
            row.Property(r => r.Id).HasMaxLength(200);
            row.HasIndex(r => r.Kind);
            row.Property(r => r.Version).IsConcurrencyToken();
        });
        model.Entity<CatalogueHistoryRow>(edit =>
        {
            edit.Property(e => e.Id).ValueGeneratedNever();
            edit.HasIndex(e => new { e.EntryId, e.Version });
        });
        model.Entity<TariffRow>(row =>
        {
            row.Property(r => r.Id).HasMaxLength(200);
            row.Property(r => r.Version).IsConcurrencyToken();
        });
        model.Entity<TariffHistoryRow>(edit =>
        {
            edit.Property(e => e.Id).ValueGeneratedNever();
            edit.HasIndex(e => new { e.TariffId, e.Version });
        });
        model.Entity<SettingRow>(setting =>
        {
            setting.HasKey(s => new { s.WorkspaceId, s.Name });
            setting.HasOne<WorkspaceRow>().WithMany().HasForeignKey(s => s.WorkspaceId);
            setting.Property(s => s.Name).HasMaxLength(100);
        });
    }

    /// <summary>Both databases sort UTC date-times; neither knows an instant.</summary>
    private sealed class InstantConverter() : ValueConverter<Instant, DateTime>(
        instant => instant.ToDateTimeUtc(),
        stored => Instant.FromDateTimeUtc(DateTime.SpecifyKind(stored, DateTimeKind.Utc)));
}
