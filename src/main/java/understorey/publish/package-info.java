/**
 * Writes pages into a folder so that nothing of anyone else's is touched: {@link
 * understorey.publish.Publisher Publisher} keeps a list of the files that it wrote, rewrites what differs,
 * deletes only what that list names, and refuses a folder that it did not make. It holds the folder while it
 * works, and has every new file on the disk before the first one takes its place.
 */
package understorey.publish;
