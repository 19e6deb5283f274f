namespace RetrofitCalc.Cli;

/// <summary>What the program tells the script that called it.</summary>
internal static class ExitCode
{
    public const int Done = 0;
    public const int ProblemsInInput = 1;
    public const int WrongUsage = 2;
    public const int FileTrouble = 3;

    public const string Explained = """
        Exit codes: 0 done; 1 problems in the input, listed on standard error;
        2 wrong usage; 3 a file cannot be read or written.
        """;
}
