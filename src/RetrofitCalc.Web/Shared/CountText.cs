namespace RetrofitCalc.Web.Shared;

/// <summary>Small counts as words, as a sentence begins with them.</summary>
public static class CountText
{
    private static readonly string[] Words = ["No", "One", "Two", "Three", "Four", "Five", "Six", "Seven", "Eight", "Nine", "Ten", "Eleven", "Twelve"];

    public static string Word(int count) => count >= 0 && count < Words.Length ? Words[count] : $"{count}";
}
