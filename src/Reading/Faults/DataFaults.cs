using System.Collections.Immutable;
using Witnessmark.Language.Findings;

namespace Witnessmark.Reading.Faults;

/// <summary>Faults of data files and of the text itself. The page of each is beside this file.</summary>
public static class DataFaults
{
    private const string Topic = "Text";

    // the file
    public static readonly RuleInfo TextEncoding = Fault("text-encoding");
    public static readonly RuleInfo TextTooLarge = Fault("text-too-large");
    public static readonly RuleInfo TextHidden = Fault("text-hidden");
    public static readonly RuleInfo MergeLeftOpen = Fault("merge-left-open");

    // the signs of the data language
    public static readonly RuleInfo YamlBroken = Fault("yaml-broken");
    public static readonly RuleInfo YamlTab = Fault("yaml-tab");
    public static readonly RuleInfo YamlAnchor = Fault("yaml-anchor");
    public static readonly RuleInfo YamlTag = Fault("yaml-tag");
    public static readonly RuleInfo YamlDocuments = Fault("yaml-documents");
    public static readonly RuleInfo YamlBraces = Fault("yaml-braces");
    public static readonly RuleInfo YamlHash = Fault("yaml-hash");

    // keys and values
    public static readonly RuleInfo KeyTwice = Fault("key-twice");
    public static readonly RuleInfo KeyUnknown = Fault("key-unknown");
    public static readonly RuleInfo KeyMissing = Fault("key-missing");
    public static readonly RuleInfo NameUnusable = Fault("name-unusable");
    public static readonly RuleInfo ValueMissing = Fault("value-missing");
    public static readonly RuleInfo ValueWrongKind = Fault("value-wrong-kind");
    public static readonly RuleInfo ValueNotInList = Fault("value-not-in-list");

    // quantities
    public static readonly RuleInfo QuantityWithoutUnit = Fault("quantity-without-unit");
    public static readonly RuleInfo UnitUnknown = Fault("unit-unknown");
    public static readonly RuleInfo UnitWrongKind = Fault("unit-wrong-kind");
    public static readonly RuleInfo DecimalComma = Fault("decimal-comma");
    public static readonly RuleInfo RangeBackward = Fault("range-backward");
    public static readonly RuleInfo QuantityUnreadable = Fault("quantity-unreadable");

    // single topics of a sheet
    public static readonly RuleInfo ThreadUnclear = Fault("thread-unclear");
    public static readonly RuleInfo PassImpossible = Fault("pass-impossible");
    public static readonly RuleInfo OrderUnclear = Fault("order-unclear");
    public static readonly RuleInfo MetByUnclear = Fault("met-by-unclear");
    public static readonly RuleInfo InterlockShape = Fault("interlock-shape");

    // files of a workshop
    public static readonly RuleInfo FileUnknown = Fault("file-unknown");
    public static readonly RuleInfo WorkshopMissing = Fault("workshop-missing");
    public static readonly RuleInfo WorkshopTwice = Fault("workshop-twice");
    public static readonly RuleInfo IdTwice = Fault("id-twice");

    public static readonly ImmutableArray<RuleInfo> All =
    [
        TextEncoding, TextTooLarge, TextHidden, MergeLeftOpen,
        YamlBroken, YamlTab, YamlAnchor, YamlTag, YamlDocuments, YamlBraces, YamlHash,
        KeyTwice, KeyUnknown, KeyMissing, NameUnusable, ValueMissing, ValueWrongKind, ValueNotInList,
        QuantityWithoutUnit, UnitUnknown, UnitWrongKind, DecimalComma, RangeBackward, QuantityUnreadable,
        ThreadUnclear, PassImpossible, OrderUnclear, MetByUnclear, InterlockShape,
        FileUnknown, WorkshopMissing, WorkshopTwice, IdTwice,
    ];

    private static RuleInfo Fault(string name) => new(name, Topic, Severity.Fault);
}
