package understorey.cli;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import picocli.AutoComplete;
import picocli.CommandLine;

/** Writes what a shell needs of the program beside its launcher: the manual page and the completion for bash. The build runs it. */
final class ShellFiles {

    private ShellFiles() {
    }

    /** Into a folder, which {@code man} and bash know as {@code share}. */
    public static void main(String[] arguments) throws IOException {
        PrintStream unused = System.err;
        CommandLine program = Understorey.program(new Terminal(unused, unused, false), unused, unused);
        Path share = Path.of(arguments[0]);
        write(share.resolve("man/man1/understorey.1"), ManPage.of(program));
        write(share.resolve("bash-completion/completions/understorey"), AutoComplete.bash(program.getCommandName(), program));
    }

    private static void write(Path file, String text) throws IOException {
        Files.createDirectories(file.getParent());
        Files.writeString(file, text, StandardCharsets.UTF_8);
    }
}
