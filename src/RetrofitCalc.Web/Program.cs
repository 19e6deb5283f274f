using NodaTime;
using RetrofitCalc.Data;
using RetrofitCalc.Files.Safety;
using RetrofitCalc.Web.Components;
using RetrofitCalc.Web.Features.Catalogue;
using RetrofitCalc.Web.Features.Light.Sheet;
using RetrofitCalc.Web.Features.Light.Layout.Photometry;
using RetrofitCalc.Web.Features.Light.Spectra;
using RetrofitCalc.Web.Features.Meter;
using RetrofitCalc.Web.Features.Studies;
using RetrofitCalc.Web.Features.Summary;
using RetrofitCalc.Web.Features.Survey;
using RetrofitCalc.Web.Features.Tariffs.Library;
using RetrofitCalc.Web.Shared;

var builder = WebApplication.CreateBuilder(args);
builder.WebHost.UseStaticWebAssets().UseLoopbackUnlessTold(builder.Configuration);
builder.Services.AddRazorComponents().AddInteractiveServerComponents();
builder.Services.AddRetrofitData(builder.Configuration);
builder.Services.AddSingleton<IClock>(SystemClock.Instance);
builder.Services.AddSingleton(SafetyRuleFile.Load());
builder.Services.AddSingleton<StudyList>();
builder.Services.AddScoped<StudySession>();
builder.Services.AddSingleton<SummaryDownloads>();
builder.Services.AddHealthChecks();

var app = builder.Build();
if (!await StartUp.PrepareDatabaseAsync(app)) return 1;

app.UseExceptionHandler("/error", createScopeForErrors: true);
app.UseStatusCodePagesWithReExecute("/not-found");
app.UseAntiforgery();
app.MapStaticAssets();
app.MapHealthChecks("/healthz");
app.MapExampleLink();
app.MapStudyDownloads();
app.MapSurveyDownload();
app.MapMeterDownload();
app.MapCatalogueDownloads();
app.MapTariffDownload();
app.MapSpectrumDownloads();
app.MapMeasuringSheet();
app.MapPhotometryDownloads();
app.MapRazorComponents<App>().AddInteractiveServerRenderMode();
return await StartUp.ServeAsync(app);

/// <summary>Named so that tests can start the program in process.</summary>
public partial class Program;
