using System.Globalization;
using Witnessmark.Language.Findings;
using Witnessmark.Language.Model;
using Witnessmark.Language.Wording;
using Witnessmark.Records.Hashing;

namespace Witnessmark.Compiler;

/// <summary>A line for the register, or why there is none.</summary>
/// <param name="Says">What has been done, in a sentence.</param>
/// <param name="Line">The register with the line in it.</param>
public sealed record RegisterChange(string Says, Func<string, string> Line, Refusal? Refusal)
{
    internal static RegisterChange Refused(string what, string todo) => new("", text => text, new Refusal(what, todo));
}

/// <summary>What is put on record besides copies: releases, withdrawals, the end of a copy.</summary>
internal static class Registering
{
    private const int LongestReason = 200;

    public static RegisterChange Release(Bench bench, string id, string by, DateTimeOffset now)
    {
        var library = bench.Library;
        if (library.Procedure(id) is not { } procedure)
            return Unknown(id, library.Procedures.Names, "procedure");
        var version = procedure.Version?.Value ?? "";
        var hash = ProcedureHash.Of(library, procedure);
        if (procedure.Status?.Value != ReleaseStatus.Released)
            return RegisterChange.Refused($"{id} does not say status: released.", "Have it approved, write the approvals and the status into it, and release it then.");
        // a number stands for one text for ever
        if (library.Register.Find(id, version) is { } before)
            return RegisterChange.Refused(
                $"{id} {version} was released on {before.Date} by {before.By}.",
                hash.IsBegunBy(before.Hash.Value) ? "It has not changed since: there is nothing to release." : $"It has changed since: give it another version. witnessmark compare tells what has changed.");
        // what it performs is on the same paper
        if (procedure.Uses.FirstOrDefault(u => library.Register.Find(u.Procedure.Value, u.Version.Value) is null) is { } open)
            return RegisterChange.Refused($"{id} performs {open.Procedure} {open.Version}, which is not released.", $"witnessmark release {open.Procedure} --by {by} first.");
        return Person(library, by) ?? new RegisterChange(
            $"Released {id} {version} ({hash.Short12}).", text => RegisterLines.Released(text, procedure, hash, Day(now), by), null);
    }

    public static RegisterChange Withdraw(Bench bench, string id, string version, string by, string? why, DateTimeOffset now)
    {
        var register = bench.Library.Register;
        if (register.Find(id, version) is not { } released)
            return Unknown($"{id} {version}", register.Released.Select(r => $"{r.Procedure} {r.Version}"), "released version");
        if (register.IsWithdrawn(released))
            return RegisterChange.Refused($"{id} {version} is withdrawn already.", "There is nothing to do.");
        var isOut = register.Out.Where(c => c.Procedure.Value == id && c.Version.Value == version).Select(c => c.Mark.Value).ToList();
        return Person(bench.Library, by) ?? Words(why) ?? new RegisterChange(
            $"Withdrawn {id} {version}.{(isOut.Count == 0 ? "" : $" Call back {Say.And(isOut)}.")}", text => RegisterLines.Withdrawn(text, id, version, Day(now), by, why), null);
    }

    public static RegisterChange End(Bench bench, string mark, CopyEnd end, string by, string? why, DateTimeOffset now)
    {
        var register = bench.Library.Register;
        if (register.Copy(mark) is not { } copy)
            return Unknown(mark, register.Out.Select(c => c.Mark.Value), "copy");
        if (register.End(copy) is { } before)
            return RegisterChange.Refused($"Copy {copy.Mark} was {Word(before.End)} on {before.Date}.", "There is nothing to do.");
        return Person(bench.Library, by) ?? Words(why) ?? new RegisterChange(
            $"Copy {copy.Mark} of {copy.Procedure} {copy.Version} is {Word(end)}.", text => RegisterLines.Ended(text, copy.Mark.Value, end, Day(now), by, why), null);
    }

    public static string Word(CopyEnd end) => end == CopyEnd.Returned ? "returned" : "spoiled";

    private static RegisterChange? Words(string? why) => why is { Length: > LongestReason }
        ? RegisterChange.Refused($"--why is {why.Length} characters long.", $"Say it in up to {LongestReason} characters: it stands in one line of the register.")
        : null;

    private static RegisterChange? Person(Library library, string by) => library.Workshop.People.Find(by) is null
        ? RegisterChange.Refused($"The workshop does not know {by}.", $"Initials are under people: in workshop.yaml: {string.Join(", ", library.Workshop.People.Names)}.")
        : null;

    private static RegisterChange Unknown(string written, IEnumerable<string> known, string what) =>
        RegisterChange.Refused($"There is no {what} {written}.", NearMiss.Of(written, known) is { } near ? $"Did you mean {near}?" : known.Any() ? $"There are {Say.And(known.Distinct().Take(10).ToList())}." : "There is none yet.");

    private static string Day(DateTimeOffset now) => now.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
