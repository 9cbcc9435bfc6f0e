package understorey.yaml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import understorey.yaml.finding.Finding;
import understorey.yaml.finding.Findings;
import understorey.yaml.finding.Source;
import understorey.yaml.tree.TreeReader;
import understorey.yaml.value.Dimension;

class FieldsTest {

    private final List<String> said = new ArrayList<>();
    private Findings findings;

    private Fields fields(String text) {
        findings = new Findings(new Source("a.yaml", text));
        return new Fields(TreeReader.read(findings), "this lens", findings);
    }

    private List<String> said() {
        for (Finding finding : findings.all()) {
            said.add(finding.line() + ":" + finding.column() + " " + finding.text());
        }
        return said;
    }

    @Test
    void reportsEachKeyThatNobodyAskedFor() {
        Fields f = fields("name: A\nweigth: 3 g\nname2: B\n");
        f.text("name");
        f.quantity("weight", Dimension.MASS, 1, 10);
        f.done();
        assertEquals(List.of("2:1 unknown key 'weigth' in this lens", "3:1 unknown key 'name2' in this lens"), said());
    }

    @Test
    void doesNotMissAKeyThatIsOnlyMisspelt() {
        Fields f = fields("closset: 1 m\n").require("closest", "focal");
        f.done();
        assertEquals(List.of("1:1 unknown key 'closset' in this lens", "1:1 'focal' is missing in this lens"), said());
    }

    @Test
    void reportsAnEmptyValueAtItsKeyAndNotAsMissing() {
        Fields f = fields("a: 1\nname:\n").require("name");
        f.text("a");
        assertNull(f.text("name"));
        f.done();
        assertEquals(List.of("2:1 'name' has no value"), said());
    }

    @Test
    void saysAThingOnceHoweverOftenAKeyIsAskedFor() {
        Fields f = fields("name:\n");
        f.text("name");
        f.text("name");
        assertEquals(1, said().size());
        assertEquals(1, findings.errors());
    }

    @Test
    void leavesOutTheEntriesThatAreNoBlocks() {
        Fields f = fields("lenses: [{name: A}, B]\n");
        assertEquals(1, f.blocks("lenses", "this lens").size());
        assertEquals(List.of("1:21 each entry of 'lenses' must be keys and values, not the text \"B\""), said());
    }

    @Test
    void answersNothingForWhatIsAbsent() {
        Fields f = fields("name: A\n");
        assertNull(f.in("sharp", block -> block));
        assertTrue(f.items("light").isEmpty());
        assertTrue(f.texts("cautions").isEmpty());
        assertNull(f.clock("start"));
        f.text("name");
        f.done();
        assertEquals(List.of(), said());
    }
}
