namespace RetrofitCalc.Web.Features.Light.Keep;

/// <summary>How long work that takes a second waits, so that it does not start at every key.</summary>
internal static class Pause
{
    public static readonly TimeSpan OfTyping = TimeSpan.FromMilliseconds(600);
}
