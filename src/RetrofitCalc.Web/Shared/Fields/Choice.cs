namespace RetrofitCalc.Web.Shared.Fields;

/// <summary>One of the values a <see cref="ChoiceField{T}"/> offers.</summary>
/// <param name="Value">The value.</param>
/// <param name="Text">What the reader sees.</param>
/// <param name="WhyNot">Why it cannot be chosen here; null when it can.</param>
public sealed record Choice<T>(T Value, string Text, string? WhyNot = null);
