package headertank.app.duty;

import headertank.app.stored.Sha256;
import headertank.calc.duty.Duty;
import headertank.calc.duty.DutySource;
import headertank.calc.duty.ScheduleCsv;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The duties that come with the service as files. */
final class DutyFiles implements DutySource {

    private static final List<String> NAMES = List.of("street", "track", "drift");

    private final List<Duty> duties;
    private final String version;

    DutyFiles() {
        StringBuilder all = new StringBuilder();
        duties = NAMES.stream()
                .map(name -> {
                    String text = read(name);
                    all.append(text);
                    return ScheduleCsv.parse(text);
                })
                .toList();
        version = Sha256.brief(all.toString());
    }

    private static String read(String name) {
        try (InputStream in = DutyFiles.class.getResourceAsStream("/duties/" + name + ".csv")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public String id() {
        return "duty-files";
    }

    /** Follows from the text of the files. */
    @Override
    public String version() {
        return version;
    }

    @Override
    public String source() {
        return "modelling choice; each file states its own";
    }

    @Override
    public List<Duty> duties() {
        return duties;
    }
}
