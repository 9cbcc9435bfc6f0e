package understorey.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads the name of a folder or a file as this computer writes it. */
final class Folders implements ITypeConverter<Path> {

    @Override
    public Path convert(String name) {
        try {
            return Path.of(name);
        } catch (InvalidPathException foreign) {
            throw new TypeConversionException("'" + name + "' has letters that the language settings of this computer "
                    + "lack: set LC_ALL=C.UTF-8, or rename it");
        }
    }
}
