using System.Reflection;

namespace RetrofitCalc.Web.Tests;

/// <summary>References run one way: Web, Cli → Data, Reports, Files → Engine. docs/decisions/0001.</summary>
public class Dependency_rules
{
    private static readonly string[] OutsideTheEngine = ["RetrofitCalc.Files", "RetrofitCalc.Data", "RetrofitCalc.Reports", "RetrofitCalc.Web"];

    public static TheoryData<Type, string[]> MayReference => new()
    {
        { typeof(Engine.StudyEvaluation), [] },
        { typeof(Files.FileProblem), ["RetrofitCalc.Engine"] },
        { typeof(Reports.QuantityText), ["RetrofitCalc.Engine"] },
        { typeof(Data.StudyStore), ["RetrofitCalc.Engine", "RetrofitCalc.Files"] },
        { typeof(Program), ["RetrofitCalc.Engine", "RetrofitCalc.Files", "RetrofitCalc.Data", "RetrofitCalc.Reports"] },
    };

    [Theory, MemberData(nameof(MayReference))]
    public void hold_in_every_assembly(Type inside, string[] allowed) =>
        Assert.Empty(References(inside).Where(name => name.StartsWith("RetrofitCalc.", StringComparison.Ordinal)).Except(allowed));

    [Fact]
    public void keep_files_networks_and_databases_out_of_the_engine()
    {
        string[] allowed = ["NodaTime", "MathNet.Numerics", "System.Runtime", "System.Collections", "System.Linq", "System.Collections.Immutable", "System.Memory", "System.Runtime.Extensions", "System.Threading", "System.Threading.Tasks.Parallel", "System.Text.RegularExpressions", "System.Runtime.InteropServices", "System.Collections.Concurrent", "System.Numerics.Vectors"];
        Assert.Empty(References(typeof(Engine.StudyEvaluation)).Except(allowed));
    }

    [Fact]
    public void are_seen_by_this_test_where_a_reference_exists() =>
        Assert.NotEmpty(References(typeof(Program)).Intersect(OutsideTheEngine));

    private static IEnumerable<string> References(Type inside) =>
        Assembly.GetAssembly(inside)!.GetReferencedAssemblies().Select(a => a.Name!);
}
