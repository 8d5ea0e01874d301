package org.sawfly.file;

import static org.sawfly.file.Bounds.between;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.sawfly.study.Setting;
import org.sawfly.study.StopWhen;

/**
 * A study: a glider and a launch, what all its scenarios have in common, and what is varied or compared.
 *
 * @param name      of the study
 * @param scenarios with what all have in common
 * @param varied    one or two quantities; empty when versions are compared
 * @param versions  settings of each version by name, today's not among them; empty when something is varied
 * @param stopWhen  where something gives out
 */
public record StudyFile(
        String name,
        ScenarioFile scenarios,
        List<Varied> varied,
        Map<String, List<Setting>> versions,
        StopWhen stopWhen) {
    /**
     * Reads a study and the files it names.
     *
     * @throws InputException with everything that is wrong in any of them
     */
    public static StudyFile open(Path path) {
        Reading reading = new Reading();
        Documents documents = new Documents(reading.problems());
        return of(documents.of(Documents.Kind.STUDY, path), documents, reading);
    }

    /** The same of a document that was read already. */
    static StudyFile of(Documents.Document document) {
        Reading reading = new Reading();
        return of(document, new Documents(reading.problems()), reading);
    }

    private static StudyFile of(Documents.Document document, Documents documents, Reading reading) {
        StudyFile study = null;
        if (document != null) {
            study = In.read(document.tree(), reading, in -> read(in, documents, document));
        }
        reading.problems().throwIfAny();
        return study;
    }

    private static StudyFile read(In in, Documents documents, Documents.Document document) {
        Keys keys = keys(in);
        Documents.Document glider =
                documents.referred(Documents.Kind.GLIDER, document.path(), keys.glider, in, "glider");
        if (keys.launch == null) {
            in.doubt("launch", "none is named: " + ScenarioFile.DEMO_THROWER + " throws", "launch: club.yaml");
        }
        Documents.Document launch = keys.launch == null
                ? null
                : documents.referred(Documents.Kind.LAUNCH, document.path(), keys.launch, in, "launch");
        List<Node.Keys> cuts = keys.cuts();
        if (!cuts.isEmpty() && cuts.stream().noneMatch(Options::saysJoint)) {
            in.reading().assume(Options.usualJoint(cuts.get(0)));
        }
        ScenarioFile file = ScenarioFile.open(documents, in.reading(), glider, launch);
        if (file == null) {
            return null;
        }
        ScenarioFile common = file.changed(keys.common);
        if (!in.reading().problems().any()) {
            tryOut(common, keys, in.reading().problems());
        }
        Map<String, List<Setting>> versions = new LinkedHashMap<>();
        keys.versions.forEach((name, tree) -> versions.put(name, Settings.of(tree)));
        return new StudyFile(keys.name, common, keys.varied, versions, keys.stopWhen);
    }

    /** All keys of a study. */
    private record Keys(
            String name,
            String glider,
            String launch,
            Change common,
            List<Varied> varied,
            Map<String, Node.Keys> versions,
            StopWhen stopWhen) {
        /** The options with which the boom is cut, wherever it is; empty when it is not. */
        List<Node.Keys> cuts() {
            List<Node.Keys> cuts = new ArrayList<>();
            boolean varies = varied.stream().anyMatch(one -> one.path().equals("boom.cut_mm"));
            if (varies || isCut(common)) {
                cuts.add(common.options());
            }
            versions.values().stream()
                    .map(Change::sorted)
                    .filter(Keys::isCut)
                    .forEach(version -> cuts.add(common.and(version).options()));
            return cuts;
        }

        private static boolean isCut(Change change) {
            return change.design().get("boom") instanceof Node.Keys boom && boom.get("cut_mm") != null;
        }
    }

    /** Asks for all keys; also run on nothing, to describe them. */
    static Keys keys(In in) {
        String name = in.text("study", "shorten the boom", "name of the study");
        GliderReader.format(in);
        String glider = in.text("glider", "plover.yaml", "file of the glider");
        String launch = in.optionalText("launch", "club.yaml", "file of the launch; the demo thrower when left out");
        List<Varied> varied = vary(in);
        Map<String, Node.Keys> versions =
                in.named("versions", "smaller tailplane", "versions compared with today", StudyFile::version);
        StopWhen stop = in.map("stop_when", "where something gives out", StudyFile::stopWhen);
        Node.Keys options = in.keysOf(Options.KEYS);
        Options.read(in.quiet());
        Node.Keys change = change(in, "values of the glider or launch file that all have changed");
        if (in.has("vary") && in.has("versions")) {
            in.problem("versions", "vary is given as well", "two studies");
        } else if (!in.has("vary") && !in.has("versions")) {
            in.needed("vary", "what is varied, or versions", "{boom.cut_mm: {from: 0, to: 80, every: 10}}");
        }
        return new Keys(name, glider, launch, Change.sorted(Edit.over(change, options)), varied, versions, stop);
    }

    private static Node.Keys version(String name, In in) {
        Node.Keys options = in.keysOf(Options.KEYS);
        Options.read(in.quiet());
        return Edit.over(change(in, "values of the glider or launch file that are other than today"), options);
    }

    private static Node.Keys change(In in, String words) {
        return Edit.spread(in.free("change", words), in.reading().problems());
    }

    private static List<Varied> vary(In in) {
        Node node = in.anything(
                "vary",
                Described.Kind.RANGES,
                "{boom.cut_mm: {from: 0, to: 80, every: 10}}",
                "one or two quantities and their values");
        List<Varied> varied = new ArrayList<>();
        if (node instanceof Node.Keys keys) {
            double rows = 1;
            for (Map.Entry<String, Node.Entry> one : keys.entries().entrySet()) {
                Varied read = Ranges.read(
                        one.getKey(), one.getValue().value(), in.reading().problems());
                if (read != null) {
                    varied.add(read);
                    rows *= read.values().size();
                }
            }
            if (keys.entries().size() > 2) {
                in.problem("vary", keys.entries().size() + " quantities; at most two can be varied together", "");
            }
            if (rows > Varied.MOST_VALUES) {
                in.problem(
                        "vary",
                        Bounds.show(rows) + " rows are too many; at most " + Varied.MOST_VALUES + " are accepted",
                        "larger steps");
            }
        } else if (node != null) {
            in.problem(
                    "vary",
                    "a key and its range are needed, not " + node.words(),
                    "{boom.cut_mm: {from: 0, to: 80, every: 10}}");
        }
        return varied;
    }

    private static StopWhen stopWhen(In in) {
        return new StopWhen(
                in.optional("margin_pct_below", between(-50, 50), 3, "static margin, percent of the mean chord") / 100,
                in.optional("tail_volume_h_below", between(0, 2), 0.3, "tail volume of the tailplane"),
                in.optional("tail_volume_v_below", between(0, 0.2), 0.02, "tail volume of the fin"),
                Math.toRadians(in.optional("first_swing_deg_above", between(0, 180), 25, "first swing of the nose")));
    }

    /** Reads the ends of every range and every version once, so that what is wrong is said before anything is flown. */
    private static void tryOut(ScenarioFile common, Keys keys, Problems problems) {
        for (Node.Keys version : keys.versions.values()) {
            common.changed(Change.sorted(version)).tryOut(List.of(), problems);
        }
        for (int end = 0; end < 2 && !keys.varied.isEmpty(); end++) {
            List<Setting> settings = new ArrayList<>();
            for (Varied one : keys.varied) {
                int index = end == 0 ? 0 : one.values().size() - 1;
                settings.add(Setting.of(one.path(), one.values().get(index)));
            }
            common.tryOut(settings, problems);
        }
    }
}
