using System.Collections.Concurrent;
using Scriban;
using Scriban.Parsing;
using Scriban.Runtime;
using Scriban.Syntax;

namespace Witnessmark.Rendering.Html;

/// <summary>
/// The one place where a template is rendered. Whatever a template writes is escaped, except <see cref="RawHtml"/>; a name
/// that the model does not have is an error; templates know no clock and no functions but <c>part</c>, which renders
/// another template: <c>{{ part "sheet-step.html" step }}</c>.
/// </summary>
public static class Templates
{
    private static readonly ConcurrentDictionary<string, Template> Parsed = new(StringComparer.Ordinal);

    /// <param name="name">Below <c>templates/</c>: <c>sheet.html</c>.</param>
    /// <exception cref="InvalidOperationException">The template does not parse: a fault of ours.</exception>
    /// <exception cref="ScriptRuntimeException">The template names what the model does not have: a fault of ours.</exception>
    public static string Render(string name, ScriptObject model) => RenderText(Parsed.GetOrAdd(name, Parse), model);

    internal static string RenderText(Template template, ScriptObject model) => new EscapingContext().Render(template, model);

    internal static Template ParseText(string text, string name)
    {
        var template = Template.Parse(text, name);
        return template.HasErrors ? throw new InvalidOperationException($"template {name}: {template.Messages}") : template;
    }

    private static Template Parse(string name) => ParseText(Resources.Text("templates/" + name), name);

    private sealed class EscapingContext : TemplateContext
    {
        private EscapingContext? _inner;

        /// <summary>The parts inside: they see their own model only. One context a depth, since making one costs more than rendering a box.</summary>
        public EscapingContext Inner => _inner ??= new EscapingContext();

        public string Render(Template template, ScriptObject model)
        {
            PushGlobal(model);
            var text = template.Render(this);
            PopGlobal();
            return text;
        }

        public EscapingContext()
            : base(new ScriptObject { ["part"] = new PartFunction() })
        {
            StrictVariables = true;
            EnableRelaxedMemberAccess = false;
            EnableRelaxedTargetAccess = false;
            AutoIndent = false;
            LoopLimit = 0;
            LimitToString = 0;
        }

        public override TemplateContext Write(SourceSpan span, object? textAsObject) => textAsObject switch
        {
            null => this,
            RawHtml html => Write(html.Markup),
            _ => Write(Escape.Text(ObjectToString(textAsObject) ?? "")),
        };

        // what is empty is not there: templates ask only "if"
        public override bool ToBool(SourceSpan span, object? value) => value switch
        {
            string text => text.Length > 0,
            ScriptArray list => list.Count > 0,
            _ => base.ToBool(span, value),
        };
    }

    private sealed class PartFunction : IScriptCustomFunction
    {
        public int RequiredParameterCount => 2;

        public int ParameterCount => 2;

        public ScriptVarParamKind VarParamKind => ScriptVarParamKind.None;

        public Type ReturnType => typeof(RawHtml);

        public ScriptParameterInfo GetParameterInfo(int index) =>
            index == 0 ? new ScriptParameterInfo(typeof(string), "name") : new ScriptParameterInfo(typeof(ScriptObject), "model");

        public object? Invoke(TemplateContext context, ScriptNode? callerContext, ScriptArray arguments, ScriptBlockStatement? blockStatement) =>
            new RawHtml(((EscapingContext)context).Inner.Render(Parsed.GetOrAdd((string)arguments[0]!, Parse), (ScriptObject)arguments[1]!));

        public ValueTask<object?> InvokeAsync(TemplateContext context, ScriptNode? callerContext, ScriptArray arguments, ScriptBlockStatement? blockStatement) =>
            ValueTask.FromResult(Invoke(context, callerContext, arguments, blockStatement));
    }
}
