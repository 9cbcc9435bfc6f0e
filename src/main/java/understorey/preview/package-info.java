/**
 * Shows pages in a browser while their plans are written. {@link understorey.preview.Shelf Shelf} holds the pages in memory,
 * {@link understorey.preview.PreviewServer PreviewServer} answers browsers on this computer, and
 * {@link understorey.preview.FolderWatch FolderWatch} waits until a file is saved. Nothing is written to a disk. What a save
 * changes is for the caller to work out: pages come here as they are made.
 */
@NullMarked
package understorey.preview;

import org.jspecify.annotations.NullMarked;
