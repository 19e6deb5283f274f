using NodaTime;

namespace RetrofitCalc.Files.Meters.Tables;

/// <summary>A date, a time of day or both, as meters and spreadsheets write them: 2026-01-31T23:45-05:00, 1/31/2026 11:45 PM, 31.01.2026 23:45, 20260131 2345.</summary>
internal readonly record struct Stamp(LocalDate? Date, LocalTime? Time, bool EndsDay, Offset? Offset)
{
    /// <summary>Date and time; 24:00 is midnight of the next day.</summary>
    public LocalDateTime? Wall => Date is { } date ? (EndsDay ? date.PlusDays(1) : date).At(Time ?? LocalTime.Midnight) : null;
}

/// <summary>Reads stamps by hand: a file may hold a million, and patterns tried one after the other would take a minute.</summary>
internal ref struct StampText(ReadOnlySpan<char> text, DateOrder order)
{
    private const int FirstYear = 1900;
    private const int LastYear = 2199;
    private readonly ReadOnlySpan<char> _text = text.Trim();
    private readonly DateOrder _order = order;
    private int _at;

    public static Stamp? Parse(ReadOnlySpan<char> text, DateOrder order) => new StampText(text, order).Read();

    private Stamp? Read()
    {
        if (_text.Length is 0 or > 40 || !char.IsAsciiDigit(_text[0])) return null;
        var date = IsTimeOnly() ? null : Date();
        if (date is null && !IsTimeOnly()) return null;
        while (_at < _text.Length && _text[_at] is 'T' or 't' or ' ' or ',') _at++;
        if (_at == _text.Length) return new(date, null, false, null);
        if (Time() is not { } time) return null;
        return Zone() is (true, var offset) ? new(date, time.Time, time.EndsDay, offset) : null;
    }

    private readonly bool IsTimeOnly() => _text.IndexOf(':') is 1 or 2;

    private LocalDate? Date()
    {
        var first = Digits(out var length);
        if (length is 8) return DateOf(first / 10000, first / 100 % 100, first % 100);
        if (_at >= _text.Length || length > 4) return null;
        var mark = _text[_at];
        if (mark is not ('-' or '/' or '.') || !Skip(mark)) return null;
        var second = Digits(out var secondLength);
        if (secondLength is 0 or > 2 || !Skip(mark)) return null;
        var third = Digits(out var thirdLength);
        if (length == 4) return thirdLength is 1 or 2 ? DateOf(first, second, third) : null;
        if (length > 2 || thirdLength is not (2 or 4)) return null;
        var year = thirdLength == 2 ? 2000 + third : third;
        return _order == DateOrder.DayFirst ? DateOf(year, second, first) : DateOf(year, first, second);
    }

    private static LocalDate? DateOf(int year, int month, int day) =>
        year is >= FirstYear and <= LastYear && month is >= 1 and <= 12 && day >= 1 && day <= CalendarSystem.Iso.GetDaysInMonth(year, month) ? new LocalDate(year, month, day) : null;

    private (LocalTime Time, bool EndsDay)? Time()
    {
        var hour = Digits(out var length);
        var (minute, second) = (0, 0);
        if (length is 4) (hour, minute) = (hour / 100, hour % 100);
        else if (length is 1 or 2 && Skip(':'))
        {
            minute = Digits(out var minuteLength);
            if (minuteLength != 2) return null;
            if (Skip(':')) second = Digits(out _);
            if (Skip('.')) Digits(out _);
        }
        else if (length is not (1 or 2)) return null;
        Skip(' ');
        if (Half() is { } afternoon)
        {
            if (hour is 0 or > 12) return null;
            hour = hour % 12 + (afternoon ? 12 : 0);
        }
        if ((hour, minute, second) == (24, 0, 0)) return (LocalTime.Midnight, true);
        return hour <= 23 && minute <= 59 && second <= 59 ? (new LocalTime(hour, minute, second), false) : null;
    }

    private bool? Half()
    {
        if (_at >= _text.Length || _text[_at] is not ('a' or 'A' or 'p' or 'P')) return null;
        var afternoon = _text[_at++] is 'p' or 'P';
        Skip('.');
        if (_at < _text.Length && _text[_at] is 'm' or 'M') _at++;
        Skip('.');
        return afternoon;
    }

    /// <summary>Z, UTC, GMT, +01:00 or -0500; nothing. False when something else follows.</summary>
    private (bool Ok, Offset? Offset) Zone()
    {
        Skip(' ');
        var rest = _text[_at..];
        if (rest.IsEmpty) return (true, null);
        if (rest is "Z" or "z" or "UTC" or "GMT") return (true, Offset.Zero);
        if (rest[0] is not ('+' or '-')) return (false, null);
        _at++;
        var number = Digits(out var length);
        var minutes = length == 4 ? number / 100 * 60 + number % 100 : number * 60;
        if (length is not (1 or 2 or 4)) return (false, null);
        if (Skip(':')) minutes += Digits(out _);
        return _at == _text.Length && minutes <= 18 * 60 ? (true, Offset.FromSeconds((rest[0] == '-' ? -60 : 60) * minutes)) : (false, null);
    }

    private bool Skip(char mark)
    {
        if (_at >= _text.Length || _text[_at] != mark) return false;
        _at++;
        return true;
    }

    private int Digits(out int length)
    {
        var (number, start) = (0, _at);
        while (_at < _text.Length && _at - start < 9 && char.IsAsciiDigit(_text[_at])) number = number * 10 + (_text[_at++] - '0');
        length = _at - start;
        return number;
    }
}
