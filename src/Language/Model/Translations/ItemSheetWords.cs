using Witnessmark.Language.Text;

namespace Witnessmark.Language.Model;

/// <summary>The words that a declared item puts on the sheet of a step that uses it.</summary>
internal sealed class ItemSheetWords(Scope root, Scope own, WordCollection words)
{
    /// <param name="judged">Whether the step stops for it: then one limit is printed, else every band with its name.</param>
    public void Reading(string name, bool judged)
    {
        if ((own.Reading(name) ?? root.Reading(name)) is not { } reading)
            return;
        words.Text(reading.LookFor);
        words.Text(reading.Outside);
        foreach (var verdict in reading.Verdicts)
            words.Value(verdict, reading.Id.Value);
        if (reading.IsLook)
            return;
        words.Name(reading.Id);
        foreach (var point in reading.PointNames)
            words.Name(point);
        foreach (var band in judged ? [] : reading.Bands)
            words.Value(band.Name, reading.Id.Value);
        if (reading.Of is { } part)
            words.Name(part);
        if (reading.Gauge is { } gauge)
            words.Name(gauge);
    }

    public void Worked(string name)
    {
        if ((own.Value(name) ?? root.Value(name)) is not { } value)
            return;
        words.Name(value.Id);
        words.Text(value.Outside);
        if (value.Formula is { } formula)
            foreach (var part in FormulaNames(formula.Value))
                words.Name(part, formula.At);
    }

    public void Test(string name, Func<string, bool> judged)
    {
        if ((own.Test(name) ?? root.Test(name)) is not { } test)
            return;
        words.Text(test.What);
        words.Text(test.Load);
        words.Text(test.Medium);
        foreach (var reading in test.Readings)
            Reading(reading.Value, judged(reading.Value));
        if (test.PassesWhen is null)
            words.Text(test.Passes);
        foreach (var clause in (test.PassesWhen?.All ?? []).OfType<StateClause>())
        {
            words.Name(clause.Thing);
            foreach (var value in clause.Values)
                words.Value(value, clause.Thing.Value);
        }
    }

    public void Load(string name)
    {
        if (root.Load(name)?.Gear is { } gear)
            words.Name(gear);
    }

    public void Space(string name)
    {
        if (root.Space(name) is not { } space)
            return;
        words.Name(space.Id);
        if (space.Fluid is { } fluid)
            words.Name(fluid);
        if (space.DrainsInto is { } container)
        {
            words.Name(container);
            words.Text((root.Tool(container.Value) as Container)?.Wording);
        }
        words.Text(space.FullWhen);
    }

    public void Stack(string name)
    {
        if (root.Stack(name) is not { } stack)
            return;
        // piston and ring are words of the sheet's own
        foreach (var end in new[] { stack.From, stack.To }.OfType<Located<string>>().Where(e => e.Value is not ("piston" or "ring")))
            words.Value(end, stack.Id.Value);
    }

    public void Fasteners(string name)
    {
        if (root.Fasteners(name) is not { } group)
            return;
        words.Name(group.Id);
        words.Text(group.FitsOneWay);
        if (group.Condition is { } condition)
            words.Value(condition, group.Id.Value);
    }

    /// <summary>Bolts and parts that come off: their bag names them.</summary>
    public void Bagged(string name)
    {
        Fasteners(name);
        if (root.Part(name) is { } part)
            words.Name(part.Id);
    }

    /// <summary>As long as it is in the machine, its kind heads every section.</summary>
    public void Device(string nameOrTag)
    {
        if ((own.Device(nameOrTag) ?? root.Device(nameOrTag)) is not { } device)
            return;
        words.Name(device.Id);
        words.Text(device.Wording);
    }

    /// <summary>The names of a formula: <c>disc-thickness</c>, <c>cavity of brake-stack</c>.</summary>
    private static IEnumerable<string> FormulaNames(string formula)
    {
        var parts = formula.Split([' ', '(', ')', '+', '/'], StringSplitOptions.RemoveEmptyEntries);
        for (var i = 0; i < parts.Length; i++)
        {
            if (!char.IsLetter(parts[i][0]) || parts[i] == "x")
                continue;
            if (i + 2 < parts.Length && parts[i + 1] == "of")
            {
                if (parts[i] is not ("sum" or "mean" or "least" or "most" or "spread"))
                    yield return $"{parts[i]} of {parts[i += 2]}";
                else
                    yield return parts[i += 2];
            }
            else
                yield return parts[i];
        }
    }
}
