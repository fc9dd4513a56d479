package org.rimefast.languageserver.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.function.Function;
import org.eclipse.lsp4j.CodeAction;
import org.eclipse.lsp4j.CodeActionParams;
import org.eclipse.lsp4j.Command;
import org.eclipse.lsp4j.CompletionItem;
import org.eclipse.lsp4j.CompletionList;
import org.eclipse.lsp4j.CompletionParams;
import org.eclipse.lsp4j.DefinitionParams;
import org.eclipse.lsp4j.DidChangeTextDocumentParams;
import org.eclipse.lsp4j.DidCloseTextDocumentParams;
import org.eclipse.lsp4j.DidOpenTextDocumentParams;
import org.eclipse.lsp4j.DidSaveTextDocumentParams;
import org.eclipse.lsp4j.DocumentFormattingParams;
import org.eclipse.lsp4j.DocumentSymbol;
import org.eclipse.lsp4j.DocumentSymbolParams;
import org.eclipse.lsp4j.Hover;
import org.eclipse.lsp4j.HoverParams;
import org.eclipse.lsp4j.Location;
import org.eclipse.lsp4j.LocationLink;
import org.eclipse.lsp4j.MarkupContent;
import org.eclipse.lsp4j.MarkupKind;
import org.eclipse.lsp4j.PrepareRenameDefaultBehavior;
import org.eclipse.lsp4j.PrepareRenameParams;
import org.eclipse.lsp4j.PrepareRenameResult;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.ReferenceParams;
import org.eclipse.lsp4j.RenameParams;
import org.eclipse.lsp4j.SymbolInformation;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.TextDocumentItem;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.VersionedTextDocumentIdentifier;
import org.eclipse.lsp4j.WorkspaceEdit;
import org.eclipse.lsp4j.jsonrpc.CompletableFutures;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.eclipse.lsp4j.jsonrpc.messages.Either3;
import org.eclipse.lsp4j.services.TextDocumentService;
import org.jspecify.annotations.Nullable;
import org.rimefast.lang.vocabulary.Vocabulary;

/** The requests about open files. */
public final class TextService implements TextDocumentService {
  private final Vocabulary vocabulary;
  private final Documents documents;
  private final DiagnosticsPublisher publisher;
  private final Faults faults;
  private final ExecutorService workers;
  private final Lifecycle lifecycle;
  private final Completions completions;

  TextService(
      Vocabulary vocabulary,
      Documents documents,
      DiagnosticsPublisher publisher,
      Faults faults,
      ExecutorService workers,
      Lifecycle lifecycle) {
    this.vocabulary = vocabulary;
    this.documents = documents;
    this.publisher = publisher;
    this.faults = faults;
    this.workers = workers;
    this.lifecycle = lifecycle;
    this.completions = new Completions(vocabulary);
  }

  @Override
  public void didOpen(DidOpenTextDocumentParams params) {
    TextDocumentItem item = params.getTextDocument();
    documents.open(item.getUri(), item.getVersion(), item.getText());
    publisher.later(item.getUri(), 0);
  }

  @Override
  public void didChange(DidChangeTextDocumentParams params) {
    VersionedTextDocumentIdentifier id = params.getTextDocument();
    faults.guarded(
        "didChange",
        false,
        () -> {
          documents.change(id.getUri(), id.getVersion(), params.getContentChanges());
          return true;
        });
    publisher.later(id.getUri(), DiagnosticsPublisher.PAUSE);
  }

  @Override
  public void didClose(DidCloseTextDocumentParams params) {
    documents.close(params.getTextDocument().getUri());
    publisher.forget(params.getTextDocument().getUri());
  }

  @Override
  public void didSave(DidSaveTextDocumentParams params) {
    // What is open is known as it stands, saved or not.
  }

  @Override
  public CompletableFuture<Either<List<CompletionItem>, CompletionList>> completion(
      CompletionParams params) {
    return answer(
        "completion",
        params.getTextDocument(),
        Either.forRight(new CompletionList(false, List.of())),
        document ->
            Either.forRight(
                new CompletionList(false, completions.at(document, params.getPosition()))));
  }

