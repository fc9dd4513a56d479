/*
 * The shape of rule text. What a phrase means is left to the vocabulary: here a phrase is a run of
 * words, numbers, texts and parentheses.
 *
 * The lexer takes every character for some kind of word, so that what is wrong is said by us and
 * not by it. Before parsing, numbers and their units are joined to QUANTITY, and "at", "more" and
 * "less" become words of a bound where "least", "most" or "than" follows, so that no text can be
 * read in two ways.
 */
grammar Rime;

// All but QUANTITY and the bounds are words only of cases, inspect items, waivers or layers, and words like any other
// in all other statements: they are told apart before parsing.
tokens {
  QUANTITY, BOUND_AT, BOUND_MORE, BOUND_LESS,
  PLAN, SET, REMOVE, ADD, EXPECT, TO, OF, EVERY, MET, BROKEN, UNDECIDED, ERROR_WORD, NOTHING,
  APPLICABLE, WANT, WITHIN, TOLERANCE,
  ASK, ANSWER, READING, IN_PLAN, APPROVED, FROM, UNTIL, DOWN, UP,
  IN, BUILDS, ON, EXCEPT, SEEN, HASH
}

standardStatement
  : STANDARD name=WORD EDITION edition (headerField | buildsOn)* EOF
  ;

buildsOn
  : BUILDS ON name=WORD EDITION edition
  ;

edition
  : WORD     # wordEdition
  | NUMBER   # numberEdition
  | TEXT     # textEdition
  ;

headerField
  : key=(TITLE | CAUTION) text
  ;

letStatement
  : LET word+ BE letValue field* EOF
  ;

letValue
  : MINUS? literal=(QUANTITY | NUMBER)   # numberValue
  | word+ whereClause?                   # termValue
  ;

includeStatement
  : INCLUDE TEXT EOF
  ;

inRuleStatement
  : IN RULE id=WORD COMMA change amendmentPart* EOF
  ;

withdrawStatement
  : WITHDRAW id=WORD amendmentPart* EOF
  ;

change
  : key=(SEVERITY | STAGE) IS WORD       # partChange
  | EXCEPT whereClause                   # exceptChange
  | word+ limit? IS limit                # limitChange
  ;

limit
  : MINUS? literal=(QUANTITY | NUMBER)
  ;

amendmentPart
  : field                                         # fieldPart
  | SEEN EDITION edition HASH hash=WORD text      # seenPart
  ;

ruleStatement
  : RULE id=WORD text sentence field* EOF
  ;

tableStatement
  : TABLE tableWord+ BY operand (COMMA operand)* row+ (OTHERWISE cell)? field* EOF
  ;

row
  : BAR (cell BAR)+
  ;

cell
  : cellPart (conjunction cellPart)*
  ;

cellPart
  : (sign=(AT_LEAST_SIGN | MORE_SIGN | AT_MOST_SIGN | LESS_SIGN | EQUAL_SIGN | NOT_EQUAL_SIGN) | bound)?
      MINUS? literal=(QUANTITY | NUMBER)   # numberCell
  | word+                                  # wordCell
  ;

casesStatement
  : CASES FOR name=WORD EOF
  ;

caseStatement
  : CASE text OF caseScope caseStep* EOF
  ;

caseScope
  : EVERY RULE   # everyRule
  | WORD         # oneRule
  ;

caseStep
  : PLAN (TEXT | BLOCK)                     # planStep
  | SET caseTarget TO caseValue             # setStep
  | REMOVE caseTarget                       # removeStep
  | ADD TO caseWord BLOCK                   # addStep
  | EXPECT id=WORD? caseOutcome           # expectStep
  ;

caseTarget
  : caseWord+ OF TEXT   # fieldTarget
  | TEXT                # wholeTarget
  ;

caseValue
  : MINUS? (QUANTITY | NUMBER)   # numberCaseValue
  | TEXT                         # textCaseValue
  | WORD                         # wordCaseValue
  | BLOCK                        # blockCaseValue
  ;

caseOutcome
  : MET (BY caseElements)?             # metOutcome
  | BROKEN BY caseElements             # brokenOutcome
  | UNDECIDED BY caseElements want?    # undecidedOutcome
  | ERROR_WORD BY caseElements         # errorOutcome
  | NOTHING                            # nothingOutcome
  | NOT APPLICABLE (TO caseElements)?  # notApplicableOutcome
  ;

