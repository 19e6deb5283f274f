namespace RetrofitCalc.Files.Examples;

/// <summary>Random numbers from Knuth's 64-bit linear congruential generator, so that a seed means the same numbers whatever library runs it.</summary>
internal sealed class InventedNumbers(ulong seed)
{
    private ulong _state = seed;

    /// <summary>Twelve even numbers less six: mean 0, deviation 1, never beyond 6.</summary>
    public double Normal()
    {
        var sum = -6.0;
        for (var i = 0; i < 12; i++) sum += Even();
        return sum;
    }

    /// <summary>Evenly from 0 to below 1.</summary>
    public double Even()
    {
        _state = unchecked(_state * 6_364_136_223_846_793_005 + 1_442_695_040_888_963_407);
        return (_state >> 11) / (double)(1UL << 53);
    }
}
