using System.Collections.Immutable;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;

namespace Witnessmark.Records.Hashing;

/// <summary>What is hashed of a piece of a procedure, as text: two pieces that mean the same have the same.</summary>
public static class Meaning
{
    public static string Of(Fact fact) => FactCanon.Of([fact]).Json;

    public static string Of(DataNode node) => NodeCanon.Of(node).Json;

    public static string Of(Step step) => BodyCanon.Step(step).Json;

    public static string Of(SafetyMessage message) => BodyCanon.Message(message).Json;

    public static string Of(ImmutableArray<Inline> text) => ProseCanon.Of(text).Json;

    public static string Of(ImmutableArray<Block> text) => ProseCanon.Of(text).Json;

    public static string Of(ImmutableArray<ImmutableArray<Inline>> bullets) => ProseCanon.Bullets(bullets).Json;
}
