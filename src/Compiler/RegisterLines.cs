using Witnessmark.Language.Model;
using Witnessmark.Records.Hashing;
using Witnessmark.Records.Issuing;
using Witnessmark.Records.Registering;

namespace Witnessmark.Compiler;

/// <summary>The lines that commands add to the register.</summary>
internal static class RegisterLines
{
    public static string Released(string text, Procedure procedure, ProcedureHash hash, string date, string by) => RegisterText.Add(
        text,
        "released",
        ("procedure", procedure.Id.Value),
        ("version", procedure.Version!.Value.Value),
        ("hash", hash.Hex),
        ("date", date),
        ("by", by),
        ("approvals", procedure.Approvals.Select(a => a.By?.Value).OfType<string>()));

    public static string Withdrawn(string text, string procedure, string version, string date, string by, string? why) =>
        RegisterText.Add(text, "withdrawn", ("procedure", procedure), ("version", version), ("date", date), ("by", by), ("why", why));

    public static string Issued(string text, IssueOrder order, Procedure procedure, CopyIdentity copy) => RegisterText.Add(
        text,
        "copies",
        ("copy", copy.Mark),
        ("procedure", procedure.Id.Value),
        ("part", order.Part),
        ("version", procedure.Version!.Value.Value),
        ("hash", ShortHash.Plain(copy.Hash.Hex)),
        ("words", copy.Words?.ToString()),
        ("unit", copy.Unit),
        ("serial", copy.Serial),
        ("place", copy.Place),
        ("issued", copy.IssuedAt),
        ("by", copy.IssuedBy),
        ("to", order.To));

    public static string Ended(string text, string mark, CopyEnd end, string date, string by, string? why) => RegisterText.Add(
        text, "ended", ("copy", mark), (end == CopyEnd.Spoiled ? "spoiled" : "returned", date), ("by", by), ("why", why));
}
