package org.rimefast.languageserver.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.eclipse.lsp4j.CompletionItem;
import org.eclipse.lsp4j.CompletionItemKind;
import org.eclipse.lsp4j.MarkupContent;
import org.eclipse.lsp4j.MarkupKind;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.rimefast.lang.rule.Meaning;
import org.rimefast.lang.source.Span;
import org.rimefast.lang.tooling.Analysis;
import org.rimefast.lang.tooling.Proposal;
import org.rimefast.lang.tooling.Proposals;
import org.rimefast.lang.vocabulary.Vocabulary;

/** What could be written at a place, as the protocol has it. */
final class Completions {
  private static final Map<Proposal.Kind, CompletionItemKind> KINDS =
      Map.of(
          Proposal.Kind.WORD, CompletionItemKind.Field,
          Proposal.Kind.NAME, CompletionItemKind.Constant,
          Proposal.Kind.RULE, CompletionItemKind.Reference,
          Proposal.Kind.KEYWORD, CompletionItemKind.Keyword,
          Proposal.Kind.SIGN, CompletionItemKind.Operator,
          Proposal.Kind.UNIT, CompletionItemKind.Unit,
          Proposal.Kind.PART, CompletionItemKind.Keyword,
          Proposal.Kind.PART_VALUE, CompletionItemKind.EnumMember);

  private final PhraseMeanings phrases;

  Completions(Vocabulary vocabulary) {
    this.phrases = new PhraseMeanings(vocabulary);
  }

  List<CompletionItem> at(View view, Position position) {
    int offset = view.offset(position);
    Proposals proposals = view.analysis().proposals(offset);
    Span replaces = proposals.replaces();
    // A word right behind a number or a sign would grow together with it.
    boolean apart =
        replaces.start() == replaces.end()
            && offset > 0
            && Character.isLetterOrDigit(view.analysis().source().text().charAt(offset - 1));
    List<CompletionItem> items = new ArrayList<>();
    for (Proposal proposal : proposals.proposals()) {
      CompletionItem item = new CompletionItem(proposal.text());
      item.setKind(KINDS.get(proposal.kind()));
      item.setSortText(String.format(Locale.ROOT, "%04d", items.size()));
      item.setFilterText(withoutArticle(proposal.text()));
      String text = (apart && !proposal.text().equals(",") ? " " : "") + proposal.text();
      item.setTextEdit(Either.forLeft(new TextEdit(view.range(replaces), text)));
      meanings(proposal, view.analysis()).stream()
          .findFirst()
          .ifPresent(m -> say(item, m, view.analysis()));
      items.add(item);
    }
    return items;
  }

  private List<Meaning> meanings(Proposal proposal, Analysis analysis) {
    return switch (proposal.kind()) {
      case WORD -> phrases.of(withoutArticle(proposal.text()));
      case NAME -> PhraseMeanings.named(withoutArticle(proposal.text()), analysis);
      case RULE -> List.of(new Meaning.OfRule(proposal.text()));
      case KEYWORD, SIGN, UNIT, PART, PART_VALUE -> List.of();
    };
  }

  private void say(CompletionItem item, Meaning meaning, Analysis analysis) {
    String text = meaning.accept(new MeaningText(phrases.vocabulary(), analysis));
    item.setDocumentation(new MarkupContent(MarkupKind.MARKDOWN, text.strip()));
    if (meaning instanceof Meaning.OfProperty property) {
      item.setDetail(MeaningText.type(property.property().type()));
    } else if (meaning instanceof Meaning.OfConstant constant) {
      item.setDetail(constant.constant().value().quantity().text());
    } else if (meaning instanceof Meaning.OfNoun) {
      item.setKind(CompletionItemKind.Class);
    } else if (meaning instanceof Meaning.OfRelation) {
      item.setKind(CompletionItemKind.Method);
    } else if (meaning instanceof Meaning.OfChoice) {
      item.setKind(CompletionItemKind.EnumMember);
    } else if (meaning instanceof Meaning.OfTerm) {
      item.setKind(CompletionItemKind.Class);
    }
  }

  private static String withoutArticle(String text) {
    return text.startsWith("a ")
        ? text.substring(2)
        : text.startsWith("an ") ? text.substring(3) : text;
  }
}
