/**
 * Writes pages into a folder without touching other files. {@link understorey.publish.Publisher Publisher} keeps a list
 * of the files that it wrote, rewrites those that differ, deletes only those that the list names, and refuses a folder
 * that it did not make. It locks the folder while it works, and every new file is on the disk before the first one
 * takes its place.
 */
@NullMarked
package understorey.publish;

import org.jspecify.annotations.NullMarked;
