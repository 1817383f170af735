using System.Collections.Immutable;
using Witnessmark.Checking.Rules.Changes;
using Witnessmark.Checking.Rules.Contract;
using Witnessmark.Checking.Rules.Counts;
using Witnessmark.Checking.Rules.Devices;
using Witnessmark.Checking.Rules.Fasteners;
using Witnessmark.Checking.Rules.Fluids;
using Witnessmark.Checking.Rules.Lifting;
using Witnessmark.Checking.Rules.Messages;
using Witnessmark.Checking.Rules.People;
using Witnessmark.Checking.Rules.Proof;
using Witnessmark.Checking.Rules.Readings;
using Witnessmark.Checking.Rules.Register;
using Witnessmark.Checking.Rules.Release;
using Witnessmark.Checking.Rules.Shims;
using Witnessmark.Checking.Rules.Stack;
using Witnessmark.Checking.Rules.Steps;
using Witnessmark.Checking.Rules.Tools;
using Witnessmark.Checking.Rules.Torque;
using Witnessmark.Checking.Rules.Translations;

namespace Witnessmark.Checking;

/// <summary>All rules, topic by topic. To add one: its .cs, its .md beside it, a line in the list of its topic, case files.</summary>
public static partial class RuleSet
{
    public static readonly ImmutableArray<Rule> All =
    [
        .. StepsTopic.Rules,
        .. MessagesTopic.Rules,
        .. ContractTopic.Rules,
        .. ProofTopic.Rules,
        .. CountsTopic.Rules,
        .. TorqueTopic.Rules,
        .. FastenersTopic.Rules,
        .. ToolsTopic.Rules,
        .. DevicesTopic.Rules,
        .. LiftingTopic.Rules,
        .. FluidsTopic.Rules,
        .. StackTopic.Rules,
        .. ShimsTopic.Rules,
        .. ReadingsTopic.Rules,
        .. PeopleTopic.Rules,
        .. ReleaseTopic.Rules,
        .. RegisterTopic.Rules,
        .. ChangesTopic.Rules,
        .. TranslationsTopic.Rules,
    ];
}
