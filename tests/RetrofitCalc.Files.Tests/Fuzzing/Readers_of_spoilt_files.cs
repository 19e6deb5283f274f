using System.Diagnostics;
using System.Globalization;
using System.IO.Compression;
using System.Text.RegularExpressions;

namespace RetrofitCalc.Files.Tests.Fuzzing;

/// <summary>
/// Every reader is given spoilt files: it must say what is wrong, and never throw, hang or take memory without bound. Files that bring
/// out words not heard before are spoilt further, so the search goes where the reader's rules are. A second for each reader in every run;
/// RETROFITCALC_FUZZ_SECONDS makes it longer, RETROFITCALC_FUZZ_SEED begins elsewhere (docs/benchmarks.md).
/// </summary>
public partial class Readers_of_spoilt_files
{
    private const int Corpus = 400;
    private const int LargestFile = 2_000_000;
    private const long MostAllocated = 400_000_000;
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(20);
    private static readonly double Seconds = Setting("RETROFITCALC_FUZZ_SECONDS", 1.2);
    private static readonly int Seed = (int)Setting("RETROFITCALC_FUZZ_SEED", 20_261);

    public static TheoryData<string> Names => [.. FuzzedReader.All.Keys];

    [Theory, MemberData(nameof(Names))]
    public void say_what_is_wrong_and_never_throw_hang_or_swell(string name)
    {
        var reader = FuzzedReader.All[name]();
        Assert.All(reader.Good, good => Assert.NotNull(reader.Read(good)));
        var run = new Run(reader);
        var worker = new Thread(run.Go, 1024 * 1024);
        worker.Start();
        while (!worker.Join(TimeSpan.FromMilliseconds(200)))
            if (run.InCase > Longest) Assert.Fail($"{name}: case {run.Cases} has run for {Longest.TotalSeconds} s. Seed {Seed}, file:\n{Convert.ToBase64String(run.Now)}");
        Assert.True(run.Failure is null, $"{name}: case {run.Cases}, seed {Seed}: {run.Failure}\n{Convert.ToBase64String(run.Now)}");
        Assert.True(run.Cases > 20, $"{name}: only {run.Cases} cases in {Seconds} s.");
        Report(name, run);
    }

    /// <summary>60 MB of blanks pack into 60 kB, a ratio no spreadsheet reaches: refused while it unpacks, before anything is held.</summary>
    [Theory, InlineData("meter XLSX"), InlineData("survey XLSX")]
    public void refuse_a_workbook_that_unpacks_without_end(string name)
    {
        var reader = FuzzedReader.All[name]();
        var bomb = Surveys.Workbooks.Replace(reader.Good[0], "xl/worksheets/sheet1.xml", "<worksheet>" + new string(' ', 60_000_000));
        var before = GC.GetAllocatedBytesForCurrentThread();
        Assert.Contains("unpacks to more than", Assert.Single(reader.Read(bomb)!));
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 20_000_000);
    }

    private static double Setting(string name, double otherwise) =>
        double.TryParse(Environment.GetEnvironmentVariable(name), CultureInfo.InvariantCulture, out var value) ? value : otherwise;

    /// <summary>The figures of a longer run, for docs/benchmarks.md.</summary>
    private static void Report(string name, Run run)
    {
        if (Seconds > 2)
            TestContext.Current.SendDiagnosticMessage($"{name}: {run.Cases} files, {run.Heard} outcomes, slowest {run.Slowest.TotalMilliseconds:0} ms, most memory {run.MostMemory / 1e6:0} MB");
    }

    private sealed class Run(FuzzedReader reader)
    {
        private readonly Mutations _mutations = new(Seed);
        private readonly List<byte[]> _corpus = [.. reader.Good];
        private readonly HashSet<string> _heard = [];
        private readonly Stopwatch _case = new();

        public int Cases { get; private set; }
        public byte[] Now { get; private set; } = [];
        public string? Failure { get; private set; }
        public TimeSpan Slowest { get; private set; }
        public long MostMemory { get; private set; }
        public int Heard => _heard.Count;
        public TimeSpan InCase => _case.Elapsed;

        public void Go()
        {
            for (var all = Stopwatch.StartNew(); all.Elapsed.TotalSeconds < Seconds && Failure is null;)
            {
                Now = Spoilt();
                if (Now.Length > LargestFile) continue;
                Cases++;
                Try();
            }
            _case.Reset();
        }

        private void Try()
        {
            var before = GC.GetAllocatedBytesForCurrentThread();
            _case.Restart();
            try
            {
                var problems = reader.Read(Now);
                if (problems is null) Failure = "it gave neither a value nor a problem.";
                else if (_heard.Add(string.Join('|', problems.Take(5).Select(problem => Varying().Replace(problem, "")))) && _corpus.Count < Corpus) _corpus.Add(Now);
            }
            catch (Exception thrown)
            {
                Failure = thrown.ToString();
            }
            (Slowest, MostMemory) = (Max(Slowest, _case.Elapsed), Math.Max(MostMemory, GC.GetAllocatedBytesForCurrentThread() - before));
            if (MostMemory > MostAllocated) Failure ??= $"it took {MostMemory / 1e6:0} MB.";
        }

        private byte[] Spoilt()
        {
            var (good, other) = (_corpus[_mutations.Next(_corpus.Count)], _corpus[_mutations.Next(_corpus.Count)]);
            return reader.InsideZip && _mutations.Next(4) > 0 ? PartSpoilt(good) : _mutations.Of(good, other);
        }

        /// <summary>One part of the packed file is spoilt and packed again, so that the reader gets past the packing.</summary>
        private byte[] PartSpoilt(byte[] packed)
        {
            try
            {
                using var file = new MemoryStream();
                file.Write(packed);
                using (var zip = new ZipArchive(file, ZipArchiveMode.Update, leaveOpen: true))
                {
                    var part = zip.Entries[_mutations.Next(zip.Entries.Count)];
                    using var content = part.Open();
                    using var copy = new MemoryStream();
                    content.CopyTo(copy);
                    var spoilt = _mutations.Of(copy.ToArray(), copy.ToArray());
                    content.SetLength(0);
                    content.Write(spoilt);
                }
                return file.ToArray();
            }
            catch (Exception broken) when (broken is InvalidDataException or ArgumentException or IOException or NotSupportedException)
            {
                return _mutations.Of(packed, packed); // already spoilt beyond unpacking
            }
        }

        private static TimeSpan Max(TimeSpan one, TimeSpan other) => one > other ? one : other;
    }

    [GeneratedRegex("\"[^\"]*\"|[0-9]+")]
    private static partial Regex Varying();
}
