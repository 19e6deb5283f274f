namespace RetrofitCalc.Data;

/// <summary>Why an earlier state of a study is kept.</summary>
public enum RevisionKind
{
    /// <summary>Kept from time to time while someone edits.</summary>
    Kept,
    /// <summary>Behind a summary that was handed out: frozen.</summary>
    Issued,
}

/// <summary>Kinds of catalogue row.</summary>
public enum CatalogueKind
{
    SetUp,
    Lamp,
    Ballast,
    Tube,
    Luminaire,
}

/// <summary>What an edit of a catalogue row did.</summary>
public enum CatalogueChange
{
    Shipped,
    Added,
    Edited,
    Retired,
    Restored,
    Deleted,
}
