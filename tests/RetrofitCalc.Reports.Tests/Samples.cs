using NodaTime;
using RetrofitCalc.Engine;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Examples;
using RetrofitCalc.Files.Safety;
using RetrofitCalc.Files.Spectra;
using RetrofitCalc.Files.Studies;

namespace RetrofitCalc.Reports.Tests;

/// <summary>Results to report on: the worked example, and studies made from it that strain a page.</summary>
internal static class Samples
{
    public static SummaryRequest Request { get; } = new()
    {
        Date = new LocalDate(2026, 11, 25),
        Rules = SafetyRuleFile.Load(),
        Revision = 3,
        Spectra = ProductSpectra.Of(WorkedExample.Load(), null),
    };

    public static StudyResult Quillmere { get; } = StudyEvaluation.Run(WorkedExample.Load(), Request.Rules);

    /// <summary>The option asked for costs so much that it never pays back; sixty lines with long names.</summary>
    public static StudyResult Crowded { get; } = StudyEvaluation.Run(Crowd(WorkedExample.Load()), Request.Rules);

    /// <summary>Billed demand never falls below the highest of the eleven months before, so that the first year saves nothing on it.</summary>
    public static StudyResult Ratcheted { get; } = StudyEvaluation.Run(Ratchet(WorkedExample.Load()), Request.Rules);

    public static StudyResult InRupees { get; } = In("en-IN", "INR");

    public static StudyResult In(string culture, string currency, string? jurisdiction = "us")
    {
        var study = WorkedExample.Load();
        return StudyEvaluation.Run(study with
        {
            Site = study.Site with { Culture = culture, Jurisdiction = jurisdiction },
            Tariff = study.Tariff with { Currency = currency },
        }, Request.Rules);
    }

    public static StudyResult Named(string sample) => sample switch
    {
        nameof(Crowded) => Crowded,
        nameof(InRupees) => InRupees,
        _ => Quillmere,
    };

    public static StudyResult WithFirstLineNamed(string name)
    {
        var study = WorkedExample.Load();
        return StudyEvaluation.Run(study with { Lines = [study.Lines[0] with { Name = name }, .. study.Lines.Skip(1)] }, Request.Rules);
    }

    public static StudyResult WithFirstOptionNamed(string name)
    {
        var study = WorkedExample.Load();
        return StudyEvaluation.Run(study with { Options = [study.Options[0] with { Name = name }, .. study.Options.Skip(1)] }, Request.Rules);
    }

    public static byte[] File(StudyResult result) => StudyFile.Write(result.Study);

    public static byte[] Pdf(StudyResult result)
    {
        using var bytes = new MemoryStream();
        SummaryPdf.Write(BudgetSummary.From(result, Request), File(result), bytes);
        return bytes.ToArray();
    }

    private static Study Ratchet(Study study) => study with
    {
        Tariff = study.Tariff with { Demand = [.. study.Tariff.Demand.Select(charge => charge with { Ratchet = new Ratchet(1), When = new TariffHours() })] },
    };

    private static Study Crowd(Study study)
    {
        var lines = Enumerable.Range(0, 60).Select(i => study.Lines[i % study.Lines.Count] with
        {
            Id = $"crowd-{i}",
            Name = $"Row {i + 1} of the long propagation house with the very long name, upper tier, {study.Lines[i % study.Lines.Count].Name}",
        }).ToList();
        string Renamed(string line) => lines[study.Lines.Index().First(l => l.Item.Id == line).Index].Id;
        return study with
        {
            Lines = lines,
            Areas = [.. study.Areas.Select(area => area.Light is not { } light ? area
                : area with { Light = light with { Layout = [.. light.Layout.Select(place => place with { Line = Renamed(place.Line) })] } })],
            Options = [.. study.Options.Select(option => option with
            {
                Name = option.Name + ", priced by the dearest of three bidders",
                Costs = option.Costs with { FixedSum = Engine.Quantities.Money.FromUnits(5_000_000) },
                Measures = [.. lines.SelectMany((line, i) => option.Measures
                    .Where(m => m.Line == study.Lines[i % study.Lines.Count].Id).Select(m => m with { Line = line.Id }))],
            })],
            Safety = study.Safety with { Facts = [], Answers = [] },
        };
    }
}
