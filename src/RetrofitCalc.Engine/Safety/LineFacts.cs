using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Safety;

/// <summary>What a survey line and its set-up say, in the words of the rules.</summary>
internal static class LineFacts
{
    private static readonly string[] Families = ["T5", "T5HO", "T8", "T8HO", "T12", "T12HO", "T12VHO"];
    private static readonly string[] Bases = ["G13", "G5", "Fa8", "R17d", "2G11"];

    public static void Add(Dictionary<string, string> facts, SurveyLine line, Area? area)
    {
        SafetyFacts.Set(facts, "fixture_count", line.Count);
        SafetyFacts.Set(facts, "supply_volts", line.SupplyVolts);
        SafetyFacts.Set(facts, "ballast_year", line.BallastYear);
        SafetyFacts.Set(facts, "start_method", Word(line.StartMethod));
        SafetyFacts.Set(facts, "environment", Word(line.Location));
        SafetyFacts.Set(facts, "emergency_role", Word(line.Emergency));
        if (line.Emergency == EmergencyRole.ExitRoute) facts["asset_in_egress_path"] = "true";
        if (area is null) return;
        if (area.Light?.People is not null) facts["people_work"] = "true";
        if (area.GrowsCrop) facts["crop_present"] = facts["plant_purpose"] = "true";
        else SafetyFacts.Set(facts, "mounting_height_m", line.MountingHeight?.Metres);
    }

    public static void AddSetUp(Dictionary<string, string> facts, SetUp setUp, FactSources sources)
    {
        SafetyFacts.Set(facts, "lamps_per_fixture", setUp.LampCount);
        if (sources.Lamps.GetValueOrDefault(setUp.Lamp) is { } lamp)
        {
            facts["lamp_type"] = Families.Contains(lamp.Family) ? lamp.Family : "other";
            facts["lamp_base"] = Bases.Contains(lamp.Base) ? lamp.Base : "other";
        }
        var kinds = setUp.Ballasts.Select(b => b.Ballast is { } id ? sources.Ballasts.GetValueOrDefault(id)?.Technology : null).ToList();
        if (kinds.Contains(BallastTechnology.Magnetic)) facts["ballast_type"] = "magnetic";
        else if (kinds.Count > 0 && kinds.All(kind => kind == BallastTechnology.Electronic)) facts["ballast_type"] = "electronic";
    }

    public static string? Word(LocationClass? location) => location switch
    {
        LocationClass.Dry => "dry",
        LocationClass.Damp => "damp",
        LocationClass.Wet => "wet",
        _ => null,
    };

    private static string? Word(StartMethod? method) => method switch
    {
        StartMethod.Instant => "instant",
        StartMethod.Rapid => "rapid",
        StartMethod.Programmed => "programmed",
        StartMethod.Preheat => "preheat",
        _ => null,
    };

    private static string? Word(EmergencyRole? role) => role switch
    {
        EmergencyRole.None => "none",
        EmergencyRole.ExitRoute => "egress_lighting",
        EmergencyRole.BatteryBallast => "battery_in_fixture",
        EmergencyRole.EmergencyCircuit => "central_supply",
        _ => null,
    };
}
