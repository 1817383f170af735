using System.Collections;
using System.Reflection;
using Witnessmark.Language.Text;

namespace Witnessmark.Reading.Tests.Steps;

/// <summary>Every located text in a tree of records, found by looking.</summary>
internal static class Walk
{
    public static IEnumerable<Located<string>> Texts(object? root)
    {
        if (root is Located<string> text)
            yield return text;
        else if (root is DataNode or SourceText or Location or string or null || root.GetType().IsPrimitive || root.GetType().IsEnum || root is decimal)
            yield break;
        else if (root is IEnumerable items)
        {
            foreach (var inner in items.Cast<object?>().SelectMany(Texts))
                yield return inner;
        }
        else
            foreach (var inner in root.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(IsStored).Select(p => p.GetValue(root)).SelectMany(Texts))
                yield return inner;
    }

    /// <summary>A property of the record itself; one that is worked out would walk for ever.</summary>
    private static bool IsStored(PropertyInfo property) => property.GetIndexParameters().Length == 0 && property.CanWrite;
}
