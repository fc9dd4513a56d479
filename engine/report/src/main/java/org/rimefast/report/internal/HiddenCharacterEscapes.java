package org.rimefast.report.internal;

import com.fasterxml.jackson.core.SerializableString;
import com.fasterxml.jackson.core.io.CharacterEscapes;
import com.fasterxml.jackson.core.io.SerializedString;
import org.jspecify.annotations.Nullable;

/** Escapes what would act on a terminal or reorder a line if the document were shown as it is. */
final class HiddenCharacterEscapes extends CharacterEscapes {
  private static final long serialVersionUID = 1L;

  @Override
  public int[] getEscapeCodesForAscii() {
    int[] codes = CharacterEscapes.standardAsciiEscapesForJSON();
    codes[0x7f] = CharacterEscapes.ESCAPE_STANDARD;
    return codes;
  }

  @Override
  public @Nullable SerializableString getEscapeSequence(int character) {
    // Pairs never come here: the generator escapes them whole once there are custom escapes.
    return VisibleText.isHidden(character) && !Character.isSurrogate((char) character)
        ? new SerializedString("\\u" + VisibleText.hex(character))
        : null;
  }
}
