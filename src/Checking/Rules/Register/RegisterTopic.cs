using System.Collections.Immutable;

namespace Witnessmark.Checking.Rules.Register;

/// <summary>The rules of this topic.</summary>
internal static class RegisterTopic
{
    public static readonly ImmutableArray<Rule> Rules =
    [
        Rule.Of<ReleasedVersionChanged>(),
        Rule.Of<ReleasedNotOnRecord>(),
        Rule.OfRegister<CopyMarkTwice>(),
        Rule.OfRegister<CopyOutOfForce>(),
        Rule.OfRegister<CopyOfNoRelease>(),
        Rule.OfRegister<CalibratedToolUnknown>(),
        Rule.OfRegister<EndOfNoCopy>(),
        Rule.OfRegister<MarkSignShared>(),
        Rule.OfRegister<MarkSignUnclear>(),
        Rule.OfRegister<RegisterDateUnclear>(),
        Rule.OfRegister<ReleasedTwice>(),
    ];
}
