namespace Witnessmark.Proof;

/// <summary>Work branches in more ways than can be followed: what is not followed is not proved.</summary>
public sealed class TooManyWaysException() : Exception("the work branches in more ways than can be followed");
