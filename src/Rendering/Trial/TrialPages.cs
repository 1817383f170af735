using System.Collections.Immutable;
using Scriban.Runtime;
using Witnessmark.Language.Model;
using Witnessmark.Language.Text;
using Witnessmark.Language.Wording;
using Witnessmark.Rendering.Checklist;
using Witnessmark.Rendering.Html;

namespace Witnessmark.Rendering.Trial;

/// <summary>The pages around a trial sheet, in its language.</summary>
internal static class TrialPages
{
    private const string FormName = "form";
    private const string KeyName = "key";
    private const int FindsMore = 2;

    public static OutputFile Form(TriedSheet tried)
    {
        var words = tried.Words;
        return Page(tried, tried.PagePath(FormName), $"{words.TrialForm}, {tried.Piece.Says}", "trial-form.html", new ScriptObject
        {
            ["sheet"] = $"{Say.Capital(words.Sheet)}: {PageRules.Identity(tried.Piece.Context)}. {words.OneFormEach}",
            ["person"] = words.PersonNumber, ["years"] = words.YearsInTrade, ["date"] = words.Date,
            ["starts"] = words.StartsAt, ["ends"] = words.EndsAt, ["glasses"] = words.Glasses,
            ["conditions"] = new ScriptArray(words.TrialConditions),
            ["heads"] = new ScriptArray(new[] { words.Find, words.StepOrSheet, words.WhatIsWrong, words.Minute, words.WasPlanted }),
            ["finds"] = new ScriptArray(Enumerable.Range(1, tried.Errors.Length + FindsMore)),
            ["found"] = words.FoundOfPlanted, ["called_wrong"] = words.CalledWrong, ["hard"] = words.HardToRead,
        });
    }

    public static OutputFile Key(TriedSheet tried)
    {
        var words = tried.Words;
        return Page(tried, tried.PagePath(KeyName), $"{words.TrialKey}, {tried.Piece.Says}", "trial-key.html", new ScriptObject
        {
            ["away"] = words.KeepKeyAway,
            ["heads"] = new ScriptArray(new[] { words.Ordinal, words.ErrorsPlanted, words.AtStepNumber, words.TrueSheet, words.OnTrialSheet }),
            ["errors"] = new ScriptArray(tried.Errors.Select((e, i) => new ScriptObject
            {
                ["number"] = i + 1, ["kind"] = words.Planted(e.Kind), ["where"] = e.Where, ["was"] = e.Was,
                ["becomes"] = e.Becomes.Length == 0 ? words.NothingThere : e.Becomes,
            })),
        });
    }

    /// <param name="sheets">All that are tried in one language.</param>
    /// <param name="others">One in each other language, for the way there.</param>
    public static OutputFile Instructions(ImmutableArray<TriedSheet> sheets, ImmutableArray<Block> written, ImmutableArray<TriedSheet> others)
    {
        var words = sheets[0].Words;
        var identity = sheets[0].Piece.Identity;
        return Page(sheets[0], sheets[0].IndexPath, $"{words.TrialRun}, {identity.Procedure} {identity.Version}", "trial-instructions.html", new ScriptObject
        {
            ["pieces"] = new ScriptArray(sheets.Select(Piece)),
            ["others"] = new ScriptArray(others.Select(o => new ScriptObject { ["href"] = Href(o.IndexPath), ["text"] = words.TrialInOther, ["language"] = o.Words.Language })),
            ["body"] = ProseHtml.Blocks(written),
        });
    }

    private static ScriptObject Piece(TriedSheet tried)
    {
        var words = tried.Words;
        return new ScriptObject
        {
            ["title"] = tried.Piece.PartSaid ?? words.TrialHere,
            ["links"] = new ScriptArray(Enum.GetValues<Paper>().Select(p => Link(tried.SheetPath(p), $"{words.TrialSheetOn} {p}"))
                .Append(Link(tried.PagePath(FormName), words.TrialForm)).Append(Link(tried.PagePath(KeyName), words.TrialKey))),
            ["count"] = $"{words.HowManyPlanted}: {tried.Errors.Length}",
        };
    }

    private static ScriptObject Link(string path, string text) => new() { ["href"] = Href(path), ["text"] = text };

    private static string Href(string path) => path[TrialKit.Folder.Length..];

    private static OutputFile Page(TriedSheet tried, string path, string title, string template, ScriptObject content) =>
        OutputFile.Of(path, Templates.Render("trial.html", new ScriptObject
        {
            ["print"] = PrintHead.Of(tried.Words.Language, title, Resources.Text("site/trial.css")),
            ["title"] = title,
            ["banner"] = tried.Words.Trial,
            ["identity"] = PageRules.Identity(tried.Piece.Context),
            ["notice"] = tried.Words.StandingNotice,
            ["content"] = new RawHtml(Templates.Render(template, content)),
        }));
}
