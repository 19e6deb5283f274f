namespace RetrofitCalc.Web.Features.Catalogue;

/// <summary>Ids of copies.</summary>
public static class CopyNames
{
    /// <summary>The id with "-own", then "-own-2" and so on, until one is free.</summary>
    public static async Task<string> FreeAsync(string id, Func<string, Task<bool>> taken)
    {
        var name = $"{id}-own";
        for (var i = 2; await taken(name); i++) name = $"{id}-own-{i}";
        return name;
    }
}
