package understorey.cli;

import picocli.CommandLine.IVersionProvider;

/** The version that the jar's manifest gives. */
final class Version implements IVersionProvider {

    @Override
    public String[] getVersion() {
        String version = Version.class.getPackage().getImplementationVersion();
        return new String[] {"understorey " + (version == null ? "(from its classes)" : version)};
    }
}
