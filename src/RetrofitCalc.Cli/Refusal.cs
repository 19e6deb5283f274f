namespace RetrofitCalc.Cli;

/// <summary>Says why nothing was done.</summary>
internal static class Refusal
{
    public static int Of(IEnumerable<string> reasons)
    {
        foreach (var reason in reasons) Console.Error.WriteLine(reason);
        return ExitCode.ProblemsInInput;
    }
}
