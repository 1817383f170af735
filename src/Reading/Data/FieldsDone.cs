using System.Collections.Immutable;
using Witnessmark.Language.Text;
using Witnessmark.Reading.Shapes;

namespace Witnessmark.Reading.Data;

/// <summary>What is left when a thing has been read.</summary>
internal sealed partial class Fields
{
    /// <summary>Here and below: reads keys that nobody asked for, reports those that the shape does not know and those that are missing.</summary>
    public void Done()
    {
        NeedsAll();
        foreach (var entry in Map.Entries)
            Leftover(entry);
        // a list is still growing while it is read
        for (var i = 0; i < _below.Count; i++)
            _below[i].Done();
    }

    /// <summary>Reports keys that must be there and are not.</summary>
    public void NeedsAll()
    {
        foreach (var row in Shape.Rows)
            if (row.Needed)
                Needs(row.Key);
        foreach (var need in Shape.Needs)
            foreach (var key in Missing(need))
                Needs(key);
    }

    private void Leftover(DataEntry entry)
    {
        if (Shape.Find(entry.Key.Value) is not { } row)
            Findings.Add(Names.Unknown(entry.Key, What, Shape.Rows.Select(r => r.Key).Where(k => !Has(k))));
        else if (!_asked.Contains(entry.Key.Value) && KeyFits(entry.Key))
            Read(entry.Key.Value, row.Holds);
    }

    private bool KeyFits(Located<string> key) => Shape.Other is null || Shape.OtherKeys is not NameForm || Names.Usable(key, Findings);

    private void Needs(string key)
    {
        if (!Has(key))
            Findings.Add(Names.Missing(key, What, NamedAt ?? Names.Beginning(Map)));
    }

    private ImmutableArray<string> Missing(Need need) => need switch
    {
        FirstBegun begun => begun.Of(Has),
        Unless unless when (_entries.GetValueOrDefault(unless.Other)?.Value as DataText)?.Text != unless.Value => [unless.Key],
        _ => [],
    };

    private void Read(string key, Holds holds)
    {
        switch (holds)
        {
            case One { Form: SpelledForm } or Many { Form: SpelledForm }:
                throw Misread(key, "nothing, and has a reader of its own");
            case One one:
                ReadOne(key, one.Form);
                break;
            case Many { Form: SizeForm }:
                Quantities(key);
                break;
            case Many:
                List(key);
                break;
            case Shapes.Below:
                Below(key);
                break;
            case Shapes.Members:
                _ = Members(key).Count();
                break;
            case Shapes.Each:
                _ = Each(key, (_, _) => true).Count();
                break;
        }
    }

    private void ReadOne(string key, Form form)
    {
        switch (form)
        {
            case CountForm:
                Count(key);
                break;
            case FactorForm:
                Factor(key);
                break;
            case SizeForm { Size: Size.Quantity }:
                Quantity(key);
                break;
            case SizeForm { Size: Size.Toleranced }:
                Toleranced(key);
                break;
            case SizeForm { Size: Size.Range }:
                Range(key);
                break;
            case SizeForm { Size: Size.Share }:
                Share(key);
                break;
            case SizeForm { Size: Size.Shares }:
                Shares(key);
                break;
            default:
                Text(key);
                break;
        }
    }
}
