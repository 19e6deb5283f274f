namespace RetrofitCalc.Web.Shared;

/// <summary>Changes of immutable lists: each returns a new one.</summary>
public static class ListEdits
{
    public static IReadOnlyList<T> At<T>(this IReadOnlyList<T> list, int index, Func<T, T> change) =>
        [.. list.Select((item, i) => i == index ? change(item) : item)];

    public static IReadOnlyList<T> WithoutAt<T>(this IReadOnlyList<T> list, int index) => [.. list.Where((_, i) => i != index)];
}