want
  : FOR WANT OF caseWord+ (OF TEXT)?   # valueWant
  | WITHIN TOLERANCE                   # toleranceWant
  ;

caseElements
  : TEXT (COMMA TEXT)*
  ;

// A field of a plan, in words; a run has one that is called to.
caseWord
  : word
  | TO
  ;

inspectStatement
  : INSPECT id=WORD text FOR phrase whereClause? inspectField* EOF
  ;

inspectField
  : field                      # sharedInspectField
  | key=ASK text               # askField
  | key=ANSWER WORD            # answerField
  | key=READING readingLimit   # readingField
  ;

readingLimit
  : readingBound MINUS? literal=(QUANTITY | NUMBER)   # literalLimit
  | readingBound word+                                # namedLimit
  ;

readingBound
  : BOUND_AT LEAST
  | BOUND_AT MOST
  | BOUND_MORE THAN
  | BOUND_LESS THAN
  | AT_LEAST_SIGN
  | AT_MOST_SIGN
  | MORE_SIGN
  | LESS_SIGN
  ;

waiversStatement
  : WAIVERS FOR name=WORD headerField* EOF
  ;

waiveStatement
  : WAIVE ruleId=WORD FOR waived waiverField* EOF
  ;

waived
  : TEXT (COMMA TEXT)*     # namedElements
  | subject whereClause?   # describedElements
  ;

waiverField
  : field                                                      # sharedWaiverField
  | key=IN_PLAN WORD text                                           # planField
  | key=APPROVED BY text                                       # approvedField
  | key=(FROM | UNTIL) date                                    # dateField
  | key=(DOWN | UP) WORD MINUS? literal=(QUANTITY | NUMBER)    # boundField
  ;

date
  : NUMBER
  ;

field
  : key=(SEVERITY | STAGE) WORD   # wordField
  | key=(BECAUSE | SOURCE) text   # textField
  ;

text
  : TEXT+
  ;

sentence
  : FOR phrase whereClause? COMMA operand MUST predicate guard?   # forEachSentence
  | subject whereClause? MUST predicate guard?                    # plainSentence
  ;

// Begins with no text, which goes on the title before it, or names an element.
subject
  : (wordy | enclosed) item* between?
  | between
  ;

whereClause
  : WHERE condition
  ;

guard
  : key=(IF | UNLESS) condition
  ;

predicate
  : predicateTerm (conjunction predicateTerm)*
  ;

predicateTerm
  : NOT* predicateAtom with*
  ;

predicateAtom
  : LEFT predicate RIGHT       # predicateGroup
  | HAVE operand signTail?     # havePredicate
  | BE NOT? operand            # bePredicate
  | BE NOT? signTail           # beSignPredicate
  | verb sumTail* signTail?    # verbPredicate
  ;

// Begins with no parenthesis, which begins a group of predicates.
verb
  : (wordy | TEXT) item* between?
  | between
  ;

// Always a mistake; read so that it can be told.
sumTail
  : (PLUS | MINUS) factor
  | timesOrDivided factor
  ;

with
  : WITH operand signTail?
  ;

condition
  : conditionTerm (conjunction conditionTerm)*
  ;

conditionTerm
  : NOT* operand clauseTail? with*
  ;

clauseTail
  : key=(IS | ARE) NOT? operand            # isTail
  | key=(IS | ARE) NOT? signTail           # isSignTail
  | key=(HAS | HAVE) operand signTail?     # hasTail
  | key=(DOES | DO) NOT operand            # doesNotTail
  | key=(DOES | DO) NOT HAVE operand signTail?   # doesNotHaveTail
  | signTail                               # compareTail
  ;

conjunction
  : AND   # andConjunction
  | OR    # orConjunction
  ;

signTail
  : sign=(AT_LEAST_SIGN | MORE_SIGN | AT_MOST_SIGN | LESS_SIGN | EQUAL_SIGN | NOT_EQUAL_SIGN) operand
  ;

operand
  : product (op=(PLUS | MINUS) product)*
  ;

