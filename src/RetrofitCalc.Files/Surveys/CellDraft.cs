namespace RetrofitCalc.Files.Surveys;

/// <summary>A text that could not be read into the study: kept as typed until it is mended.</summary>
/// <param name="Line">Id of the survey line, or a path such as tariff/energy[1].</param>
/// <param name="Field">The field it was typed into.</param>
/// <param name="Text">What was typed.</param>
/// <param name="Message">What is wrong and what to give instead.</param>
public sealed record CellDraft(string Line, string Field, string Text, string Message);
