package understorey.pages;

/**
 * One file of the site.
 *
 * @param path    below the folder that is published, with forward slashes
 * @param content the whole text
 */
public record Page(String path, String content) {
}
