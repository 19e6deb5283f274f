using System.Text.Json;

namespace RetrofitCalc.Files.Tariffs;

/// <summary>Fields that make no part of a bill: each is named with the reason, so that nobody takes it for used.</summary>
internal static class OtherFields
{
    public const string Unknown = "This program does not know this field.";

    private const string WhoMayTakeIt = "Who may take the rate is not checked.";
    private const string Export = "Payment for energy fed into the grid is not computed.";
    private const string Coincident = "Demand at the time of the utility's own peak is not computed.";
    private const string Attributes = "Kept by name only; riders and taxes may stand here. See the tariff sheet.";
    private const string Record = "Says something about the record, not about the bill.";

    private static readonly Dictionary<string, string> Reasons = new()
    {
        ["sector"] = WhoMayTakeIt, ["peakkwcapacitymin"] = WhoMayTakeIt, ["peakkwcapacitymax"] = WhoMayTakeIt, ["peakkwcapacityhistory"] = WhoMayTakeIt,
        ["peakkwhusagemin"] = WhoMayTakeIt, ["peakkwhusagemax"] = WhoMayTakeIt, ["peakkwhusagehistory"] = WhoMayTakeIt, ["demandunits"] = WhoMayTakeIt,
        ["voltageminimum"] = WhoMayTakeIt, ["voltagemaximum"] = WhoMayTakeIt, ["voltagecategory"] = WhoMayTakeIt, ["phasewiring"] = WhoMayTakeIt,
        ["usenetmetering"] = Export, ["dgrules"] = Export,
        ["coincidentrateunit"] = Coincident, ["coincidentratestructure"] = Coincident, ["coincidentrateschedule"] = Coincident,
        ["energyattrs"] = Attributes, ["demandattrs"] = Attributes, ["fixedattrs"] = Attributes,
        ["fixedchargeeaaddl"] = "One meter is billed.",
        ["annualmincharge"] = "A minimum by year is not computed.",
        ["eiaid"] = Record, ["is_default"] = Record, ["supercedes"] = Record, ["supersedes"] = Record, ["revisions"] = Record, ["latest_update"] = Record, ["version"] = Record,
    };

    private static readonly string[] Comments = ["description", "energycomments", "demandcomments", "basicinformationcomments", "dgcomments"];

    /// <summary>Tells of every field that nobody has read.</summary>
    public static void Tell(RecordNode root)
    {
        foreach (var field in root.Element.EnumerateObject().GroupBy(field => field.Name))
        {
            var path = $"$.{field.Key}";
            if (!root.Log.Knows(path))
                Tell(root, path, field.Last());
            if (field.Skip(1).Any())
                root.Log.Doubtful(path, "It is given twice; the last counts.");
        }
    }

    private static void Tell(RecordNode root, string path, JsonProperty field)
    {
        if (field.Value.ValueKind == JsonValueKind.Null)
            root.Log.NotUsed(path, "Empty.");
        else if (Comments.Contains(field.Name) && field.Value.ValueKind == JsonValueKind.String)
            root.Log.NotUsed(path, $"Not read as a rule: \"{RecordText.Line(field.Value.GetString()!)}\"");
        else if (field.Name == "servicetype")
            ServiceType(root, path, field.Value);
        else if (field.Name == "country" && !(field.Value.ValueKind == JsonValueKind.String && field.Value.GetString() is "USA" or "US"))
            root.Log.Doubtful(path, "Amounts are taken for US dollars; choose the currency if they are not.");
        else if (field.Name == "approved" && field.Value.ValueKind == JsonValueKind.False)
            root.Log.Doubtful(path, "The database has not approved this record.");
        else
            root.Log.NotUsed(path, field.Name is "country" or "approved" ? Record : Reasons.GetValueOrDefault(field.Name, Unknown));
    }

    private static void ServiceType(RecordNode root, string path, JsonElement value)
    {
        if (value.ValueKind == JsonValueKind.String && value.GetString() == "Bundled")
            root.Log.Used(path, "Delivery and energy together.");
        else
            root.Log.Doubtful(path, $"\"{RecordText.Line(value.ToString())}\": this may be only a part of the bill. Add the prices of the other supplier.");
    }
}
