using Microsoft.Data.Sqlite;

namespace RetrofitCalc.Data.Sqlite;

/// <summary>What SQLite's error codes mean to the person at the keyboard. Codes: sqlite.org/rescode.html.</summary>
internal static class SqliteProblems
{
    private const string Untouched = "Nothing in the file was changed.";

    public static DatabaseProblem Damaged(string? path) => new(
        path is null ? "The database file is damaged or is no database." : $"The file {path} is damaged or is no database.", Untouched,
        "Move it aside and restore your latest backup in its place, or start with an empty folder.");

    public static DatabaseProblem NotOurs(string path) => new(
        $"The file {path} is a database of another program.", Untouched,
        "Choose another path with the setting Data:Path.");

    public static DatabaseProblem NotAllowed(string detail) => new(
        $"The database file cannot be opened: {detail}", Untouched,
        "Check that the folder exists and that the program's user may write to it, or choose another path with the setting Data:Path.");

    public static DatabaseProblem? From(SqliteException error) => error.SqliteErrorCode switch
    {
        5 or 6 => new("The database file is in use and stayed locked.", "Everything saved before is still there.",
            "Close the other copy of the program or the tool that has the file open, then try again."),
        8 => new("The database file cannot be written.", "Everything saved before can still be read.",
            "Give the program's user the right to write the file and its folder, or choose another path with the setting Data:Path."),
        10 => new("The disk reported an error for the database file.", "What was saved before is left as it is.",
            "Check the disk, copy the file to another one, then start again."),
        11 or 26 => Damaged(null),
        13 => new("The disk is full.", "Everything saved before is still there; the last change was not saved.",
            "Free some space, then save again."),
        14 => NotAllowed("its folder is missing or closed to the program."),
        _ => null,
    };
}
