using Witnessmark.Language.Findings;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;
using Witnessmark.Reading.Faults;

namespace Witnessmark.Reading.Steps;

/// <summary>Findings about safety messages.</summary>
internal static class MessageFindings
{
    private const string Shape = "Write it like this, before its step: `> **WARNING: a moving piston can crush fingers** in the stack.`, then `> - ` how to avoid it and `> - hazard: ` its name.";

    public static Finding Alert(Location at, string word) => new(
        StepFaults.AlertMarker,
        at,
        $"`{Say.Short(at.Text)}` is the alert marker of a Git host.",
        "Hosts know other words than ANSI Z535, colour them differently and show no text behind the marker, so a DANGER would look like a remark.",
        $"Begin the message with the word itself: `> **{word}: nature and consequence**`.");

    public static Finding NoMessage(Location at) => new(
        StepFaults.MessageShape,
        at,
        "This quote is no safety message.",
        "A quote stands for a safety message and for nothing else; a message without its word is passed over by those it should stop.",
        Shape);

    public static Finding NoNature(Location at, string word) => new(
        StepFaults.MessageShape,
        at,
        $"This message says {word} and no more in bold.",
        "The bold line is what is read in a hurry: it must name what can happen.",
        Shape);

    public static Finding TwoInOne(Location at, string word) => new(
        StepFaults.MessageShape,
        at,
        $"A second message, {word}, stands in the same quote.",
        "Two messages in one box are read as one, and only the first word counts.",
        "Put an empty line without `>` between them.");

    public static Finding NotAFact(Location at, string key) => new(
        StepFaults.MessageShape,
        at,
        $"`{key}:` is not a fact of a message; only `hazard:` is.",
        "What stands behind an unknown word is neither checked nor counted, and nobody notices.",
        NearMiss.Of(key, ["hazard"]) is { } near ? $"Did you mean `{near}`?" : "Put the fact into the step, indented by four.");

    public static Finding HazardNotNamed(Location at) => new(
        StepFaults.MessageShape,
        at,
        "`hazard:` has nothing behind it.",
        "The right signal word follows from the hazard; without its name nobody can tell whether the word is right.",
        "Write the name that the data sheet has for it: `hazard: pinched-fingers`.");

    public static Finding TwoHazards(Location again, Location first) => new(
        StepFaults.FactTwice,
        again,
        "This message names two hazards.",
        "The right signal word follows from the hazard; with two of them there are two words.",
        "Write two messages, each with its own hazard.")
    {
        Further = [new FurtherPlace(first, "the first one")],
    };

    public static Finding InTheMiddle(Location at) => new(
        StepFaults.MessageInStep,
        at,
        "A message stands inside a step.",
        "The warning is read when the hand is already there.",
        "Move it before the step's number, at the edge, with an empty line around it.");

    public static Finding ForNothing(Location at) => new(
        StepFaults.MessageForNothing,
        at,
        "Nothing stands behind this message that it could warn of.",
        "A message belongs to the next step or section; here it would be printed for nobody.",
        "Move it before the step or the `## ` heading that it warns of.");
}
