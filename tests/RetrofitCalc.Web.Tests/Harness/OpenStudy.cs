using Bunit;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.Configuration;
using Microsoft.Extensions.DependencyInjection;
using NodaTime;
using RetrofitCalc.Data;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Safety;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Web.Shared;

namespace RetrofitCalc.Web.Tests.Harness;

/// <summary>A study opened as a page opens it: real session, real stores, a database file of its own, no browser.</summary>
public sealed class OpenStudy : IAsyncDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("retrofitcalc-pages-").FullName;
    private readonly BunitContext _context = new();

    private OpenStudy()
    {
        var settings = new Dictionary<string, string?> { ["Data:Path"] = Path.Combine(_folder, "pages.db") };
        _context.Services.AddRetrofitData(new ConfigurationBuilder().AddInMemoryCollection(settings).Build());
        _context.Services.AddSingleton<IClock>(SystemClock.Instance);
        _context.Services.AddSingleton(new SafetyRuleBook());
        _context.Services.AddScoped<StudySession>();
        _context.JSInterop.Mode = JSRuntimeMode.Loose;
    }

    public Guid Id { get; private set; }

    public StudySession Session => _context.Services.GetRequiredService<StudySession>();

    public Study Study => Session.Study;

    /// <summary>Where the person is.</summary>
    public string Address => _context.Services.GetRequiredService<NavigationManager>().Uri;

    public Task<CatalogueExtract> CatalogueAsync() => _context.Services.GetRequiredService<CatalogueStore>().AllAsync();

    public static async Task<OpenStudy> Of(Study study)
    {
        var open = new OpenStudy();
        var problem = await open._context.Services.GetRequiredService<DatabaseStart>().PrepareAsync();
        Assert.Null(problem);
        var store = open._context.Services.GetRequiredService<StudyStore>();
        var catalogue = open._context.Services.GetRequiredService<CatalogueStore>();
        open.Id = (await store.AddAsync(await catalogue.ResolveAsync(study))).Id;
        Assert.True(await open.Session.OpenAsync(open.Id));
        await open.Session.ReadyAsync;
        return open;
    }

    /// <summary>Someone else saves the study meanwhile.</summary>
    public async Task SaveElsewhereAsync(Func<Study, Study> edit)
    {
        var store = _context.Services.GetRequiredService<StudyStore>();
        var stored = await store.FindAsync(Id);
        Assert.IsType<SaveOutcome.Saved>(await store.SaveAsync(new StudyEdit(Id, stored!.Revision, edit(stored.Study), stored.DraftsJson, null)));
    }

    /// <summary>Renders a place of the study.</summary>
    public IRenderedComponent<T> Page<T>() where T : StudyPage => _context.Render<T>(p => p.Add(page => page.Id, Id));

    public IRenderedComponent<T> Part<T>(Action<ComponentParameterCollectionBuilder<T>> parameters) where T : IComponent =>
        _context.Render(parameters);

    public async ValueTask DisposeAsync()
    {
        await _context.DisposeAsync();
        Microsoft.Data.Sqlite.SqliteConnection.ClearAllPools();
        Directory.Delete(_folder, recursive: true);
    }
}
