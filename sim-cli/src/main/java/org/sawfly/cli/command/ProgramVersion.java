package org.sawfly.cli.command;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;
import picocli.CommandLine.IVersionProvider;

/** The version of this build. */
final class ProgramVersion implements IVersionProvider {
    /** As in "0.1.0". */
    static final String NUMBER = number();

    @Override
    public String[] getVersion() {
        return new String[] {"sawfly " + NUMBER};
    }

    private static String number() {
        try (InputStream in = ProgramVersion.class.getResourceAsStream("version.properties")) {
            Properties properties = new Properties();
            properties.load(in);
            return properties.getProperty("version");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
