package org.rimefast.languageserver.internal;

import com.google.gson.JsonPrimitive;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import org.eclipse.lsp4j.DidChangeConfigurationParams;
import org.eclipse.lsp4j.DidChangeWatchedFilesParams;
import org.eclipse.lsp4j.ExecuteCommandParams;
import org.eclipse.lsp4j.services.WorkspaceService;

/** What clients say of the folder, and the commands that they have run. */
public final class FolderService implements WorkspaceService {
  private final TextService texts;
  private final DiagnosticsPublisher publisher;

  FolderService(TextService texts, DiagnosticsPublisher publisher) {
    this.texts = texts;
    this.publisher = publisher;
  }

  @Override
  public void didChangeConfiguration(DidChangeConfigurationParams params) {
    // There is nothing to configure.
  }

  @Override
  public void didChangeWatchedFiles(DidChangeWatchedFilesParams params) {
    publisher.later(DiagnosticsPublisher.PAUSE);
  }

  @Override
  public CompletableFuture<Object> executeCommand(ExecuteCommandParams params) {
    List<String> words = params.getArguments().stream().map(FolderService::text).toList();
    if (!params.getCommand().equals(CaseRuns.COMMAND) || words.size() != 3) {
      return CompletableFuture.completedFuture(null);
    }
    return texts.runCases(words.get(0), words.get(1), words.get(2)).thenApply(said -> said);
  }

  private static String text(Object argument) {
    return argument instanceof JsonPrimitive json ? json.getAsString() : argument.toString();
  }
}
