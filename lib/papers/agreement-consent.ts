/**
 * What the donors allowed, as the agreement says it: sentences made of the codes of
 * the terms, one row for the specimens that share their restrictions. Only human
 * specimens have donors, and nothing here tells who one was.
 */
import type { AgreementTerms, Restriction } from "#lib/agreements/frozen-terms.ts";
import type { Block } from "#lib/papers/blocks.ts";
import { groupBy, rangesOf } from "#lib/papers/row-groups.ts";
import { fill, type PaperWords, say } from "#lib/papers/words.ts";

/** The parameters of a restriction, in words. */
function restrictionWords(restriction: Restriction, words: PaperWords): Record<string, string> {
  const { consent, write } = words;
  switch (restriction.code) {
    case "restriction.audience-within":
      return { audience: say(consent.audiences, restriction.parameters.audience) };
    case "restriction.only-in":
      return { countries: write.list(restriction.parameters.countries.map(write.country)) };
    case "restriction.not-in":
      return { countries: write.either(restriction.parameters.countries.map(write.country)) };
    case "restriction.no-pictures-for": {
      const { pictures } = restriction.parameters;
      return { pictures: write.either(pictures.map((picture) => say(words.loan.plannedPictures, picture))) };
    }
    case "restriction.consent-ends":
      return { endsOn: write.day(restriction.parameters.endsOn) };
    case "restriction.owed-back": {
      const { disposition, dueOn } = restriction.parameters;
      return { disposition: say(consent.dispositions, disposition), dueOn: write.day(dueOn) };
    }
    default:
      return {};
  }
}

/** One restriction as a sentence. */
export function restrictionText(restriction: Restriction, words: PaperWords): string {
  return fill(words.consent.restrictions[restriction.code], restrictionWords(restriction, words));
}

/** Only human specimens have donors; those with the same restrictions share a row. */
export function consentBlocks({ schedule }: AgreementTerms, words: PaperWords): Block[] {
  const { consent } = words;
  const groups = groupBy(schedule, (row) => JSON.stringify([row.isHuman, row.restrictions])).filter(
    ({ first }) => first.isHuman,
  );
  return [
    { kind: "paragraph", text: consent.lead, isLead: true },
    {
      kind: "table",
      columns: [
        { header: consent.number, align: "left", width: { share: 1 } },
        { header: consent.restriction, align: "left", width: { share: 3 } },
      ],
      rows: groups.map(({ first, numbers }) => [
        rangesOf(numbers),
        first.restrictions.length === 0
          ? consent.none
          : { paragraphs: first.restrictions.map((restriction) => restrictionText(restriction, words)) },
      ]),
    },
  ];
}
