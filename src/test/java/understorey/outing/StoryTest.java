package understorey.outing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static understorey.Samples.picture;

import java.util.List;
import org.junit.jupiter.api.Test;
import understorey.Samples;
import understorey.kit.Intent;
import understorey.plan.Role;

class StoryTest {

    private static List<String> names(Story story) {
        return story.sequence().stream().map(intent -> intent.shot().name()).toList();
    }

    @Test
    void tellsFromTheFloorToOneFlowerAndExtrasLast() {
        Story story = Story.of(Intent.of(List.of(picture("x").role(Role.EXTRA).shot(),
                picture("d").role(Role.CLOSING).shot(), picture("c1").role(Role.DETAIL).shot(),
                picture("a").role(Role.OPENING).shot(), picture("c2").role(Role.DETAIL).shot(),
                picture("b").role(Role.APPROACH).shot())));
        assertEquals(List.of("a", "b", "c1", "c2", "d", "x"), names(story));
        assertTrue(story.gaps().isEmpty());
    }

    @Test
    void saysWhichRolesAreMissingButNeverMissesExtras() {
        Story story = Story.of(Intent.of(List.of(picture("a").shot(), picture("b").role(Role.CLOSING).shot())));
        assertEquals(List.of("approach", "detail"),
                story.gaps().stream().map(gap -> gap.figures().get("role").value()).toList());
        assertEquals(List.of("ROLE_MISSING", "ROLE_MISSING"), Samples.kinds(story.gaps()));
    }
}