product
  : factor (timesOrDivided factor)*
  ;

timesOrDivided
  : TIMES        # times
  | DIVIDED BY   # dividedBy
  ;

factor
  : MINUS? phrase
  ;

phrase
  : item+ between?
  | between
  ;

// The only place where "and" does not join conditions; it takes all items that follow.
between
  : BETWEEN first=items AND second=items
  ;

items
  : item+
  ;

item
  : wordy      # wordyItem
  | TEXT       # textItem
  | enclosed   # enclosedItem
  ;

wordy
  : word
  | bound
  | QUANTITY
  | NUMBER
  ;

enclosed
  : LEFT WHERE condition RIGHT              # whereItem
  | LEFT conditional RIGHT                  # conditionalItem
  | LEFT FOR phrase COMMA condition RIGHT   # forItem
  | LEFT condition RIGHT                    # groupItem
  ;

conditional
  : IF condition THEN operand (OTHERWISE IF condition THEN operand)* OTHERWISE operand
  ;

bound
  : BOUND_AT LEAST    # atLeastBound
  | BOUND_AT MOST     # atMostBound
  | BOUND_MORE THAN   # moreThanBound
  | BOUND_LESS THAN   # lessThanBound
  | EXACTLY           # exactlyBound
  ;

// Keywords that vocabulary phrases may hold, as in "held by".
word
  : tableWord
  | BY
  ;

// All of these but BY, which ends the name of a table.
tableWord
  : WORD
  | AT
  | LEAST
  | MOST
  | MORE_WORD
  | LESS_WORD
  | THAN
  | STANDARD
  | EDITION
  | TITLE
  | CAUTION
  | LET
  | RULE
  | CASE
  | CASES
  | INSPECT
  | WAIVERS
  | WAIVE
  | INCLUDE
  | WITHDRAW
  | TABLE
  ;

STANDARD: 'standard';
EDITION: 'edition';
TITLE: 'title';
CAUTION: 'caution';
LET: 'let';
BE: 'be';
RULE: 'rule';
CASE: 'case';
CASES: 'cases';
INSPECT: 'inspect';
WAIVERS: 'waivers';
WAIVE: 'waive';
INCLUDE: 'include';
WITHDRAW: 'withdraw';
TABLE: 'table';
SEVERITY: 'severity';
STAGE: 'stage';
BECAUSE: 'because';
SOURCE: 'source';
FOR: 'for';
WHERE: 'where';
MUST: 'must';
NOT: 'not';
IF: 'if';
UNLESS: 'unless';
THEN: 'then';
OTHERWISE: 'otherwise';
AND: 'and';
OR: 'or';
WITH: 'with';
HAVE: 'have';
HAS: 'has';
IS: 'is';
ARE: 'are';
DOES: 'does';
DO: 'do';
AT: 'at';
LEAST: 'least';
MOST: 'most';
MORE_WORD: 'more';
LESS_WORD: 'less';
THAN: 'than';
EXACTLY: 'exactly';
TIMES: 'times';
DIVIDED: 'divided';
BETWEEN: 'between';
BY: 'by';

AT_LEAST_SIGN: '>=';
AT_MOST_SIGN: '<=';
NOT_EQUAL_SIGN: '!=';
MORE_SIGN: '>';
LESS_SIGN: '<';
EQUAL_SIGN: '=';
PLUS: '+';
MINUS: '-';
LEFT: '(';
RIGHT: ')';
COMMA: ',';
BAR: '|';

NUMBER: '.'? DIGIT (DIGIT | [.,/'_-] DIGIT)*;
WORD: LETTER (LETTER | DIGIT | [-'] (LETTER | DIGIT))* '\''?;
BLOCK: '"""' .*? '"""';
UNCLOSED_BLOCK: '"""' (~["\r\n] | '"' ~["\r\n] | '""' ~["\r\n])* '"'? '"'?;
TEXT: '"' ~["\r\n]* '"';
UNCLOSED_TEXT: '"' ~["\r\n]*;

COMMENT: '--' ~[\r\n]* -> skip;
SPACE: [ \t\r\n]+ -> skip;
OTHER: .;

fragment DIGIT: [0-9];
fragment LETTER: [\p{L}\p{M}];