  @Override
  @SuppressWarnings("NullAway") // the protocol says null for nothing
  public CompletableFuture<Hover> hover(HoverParams params) {
    return answer(
        "hover",
        params.getTextDocument(),
        null,
        document ->
            document
                .analysis()
                .mentionAt(document.lines().offset(params.getPosition()))
                .map(
                    mention ->
                        new Hover(
                            new MarkupContent(
                                MarkupKind.MARKDOWN,
                                mention
                                    .meaning()
                                    .accept(new MeaningText(vocabulary, document.analysis()))
                                    .strip()),
                            document.range(mention.span())))
                .orElse(null));
  }

  @Override
  public CompletableFuture<Either<List<? extends Location>, List<? extends LocationLink>>>
      definition(DefinitionParams params) {
    return answer(
        "definition",
        params.getTextDocument(),
        Either.forLeft(List.of()),
        document ->
            Either.forLeft(
                Names.at(document, params.getPosition())
                    .map(mention -> Names.definition(document, mention))
                    .orElse(List.of())));
  }

  @Override
  public CompletableFuture<List<? extends Location>> references(ReferenceParams params) {
    boolean declaration = params.getContext().isIncludeDeclaration();
    return answer(
        "references",
        params.getTextDocument(),
        List.of(),
        document ->
            Names.at(document, params.getPosition())
                .map(mention -> Names.references(document, mention, declaration))
                .orElse(List.of()));
  }

  @Override
  @SuppressWarnings("NullAway") // the protocol says null for nothing
  public CompletableFuture<Either3<Range, PrepareRenameResult, PrepareRenameDefaultBehavior>>
      prepareRename(PrepareRenameParams params) {
    return answer(
        "prepareRename",
        params.getTextDocument(),
        null,
        document ->
            Names.at(document, params.getPosition())
                .<Either3<Range, PrepareRenameResult, PrepareRenameDefaultBehavior>>map(
                    mention -> Either3.forFirst(document.range(mention.span())))
                .orElse(null));
  }

  @Override
  @SuppressWarnings("NullAway") // the protocol says null for nothing
  public CompletableFuture<WorkspaceEdit> rename(RenameParams params) {
    return answer(
        "rename",
        params.getTextDocument(),
        null,
        document ->
            Names.at(document, params.getPosition())
                .map(mention -> new Renaming(document, mention).to(params.getNewName()))
                .orElse(null));
  }

  @Override
  public CompletableFuture<List<? extends TextEdit>> formatting(DocumentFormattingParams params) {
    return answer("formatting", params.getTextDocument(), List.of(), Layout::edits);
  }

  @Override
  public CompletableFuture<List<Either<Command, CodeAction>>> codeAction(CodeActionParams params) {
    return answer(
        "codeAction",
        params.getTextDocument(),
        List.of(),
        document -> {
          List<Either<Command, CodeAction>> actions = new ArrayList<>();
          QuickFixes.at(document, params).forEach(action -> actions.add(Either.forRight(action)));
          return actions;
        });
  }

  @Override
  public CompletableFuture<List<Either<SymbolInformation, DocumentSymbol>>> documentSymbol(
      DocumentSymbolParams params) {
    return answer(
        "documentSymbol",
        params.getTextDocument(),
        List.of(),
        document -> {
          List<Either<SymbolInformation, DocumentSymbol>> symbols = new ArrayList<>();
          Symbols.of(document).forEach(symbol -> symbols.add(Either.forRight(symbol)));
          return symbols;
        });
  }

  /** Answers for the file as it stands now, whatever is typed meanwhile. */
  private <T extends @Nullable Object> CompletableFuture<T> answer(
      String what, TextDocumentIdentifier id, T otherwise, Function<Document, T> question) {
    Document document = documents.find(id.getUri()).orElse(null);
    return CompletableFutures.computeAsync(
        workers,
        cancel -> {
          lifecycle.requireRunning();
          cancel.checkCanceled();
          return document == null
              ? otherwise
              : faults.guarded(what, otherwise, () -> question.apply(document));
        });
  }
}
