using RetrofitCalc.Engine.Catalogue;

namespace RetrofitCalc.Reports;

/// <summary>Evidence and sources in words.</summary>
internal static class SourceWords
{
    public static string Kind(EvidenceKind kind) => kind switch
    {
        EvidenceKind.Measured => "measured",
        EvidenceKind.Tested => "tested",
        EvidenceKind.Computed => "computed",
        EvidenceKind.Nameplate => "nameplate",
        EvidenceKind.Practice => "common practice",
        EvidenceKind.Invented => "invented",
        _ => "unsourced",
    };

    /// <summary>The source, with what a careful reader must know about it.</summary>
    public static string Full(Provenance source) =>
        (source.Source.Length > 0 ? source.Source : "no source given") + (source.FromMemory ? " (cited from memory, not read again)" : "");
}
