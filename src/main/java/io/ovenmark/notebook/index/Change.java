package io.ovenmark.notebook.index;

import io.ovenmark.notebook.store.BlobId;
import java.util.Optional;

/**
 * What a commit did to one file.
 *
 * @param path the file
 * @param blob its content afterwards, empty if deleted
 * @param renamedFrom where it was before, if it was renamed
 */
record Change(String path, Optional<BlobId> blob, Optional<String> renamedFrom) {}
