package understorey;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

class TreeTest {

    @Test
    void namesTheFirstFileAndLineThatDiffer() {
        SortedMap<String, String> expected = new TreeMap<>(Map.of("a", "1\n2\n3\n", "b", "x"));
        assertEquals("", Tree.firstDifference(expected, new TreeMap<>(expected)));
        assertEquals("a:2\n  expected: 2\n  but is:   two",
                Tree.firstDifference(expected, new TreeMap<>(Map.of("a", "1\ntwo\n3\n", "b", "y"))));
        assertEquals("a:4\n  expected: \n  but is:   the end",
                Tree.firstDifference(expected, new TreeMap<>(Map.of("a", "1\n2\n3", "b", "x"))));
        assertEquals("b is expected but not there", Tree.firstDifference(expected, new TreeMap<>(Map.of("a", "1\n2\n3\n"))));
        assertEquals("c is there but not expected",
                Tree.firstDifference(new TreeMap<>(), new TreeMap<>(Map.of("c", ""))));
    }
}
