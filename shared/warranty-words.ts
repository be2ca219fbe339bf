/**
 * Whether a maker's warranty still holds is the maker's to say; a warrantor may refuse only what it
 * can show the work caused (16 CFR 700.10). A shop that writes that a warranty "is void" states as
 * fact what it cannot know, so no text that leaves the shop may say it.
 */
const ended =
  /\b(?:void(?:s|ed|ing)?|null(?:ified|ifies|ify)?|invalid(?:ated?|ates|ating)?|cancel(?:s|l?ed)?|terminat(?:es?|ed)|forfeit(?:s|ed)?|los(?:es?|t)|end(?:s|ed)?|expire[sd]?|gone|revoked?)\b/iu;
const warranty = /\b(?:warrant(?:y|ies)|guarantees?)\b/iu;
/** Words that leave it open; between them and the ending stand a few words at most. */
const open =
  /\b(?:may|might|could|can|whether|if|possibly|perhaps)\b(?:\s+(?!(?:is|are|will|shall|must|has|have|be\s+sure)\b)[\p{L}']+){0,5}\s+$/iu;
const denied = /\b(?:not|never|no|nothing|nobody)\b(?:\s+[\p{L}']+){0,5}\s+$/iu;

/** These say it of the warranty even in the next clause: "it may not hold and is void". */
const strong = /^(?:void|null|invalid)/iu;

/** The clause that says a warranty is void, as it stands; null where none does. */
export function warrantyVoidClause(text: string): string | null {
  // A line end in the middle of a sentence is a blank.
  const sentences = text
    .replaceAll('’', "'")
    .replaceAll(/\s+/g, ' ')
    .split(/[.;!?]/u);
  for (const sentence of sentences.filter((each) => warranty.test(each))) {
    for (const clause of sentence.split(/,?\s+(?:and|but|so|because)\s+/u)) {
      for (const match of clause.matchAll(new RegExp(ended, 'giu'))) {
        const before = clause.slice(0, match.index);
        const isAbout = warranty.test(clause) || strong.test(match[0]);
        if (isAbout && !open.test(before) && !denied.test(before)) return clause.trim();
      }
    }
  }
  return null;
}

export const warrantyVoidSentence =
  "Do not say that a warranty is void: only its maker can say that. Write that it may be void, or that the maker's warranty may not cover an altered bow.";

/** What an alteration acknowledgement must tell. */
export function saysMayNotCover(text: string): boolean {
  return /warranty\b[^.;!?]*\bmay\s+not\s+cover\s+an\s+altered\s+bow\b/iu.test(
    text.replaceAll(/\s+/g, ' '),
  );
}
export const mayNotCoverSentence =
  "It must say that the maker's warranty may not cover an altered bow, in these words.";
