package org.rimefast.languageserver.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.function.Function;
import org.eclipse.lsp4j.CodeAction;
import org.eclipse.lsp4j.CodeActionParams;
import org.eclipse.lsp4j.CodeLens;
import org.eclipse.lsp4j.CodeLensParams;
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
import org.eclipse.lsp4j.MessageParams;
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
  private final Analyses analyses;
  private final CaseRuns runs;
  private final DiagnosticsPublisher publisher;
  private final Faults faults;
  private final ExecutorService workers;
  private final Lifecycle lifecycle;
  private final Completions completions;

  TextService(
      Vocabulary vocabulary,
      Documents documents,
      Analyses analyses,
      CaseRuns runs,
      DiagnosticsPublisher publisher,
      Faults faults,
      ExecutorService workers,
      Lifecycle lifecycle) {
    this.vocabulary = vocabulary;
    this.documents = documents;
    this.analyses = analyses;
    this.runs = runs;
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
    runs.forget();
    publisher.later(0);
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
    runs.forget();
    publisher.later(DiagnosticsPublisher.PAUSE);
  }

  @Override
  public void didClose(DidCloseTextDocumentParams params) {
    documents.close(params.getTextDocument().getUri());
    runs.forget();
    publisher.later(0);
  }

  @Override
  public void didSave(DidSaveTextDocumentParams params) {
    // What is open is known as it stands, saved or not; other files may have changed meanwhile.
    publisher.later(DiagnosticsPublisher.PAUSE);
  }

  @Override
  public CompletableFuture<Either<List<CompletionItem>, CompletionList>> completion(
      CompletionParams params) {
    return answer(
        "completion",
        params.getTextDocument(),
        Either.forRight(new CompletionList(false, List.of())),
        view ->
            Either.forRight(new CompletionList(false, completions.at(view, params.getPosition()))));
  }

  @Override
  @SuppressWarnings("NullAway") // the protocol says null for nothing
  public CompletableFuture<Hover> hover(HoverParams params) {
    return answer(
        "hover",
        params.getTextDocument(),
        null,
        view ->
            view.analysis()
                .mentionAt(view.offset(params.getPosition()))
                .map(
                    mention ->
                        new Hover(
                            new MarkupContent(
                                MarkupKind.MARKDOWN,
                                mention
                                    .meaning()
                                    .accept(new MeaningText(vocabulary, view.analysis()))
                                    .strip()),
                            view.range(mention.span())))
                .orElse(null));
  }

  @Override
  public CompletableFuture<Either<List<? extends Location>, List<? extends LocationLink>>>
      definition(DefinitionParams params) {
    return answer(
        "definition",
        params.getTextDocument(),
        Either.forLeft(List.of()),
        view ->
            Either.forLeft(
                Names.at(view, params.getPosition())
                    .map(mention -> Names.definition(view, mention))
                    .orElse(List.of())));
  }

  @Override
  public CompletableFuture<List<? extends Location>> references(ReferenceParams params) {
    boolean declaration = params.getContext().isIncludeDeclaration();
    return answer(
        "references",
        params.getTextDocument(),
        List.of(),
        view ->
            Names.at(view, params.getPosition())
                .map(mention -> Names.references(view, mention, declaration))
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
        view ->
            Names.at(view, params.getPosition())
                .<Either3<Range, PrepareRenameResult, PrepareRenameDefaultBehavior>>map(
                    mention -> Either3.forFirst(view.range(mention.span())))
                .orElse(null));
  }

  @Override
  @SuppressWarnings("NullAway") // the protocol says null for nothing
  public CompletableFuture<WorkspaceEdit> rename(RenameParams params) {
    return answer(
        "rename",
        params.getTextDocument(),
        null,
        view ->
            Names.at(view, params.getPosition())
                .map(mention -> new Renaming(view, mention).to(params.getNewName()))
                .orElse(null));
  }

  @Override
  public CompletableFuture<List<? extends TextEdit>> formatting(DocumentFormattingParams params) {
    return answer(
        "formatting", params.getTextDocument(), List.of(), view -> Layout.edits(view.document()));
  }

  @Override
  public CompletableFuture<List<Either<Command, CodeAction>>> codeAction(CodeActionParams params) {
    return answer(
        "codeAction",
        params.getTextDocument(),
        List.of(),
        view -> {
          List<Either<Command, CodeAction>> actions = new ArrayList<>();
          QuickFixes.at(view, params).forEach(action -> actions.add(Either.forRight(action)));
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
        view -> {
          List<Either<SymbolInformation, DocumentSymbol>> symbols = new ArrayList<>();
          Symbols.of(view).forEach(symbol -> symbols.add(Either.forRight(symbol)));
          return symbols;
        });
  }

  @Override
  public CompletableFuture<List<? extends CodeLens>> codeLens(CodeLensParams params) {
    return answer("codeLens", params.getTextDocument(), List.of(), CaseLenses::of);
  }

  /** Runs cases and gives the message that was shown. */
  CompletableFuture<String> runCases(String uri, String kind, String name) {
    long at = runs.changes();
    return answer(
        "runCases",
        new TextDocumentIdentifier(uri),
        "",
        view -> {
          MessageParams said = runs.run(view, kind, name, at);
          publisher.show(said);
          publisher.later(0);
          return said.getMessage();
        });
  }

  /** Answers for the files as they stand now, whatever is typed meanwhile. */
  private <T extends @Nullable Object> CompletableFuture<T> answer(
      String what, TextDocumentIdentifier id, T otherwise, Function<View, T> question) {
    Workspace workspace = new Workspace(documents.files(), analyses);
    Document document = workspace.files().open(id.getUri()).orElse(null);
    return CompletableFutures.computeAsync(
        workers,
        cancel -> {
          lifecycle.requireRunning();
          cancel.checkCanceled();
          return document == null
              ? otherwise
              : faults.guarded(what, otherwise, () -> question.apply(workspace.view(document)));
        });
  }
}
