package understorey.pages.html;

/**
 * What a page tells other sites about itself; only with the address of the site.
 *
 * @param address     of the page
 * @param description in a sentence or two
 * @param image       address of its picture
 */
public record Published(String address, String title, String description, String image) {
}
