package understorey.pages.html;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import understorey.pages.Briefs;
import understorey.pages.SitePagesTest;
import understorey.pages.words.Xml;
import understorey.plan.Subject;

class SubjectsPageTest {

    @Test
    void showsEverySubjectOfTheCatalogueWithHowSureItIs() {
        List<Subject> subjects = Briefs.demo().subjects();
        String page = SitePagesTest.page(Briefs.pages(List.of(), List.of()), "subjects.html");
        assertFalse(subjects.isEmpty());
        for (Subject subject : subjects) {
            assertTrue(page.contains("<h2 id=\"" + subject.key() + "\">"), subject.key());
            assertTrue(page.contains("stems " + Xml.escape(SubjectLine.worded(subject.marks().stems()))), subject.key());
        }
        assertEquals("second-hand", SubjectLine.worded("C2"));
        assertEquals("unsourced (thick derived)", SubjectLine.worded("M (thick D)"));
        // The table has ramsons at 0.088 and 0.277, 25 to 50 cm, April to June.
        String ramsons = page.substring(page.indexOf("id=\"ramsons\""), page.indexOf("</section>", page.indexOf("id=\"ramsons\"")));
        for (String figure : List.of("April to June", "25–50\u00a0cm", "0.09–0.28", "30, 100, 250")) {
            assertTrue(ramsons.contains(figure), figure + " in " + ramsons);
        }
    }
}
