using Npgsql;

namespace RetrofitCalc.Data.Postgres;

/// <summary>What PostgreSQL's error codes mean to the person who runs the server. Codes: PostgreSQL manual, appendix A.</summary>
internal static class PostgresProblems
{
    private const string Untouched = "Nothing in the database was changed.";

    public static DatabaseProblem NotUnderstood(string detail) => new(
        $"The setting ConnectionStrings:Postgres is not understood: {detail}", "No database was opened.",
        "Write it as Host=…;Database=…;Username=…;Password=…, then start again.");

    public static DatabaseProblem From(NpgsqlException error) => error is PostgresException answer
        ? FromAnswer(answer)
        : new("The database server does not answer.", "Everything saved before is still on the server; the last change may not be.",
            "Check that the server runs and that ConnectionStrings:Postgres names its host and port, then try again.");

    private static DatabaseProblem FromAnswer(PostgresException answer) => answer.SqlState switch
    {
        "28P01" or "28000" => new("The database server refused the user name or password.", Untouched,
            "Correct ConnectionStrings:Postgres, then start again."),
        "42501" => new("The database user may not do this.", Untouched,
            "Give the user the right to create and change tables in its database, then start again."),
        "25006" => new("The database server only allows reading.", "Everything saved before can still be read.",
            "Point ConnectionStrings:Postgres at the server that accepts changes."),
        "53100" => new("The database server's disk is full.", "Everything saved before is still there; the last change was not saved.",
            "Free some space on the server, then save again."),
        "57P03" => new("The database server is still starting or is shutting down.", Untouched, "Wait a minute, then try again."),
        "53300" => new("The database server has too many connections.", Untouched, "Wait a minute, or raise the server's limit."),
        _ => new($"The database server reported: {answer.MessageText} ({answer.SqlState}).", "The last change was not saved; what was saved before is left as it is.",
            "Try again; if it happens again, look in the server's log."),
    };
}
