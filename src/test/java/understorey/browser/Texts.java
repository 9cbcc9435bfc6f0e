package understorey.browser;

import com.microsoft.playwright.Page;
import java.util.ArrayList;
import java.util.List;

/** What a reader sees of the text of a page. */
final class Texts {

    /**
     * Every run of text that takes up room, with its size in px. The text of a drawing is scaled with the drawing.
     * Text that only a screen reader meets is clipped to a pixel and does not count.
     */
    private static final String SIZES = """
            () => {
              const found = [];
              const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
              for (let node = walker.nextNode(); node; node = walker.nextNode()) {
                const element = node.parentElement;
                const range = document.createRange();
                range.selectNodeContents(node);
                const box = range.getBoundingClientRect();
                const own = element.getBoundingClientRect();
                if (!node.textContent.trim() || box.width < 1 || box.height < 1
                    || (!element.closest('svg') && (own.width <= 1.5 || own.height <= 1.5))
                    || getComputedStyle(element).visibility !== 'visible') continue;
                let size = parseFloat(getComputedStyle(element).fontSize);
                if (element.closest('svg')) {
                  const m = element.getScreenCTM();
                  size *= Math.hypot(m.a, m.b);
                }
                found.push(size.toFixed(2) + ' px: ' + node.textContent.trim().slice(0, 40)
                    + ' (' + element.tagName + (element.closest('svg') ? ' in a drawing' : '') + ')');
              }
              return found;
            }""";

    /**
     * Pairs of labels of one drawing whose letters meet. A line box is taller than its letters, so a fifth of its
     * height is taken off above and below.
     */
    private static final String MEETING = """
            () => {
              const found = [];
              for (const drawing of document.querySelectorAll('svg')) {
                const boxes = [...drawing.querySelectorAll('text')].filter(t => t.textContent.trim()).map(t => {
                  const b = t.getBoundingClientRect();
                  const upright = b.width < b.height && t.textContent.trim().length > 2;
                  const x = upright ? b.width / 5 : 0.5, y = upright ? 0.5 : b.height / 5;
                  return {text: t.textContent.trim(), l: b.left + x, r: b.right - x, t: b.top + y, b: b.bottom - y,
                          shown: b.width > 0 && getComputedStyle(t).visibility === 'visible'};
                }).filter(b => b.shown);
                boxes.forEach((a, i) => boxes.slice(i + 1).forEach(b => {
                  if (a.l < b.r && b.l < a.r && a.t < b.b && b.t < a.b) {
                    found.push(`'${a.text}' and '${b.text}'`);
                  }
                }));
              }
              return found;
            }""";

    /** Labels that reach out of their drawing, where they are cut off. */
    private static final String CUT = """
            () => {
              const found = [];
              for (const drawing of document.querySelectorAll('svg')) {
                const frame = drawing.getBoundingClientRect();
                for (const t of drawing.querySelectorAll('text')) {
                  const b = t.getBoundingClientRect();
                  if (b.width > 0 && (b.left < frame.left - 1 || b.right > frame.right + 1
                      || b.top < frame.top - 1 || b.bottom > frame.bottom + 1)) {
                    found.push(t.textContent.trim());
                  }
                }
              }
              return found;
            }""";

    private Texts() {
    }

    /** The texts smaller than a size in px, each with its own. */
    static List<String> below(double px, Page page) {
        return strings(page.evaluate(SIZES)).stream()
                .filter(text -> Double.parseDouble(text.substring(0, text.indexOf(' '))) < px - 0.01).distinct().toList();
    }

    /** How many runs of text there are. */
    static int count(Page page) {
        return strings(page.evaluate(SIZES)).size();
    }

    static List<String> meeting(Page page) {
        return strings(page.evaluate(MEETING));
    }

    static List<String> cutOff(Page page) {
        return strings(page.evaluate(CUT));
    }

    private static List<String> strings(Object list) {
        List<String> strings = new ArrayList<>();
        for (Object item : (List<?>) list) {
            strings.add(item.toString());
        }
        return strings;
    }
}
