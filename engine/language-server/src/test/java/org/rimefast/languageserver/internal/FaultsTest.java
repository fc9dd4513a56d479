package org.rimefast.languageserver.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.lang.reflect.Proxy;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.lsp4j.MessageParams;
import org.eclipse.lsp4j.jsonrpc.ResponseErrorException;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseError;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseErrorCode;
import org.eclipse.lsp4j.services.LanguageClient;
import org.junit.jupiter.api.Test;

class FaultsTest {
  private final List<String> logged = new ArrayList<>();
  private final Faults faults = new Faults();

  FaultsTest() {
    faults.connect(
        (LanguageClient)
            Proxy.newProxyInstance(
                getClass().getClassLoader(),
                new Class<?>[] {LanguageClient.class},
                (proxy, method, args) -> {
                  logged.add(method.getName() + " " + ((MessageParams) args[0]).getMessage());
                  return null;
                }));
  }

  @Test
  void aFaultOfOursIsToldAndAnswered() {
    String answer =
        faults.guarded(
            "hover",
            "nothing",
            () -> {
              throw new IllegalStateException("impossible");
            });
    assertThat(answer).isEqualTo("nothing");
    assertThat(logged).hasSize(1);
    assertThat(logged.get(0))
        .startsWith("logMessage rimefast: hover: ")
        .contains("a fault of rimefast itself", "impossible", "FaultsTest");
  }

  @Test
  void aStackThatIsTooDeepIsToldToo() {
    assertThat(
            faults.guarded(
                "completion",
                "nothing",
                () -> {
                  throw new StackOverflowError();
                }))
        .isEqualTo("nothing");
    assertThat(logged).hasSize(1);
  }

  @Test
  void aRefusalIsNoFault() {
    ResponseErrorException refusal =
        new ResponseErrorException(new ResponseError(ResponseErrorCode.RequestFailed, "no", null));
    assertThatThrownBy(
            () ->
                faults.guarded(
                    "rename",
                    "nothing",
                    () -> {
                      throw refusal;
                    }))
        .isSameAs(refusal);
    assertThat(logged).isEmpty();
  }
}
