package understorey.cli;

import java.util.List;
import java.util.Locale;
import picocli.CommandLine;
import picocli.CommandLine.Help;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/** The manual page: the help of every command, in the macros of man(7). */
final class ManPage {

    private final StringBuilder page = new StringBuilder();

    private ManPage() {
    }

    /** The page of a program. */
    static String of(CommandLine program) {
        ManPage man = new ManPage();
        CommandSpec spec = program.getCommandSpec();
        man.macro("TH", spec.name().toUpperCase(Locale.ROOT), "1", "", String.join(" ", spec.version()), "");
        man.macro("SH", "NAME");
        man.text(spec.name() + " - " + String.join(" ", spec.usageMessage().description()));
        man.macro("SH", "SYNOPSIS");
        man.lines(program.getHelp().synopsis(0));
        man.macro("SH", "OPTIONS");
        man.arguments(spec);
        man.macro("SH", "COMMANDS");
        for (CommandLine command : program.getSubcommands().values()) {
            if (!command.getCommandSpec().usageMessage().hidden()) {
                man.command(command);
            }
        }
        man.macro("SH", "NOTES");
        man.lines(String.join("\n", spec.usageMessage().footer()));
        return man.page.toString();
    }

    private void command(CommandLine command) {
        CommandSpec spec = command.getCommandSpec();
        macro("SS", spec.name());
        lines(command.getHelp().synopsis(0));
        macro("PP");
        text(String.join(" ", spec.usageMessage().description()));
        arguments(spec);
        macro("PP");
        lines(String.join("\n", spec.usageMessage().footer()));
    }

    private void arguments(CommandSpec spec) {
        spec.positionalParameters().forEach(argument -> argument(argument, argument.paramLabel()));
        for (OptionSpec option : spec.options()) {
            if (!option.hidden()) {
                argument(option, String.join(", ", option.names()) + (option.arity().max() == 0 ? "" : "=" + option.paramLabel()));
            }
        }
    }

    private void argument(ArgSpec argument, String names) {
        macro("TP");
        page.append("\\fB").append(escaped(names)).append("\\fR\n");
        text(String.join(" ", argument.description()));
    }

    private void macro(String name, String... arguments) {
        page.append('.').append(name);
        List.of(arguments).forEach(argument -> page.append(" \"").append(escaped(argument)).append('"'));
        page.append('\n');
    }

    /** Text that is filled into lines. */
    private void text(String text) {
        page.append(escaped(Help.Ansi.OFF.string(text).strip())).append('\n');
    }

    /** Lines that stay lines. */
    private void lines(String text) {
        macro("nf");
        text(text);
        macro("fi");
    }

    /** A backslash, a quote and a hyphen mean something; so does a dot or an apostrophe at the start of a line. */
    private static String escaped(String text) {
        return text.replace("\\", "\\e").replace("\"", "\\(dq").replace("-", "\\-").replaceAll("(?m)^(?=[.'])", "\\\\&");
    }
}
