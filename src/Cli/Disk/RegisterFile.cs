using System.Text;
using Witnessmark.Language.Text;
using Witnessmark.Records.Registering;

namespace Witnessmark.Cli.Disk;

/// <summary>The register of a workshop while one command reads and adds to it; nobody else on this machine does meanwhile.</summary>
internal sealed class RegisterFile : IDisposable
{
    private const string Name = "register.yaml";
    private const int Attempts = 50;
    private const int Pause = 100;
    private const string Attributes = ".gitattributes";

    private readonly WorkshopFolder _folder;
    private readonly FileStream _lock;

    private RegisterFile(WorkshopFolder folder, FileStream held) => (_folder, _lock) = (folder, held);

    private string FullPath => Path.Combine(_folder.FullPath, Name);

    private string Shown => Path.Combine(_folder.Shown, Name).Replace('\\', '/');

    public static RegisterFile Hold(WorkshopFolder folder)
    {
        for (var attempt = 0; ; attempt++)
            try
            {
                return new RegisterFile(folder, new FileStream(
                    Path.Combine(folder.FullPath, $".{Name}.held"), FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None, 1, FileOptions.DeleteOnClose));
            }
            catch (UnauthorizedAccessException)
            {
                throw new RefusedException($"Nothing was done: the register in {folder.Shown} cannot be written to.", "What is released or issued is put on record there. Ask whoever owns the folder for the right to write to it.");
            }
            catch (IOException) when (attempt < Attempts)
            {
                // whoever holds it is done in a moment
                Thread.Sleep(Pause);
            }
            catch (IOException)
            {
                throw new RefusedException($"Nothing was done: somebody else is writing to the register in {folder.Shown}.", "Try again in a moment.");
            }
    }

    /// <summary>Adds to the register, and does <paramref name="beside"/> with it: both or neither.</summary>
    public void Change(Func<string, string> add, string title, Action? beside = null)
    {
        var begun = !File.Exists(FullPath);
        var text = add(begun ? RegisterText.Begin(title) : Encoding.UTF8.GetString(WorkshopFolder.ReadOne(FullPath, Shown).Bytes.Span));
        if (Encoding.UTF8.GetByteCount(text) > RawFile.Limit)
            throw new RefusedException($"{Shown} is full: more than {RawFile.Limit / 1000} KB are not read.", "Name it register-2031.yaml or the like; it is still read, and a new register.yaml is begun.");
        var half = $"{FullPath}.{Environment.ProcessId}.half";
        try
        {
            File.WriteAllText(half, text, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false));
            beside?.Invoke();
            File.Move(half, FullPath, overwrite: true);
            if (begun)
                TellGit();
        }
        catch (Exception e) when (e is UnauthorizedAccessException or IOException)
        {
            throw new RefusedException($"Nothing was put on record: {Shown} cannot be written to.", "Ask whoever owns the folder for the right to write to it.");
        }
        finally
        {
            File.Delete(half);
        }
    }

    public void Dispose() => _lock.Dispose();

    // git keeps the lines of both when two have added, and has to be told so once
    private void TellGit()
    {
        var path = Path.Combine(_folder.FullPath, Attributes);
        if (!File.Exists(path))
            File.WriteAllText(path, RegisterText.GitAttribute + "\n");
    }
}
