package understorey.yaml;

import understorey.schema.PlanFiles;

/** Fixes for required keys that are missing. */
final class Examples {

    private Examples() {
    }

    /** An example where one helps. */
    static String of(String key, String what) {
        if (key.equals("name")) {
            return "give " + what + " a name";
        }
        String value = PlanFiles.builtIn().example(what.replaceFirst("^this ", ""), key);
        return value == null ? "add '" + key + ":' with its value" : "for example " + key + ": " + value;
    }
}
