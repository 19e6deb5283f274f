using Microsoft.AspNetCore.Components;
using RetrofitCalc.Files;

namespace RetrofitCalc.Web.Shared.Fields;

/// <summary>A value one types. What cannot be read is kept as typed, with the reason beside it.</summary>
/// <typeparam name="T">Kind of value.</typeparam>
public abstract partial class TypedField<T>
{
    /// <summary>What counts while nothing is typed.</summary>
    [Parameter] public string? Placeholder { get; set; }

    /// <summary>Lines of text shown; more than one for lists, which can then be pasted line by line.</summary>
    [Parameter] public int Rows { get; set; } = 1;

    protected string Shown => Draft?.Text ?? (Value is { } value ? Write(value) : "");

    protected virtual string? InputMode => null;

    protected virtual string InputClass => "";

    private string FullLabel => Unit is null ? Label : $"{Label}, {Unit}";

    protected abstract string Write(T value);

    protected abstract Parsed<T> Read(string typed);

    private Task ChangeAsync(string? typed)
    {
        var text = typed ?? "";
        return text == Shown ? Task.CompletedTask : KeepAsync(text, Read(text));
    }
}
