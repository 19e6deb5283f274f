using RetrofitCalc.Engine.Cases;
using RetrofitCalc.Engine.Luminaires;
using RetrofitCalc.Engine.Operation;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>One bench and what an option does to it.</summary>
internal sealed class BenchChange
{
    /// <summary>Lays an option over a bench.</summary>
    /// <param name="bench">The bench as it is.</param>
    /// <param name="after">What is fitted on the study's lines after.</param>
    /// <param name="option">The option; null for the lighting kept as it is.</param>
    public BenchChange(PresentBench bench, IReadOnlyList<FittedLine> after, RetrofitOption? option)
    {
        (Bench, Option) = (bench, option);
        AreaAfter = StageChanges.Applied(bench.Area, option?.Stages ?? []);
        var fitted = after.ToDictionary(line => line.Line.Id);
        BenchLine Changed(FittedLine line) => new(line, fitted.GetValueOrDefault(line.Line.Id, line), option?.Measures.FirstOrDefault(measure => measure.Line == line.Line.Id));
        Lines = [.. bench.Lines.Select(Changed)];
        Elsewhere = [.. bench.Elsewhere.Select(Changed)];
        var today = bench.Context.Operations[bench.Area.Id];
        Lit = ReferenceEquals(AreaAfter, bench.Area) ? today : new AreaOperation(AreaAfter, bench.Context.Year);
        Operation = Lit.LineOperation(1) with { HoursBefore = today.Hours };
        var (read, assumptions) = (bench.Sets.Select(set => set.Set.Date).Max(), bench.Context.Study.Assumptions);
        Ageing = Lines.ToDictionary(line => line.Now.Line.Id, line => line.Changed
            ? LineAgeing.New(line.After, Operation, assumptions)
            : LineAgeing.Present(line.Now, Operation, read, assumptions));
    }

    /// <summary>The bench as it is.</summary>
    public PresentBench Bench { get; }

    /// <summary>The option; null for the lighting kept as it is.</summary>
    public RetrofitOption? Option { get; }

    /// <summary>The area with its stages as the option lights them; the very same where it changes none.</summary>
    public Area AreaAfter { get; }

    /// <summary>Other lamps, more or lower, already tried for stages alike.</summary>
    public Dictionary<LikeStage, IReadOnlyList<JudgedFix>> Tried { get; } = [];

    /// <summary>Lines over the bench.</summary>
    public IReadOnlyList<BenchLine> Lines { get; }

    /// <summary>Counted lines of the area that nobody has laid out.</summary>
    public IReadOnlyList<BenchLine> Elsewhere { get; }

    /// <summary>When the area is lit after.</summary>
    public AreaOperation Lit { get; }

    /// <summary>How a line of the area is used after.</summary>
    public LineOperation Operation { get; }

    /// <summary>What is left of rated light from the change on, by id of the line.</summary>
    public IReadOnlyDictionary<string, LineAgeing> Ageing { get; }

    /// <summary>Whether nothing is done to the light of the area: no line, counted or not, no height, no stage.</summary>
    public bool IsUnchanged => ReferenceEquals(AreaAfter, Bench.Area) && Lines.Concat(Elsewhere).All(line => !line.IsTouched)
        && !Bench.Uncounted.Concat(Bench.UncountedElsewhere).Any(IsAskedFor);

    /// <summary>Names of lines that the option changes but nobody can judge: neither laid out nor fitted and changed like a line that is.</summary>
    public IReadOnlyList<string> Unjudged =>
    [
        .. Elsewhere.Where(line => line.IsTouched && !Lines.Any(line.IsLike)).Select(line => line.Now.Line.Name),
        .. Bench.UncountedElsewhere.Where(IsAskedFor).Select(id => Bench.Context.Study.Lines.First(line => line.Id == id).Name),
    ];

    /// <summary>Some lines over the bench, and those of the area that are fitted and changed like one of them: what holds for one holds for all.</summary>
    /// <param name="lines">Lines over the bench.</param>
    public IEnumerable<BenchLine> WithAlike(IReadOnlyList<BenchLine> lines) => lines.Concat(Elsewhere.Where(line => lines.Any(line.IsLike)));

    /// <summary>The longest interval of what gives light. [years]</summary>
    public double EndYears => Ageing.Values.Select(ageing => ageing.EndYears).DefaultIfEmpty().Max();

    private bool IsAskedFor(string line) => Option?.Measures.Any(measure => measure.Measure is not KeepAsIs && measure.Line == line) ?? false;
}
