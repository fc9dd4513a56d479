package org.rimefast.languageserver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.concurrent.ExecutionException;
import org.eclipse.lsp4j.HoverParams;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.TextDocumentSyncKind;
import org.eclipse.lsp4j.jsonrpc.ResponseErrorException;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseErrorCode;
import org.junit.jupiter.api.Test;

/** From initialize to exit, as the protocol (Language Server Protocol 3.17) lays it down. */
class LifecycleTest {
  @Test
  void theServerSaysWhatItCanDo() {
    try (Editor editor = new Editor()) {
      var can = editor.initialize().getCapabilities();
      assertThat(can.getPositionEncoding()).isEqualTo("utf-16");
      assertThat(can.getTextDocumentSync().getRight().getChange())
          .isEqualTo(TextDocumentSyncKind.Incremental);
      assertThat(can.getCompletionProvider()).isNotNull();
      assertThat(can.getRenameProvider().getRight().getPrepareProvider()).isTrue();
    }
  }

  @Test
  void exitAfterShutdownIsSuccess() {
    Editor editor = Editor.ready();
    assertThat(Editor.await(editor.server().shutdown())).isNull();
    editor.server().exit();
    assertThat(editor.exitCode()).isZero();
  }

  @Test
  void exitWithoutShutdownIsFailure() {
    Editor editor = Editor.ready();
    editor.server().exit();
    assertThat(editor.exitCode()).isEqualTo(1);
  }

  @Test
  void aClientThatIsGoneEndsTheServer() {
    Editor editor = Editor.ready();
    editor.hangUp();
    assertThat(editor.exitCode()).isEqualTo(1);
  }

  @Test
  void questionsBeforeInitializeAreRefused() {
    try (Editor editor = new Editor()) {
      assertRefused(editor, ResponseErrorCode.ServerNotInitialized);
    }
  }

  @Test
  void questionsAfterShutdownAreRefused() {
    try (Editor editor = Editor.ready()) {
      Editor.await(editor.server().shutdown());
      assertRefused(editor, ResponseErrorCode.InvalidRequest);
    }
  }

  private static void assertRefused(Editor editor, ResponseErrorCode code) {
    HoverParams params = new HoverParams(editor.id(), new Position(0, 0));
    assertThatThrownBy(() -> editor.server().getTextDocumentService().hover(params).get())
        .isInstanceOf(ExecutionException.class)
        .cause()
        .isInstanceOfSatisfying(
            ResponseErrorException.class,
            e -> assertThat(e.getResponseError().getCode()).isEqualTo(code.getValue()));
  }
}
