namespace RetrofitCalc.Data;

/// <summary>Why the database cannot be used, in words for the person who runs the program.</summary>
/// <param name="What">What happened.</param>
/// <param name="Safe">What is safe.</param>
/// <param name="Next">What to do.</param>
public sealed record DatabaseProblem(string What, string Safe, string Next)
{
    public override string ToString() => $"{What} {Safe} {Next}";
}
