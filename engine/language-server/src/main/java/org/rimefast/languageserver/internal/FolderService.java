package org.rimefast.languageserver.internal;

import org.eclipse.lsp4j.DidChangeConfigurationParams;
import org.eclipse.lsp4j.DidChangeWatchedFilesParams;
import org.eclipse.lsp4j.services.WorkspaceService;

/** What clients say of the folder, of which the server needs nothing. */
public final class FolderService implements WorkspaceService {
  FolderService() {}

  @Override
  public void didChangeConfiguration(DidChangeConfigurationParams params) {
    // There is nothing to configure.
  }

  @Override
  public void didChangeWatchedFiles(DidChangeWatchedFilesParams params) {
    // Only open files are read.
  }
}
