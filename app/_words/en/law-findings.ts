/**
 * What the rules that touch law find, and the ways out, in English. Every sentence
 * ends by sending the reader to the local authority; none says by the program's
 * own word that something is lawful or not.
 */

const end = "Check with the local authority.";

/** Sentences with the one end that all of them have. */
function endingAlike<Code extends string>(sentences: Record<Code, string>): Record<Code, string> {
  return Object.fromEntries(
    Object.entries(sentences).map(([code, sentence]) => [code, `${sentence} ${end}`]),
  ) as Record<Code, string>;
}

/** One kind of paper and the ways in which it may serve or not. */
const ofPaper = (code: string, name: string) => ({
  [`law.${code}`]: `${name} on record: {number}, {authority}, until {validUntil}.`,
  [`law.${code}-vague`]: `${name} {number} does not say for which country or until when.`,
  [`law.${code}-days`]: `${name} {number} does not cover the days of the loan; it ends on {validUntil}.`,
  [`law.${code}-country`]: `${name} {number} is not for {country}.`,
});

export const lawFindingWords = {
  facts: endingAlike<string>({
    "permits.no-border": "No border is crossed.",
    "permits.not-public": "Nothing is shown in public, so no licence for display is asked here.",

    "law.licence": "Licence of {venue} ({licence}): {number}, {authority}, until {validUntil}.",
    "law.licence-missing": "No licence of {venue} ({licence}) is on record.",
    "law.licence-vague": "The licence {number} of {venue} ({licence}) does not say until when it holds.",
    "law.licence-days":
      "The licence {number} of {venue} ({licence}) does not cover the days of the loan; it ends on {validUntil}.",
    ...ofPaper("import-paper", "Import paper"),
    ...ofPaper("export-licence", "Export licence"),
    ...ofPaper("species-paper", "Paper of species protection"),
    ...ofPaper("veterinary-paper", "Veterinary certificate"),
    "law.cells-not-known": "It is not on record whether it contains tissue with cells.",
    "law.death-papers": "Papers on the cause and the registration of the death are on file.",
    "law.no-death-papers": "Papers on the cause and the registration of the death are not on file.",

    "law.uk-before-the-century":
      "The death lies before 1 September 1906, before the years that the statute on human tissue counts.",
    "law.uk-hundred-years":
      "The death lies a hundred years back, but after 1 September 1906; how the hundred years are counted is the regulator's word.",
    "law.uk-recent": "The death is not long past, so the statute's rule on display licences is looked at.",
    "law.uk-death-not-known": "It is not known when the death was, so it is taken as recent.",
    "law.uk-licence-off": "For a death before 1 September 1906 no display licence is looked for here.",
    "law.uk-own-consent": "Every donor's own word is in writing with a witness, or in a will.",
    "law.uk-no-own-consent":
      "The person's own word in writing with a witness, or in a will, is not on record of every donor; relatives cannot give it for this use.",
    "law.uk-witness-not-known":
      "It is not on record when a donor's word was signed, or whether somebody witnessed it.",
    "law.uk-existing":
      "Held since {since}, before the statute on human tissue; its consent is not asked for again.",
    "law.uk-not-existing": "Held since {since}, after the statute on human tissue came into force.",
    "law.uk-held-not-known":
      "It is not known since when it is held, so it is taken as held after September 2006.",
    "law.uk-origin-not-proved":
      "It is imported, and no proof of a consented origin is on record with a paper.",
    "law.uk-not-anatomical": "It was not used for anatomical examination.",
    "law.uk-examination-not-known": "It is not on record whether it was used for anatomical examination.",
    "law.uk-no-cells": "It contains no tissue with cells, by the record of the specimen.",

    "law.scotland-or-not":
      "It is not known whether {venue} lies in Scotland, where a statute of its own speaks of public display.",
    "law.scotland-not-examined": "It was not used for anatomical examination, by the record of the specimen.",

    "law.ireland-no-authorisation":
      "No prior authorisation is on record for bringing it in for anatomical examination; it names specimen, purpose, time and place.",
    "law.ireland-register": "Origin, consent and papers of the death are on record for the register.",
    "law.ireland-register-lacks":
      "The register of the licence holder wants what is not on record: {lacking}.",

    "law.germany-artistic": "A court held the artistic use of a dead body against burial law.",
    "law.germany-promotional":
      "The display promotes something; courts have looked at such displays by burial law.",
    "law.germany-didactic": "The manner of showing is didactic.",
    "law.germany-no-demonstration": "No dissection or preparation before visitors is planned.",
    "law.germany-declared":
      "A dissection or preparation before visitors is planned; every donor has declared for the taking and for the showing.",
    "law.germany-not-declared":
      "A dissection or preparation before visitors is planned, and the donors' declarations do not reach that far.",
    "law.germany-injustice": "It came, or may have come, by injustice or without anybody's free word.",
    "law.germany-no-injustice": "No context of injustice is seen in what is on record.",
    "law.germany-context-not-known": "It is not known in what circumstances it came.",

    "law.france-commercial": "A court has forbidden a commercial exhibition of human bodies.",
    "law.france-not-commercial": "No admission is charged and nothing is promoted.",
    "law.france-proof": "Courts have asked for proof of origin and of consent given in life.",

    "law.us-named-purpose": "The purpose ({purpose}) is one that laws on anatomical gifts name.",
    "law.us-display-named": "Every donor's gift names the display.",
    "law.us-display-not-named": "The gift does not name this display, and states read that differently.",
    "law.us-no-money": "No admission is charged and nothing is promoted.",
    "law.us-over-hundred": "The death lies more than a hundred years back.",
    "law.us-presumed-house":
      "The house is of a kind that the code may presume to have its papers; its accreditation is not known here.",
    "law.us-authority-to-judge":
      "Written authority of every donor is on record; the health director judges it.",
    "law.us-no-authority": "A display for money asks for valid written authority, which is not on record.",
    "law.us-over-eighty": "The death lies more than eighty years back, which a measure of 2009 excepts.",
    "law.us-commercial-hawaii":
      "A measure of 2009 speaks against commercial displays of the dead; whether it was enacted is to be verified.",
    "law.us-california-signs":
      "A bill of 2008 wanted signs at the entrance and a catalogue of consents; it is no law as far as is known.",
    "law.us-state-not-known":
      "It is not known in which state {venue} lies, and states have words of their own.",
    "law.us-not-remains":
      "Clean dry bone, or nothing with cells: the rule on the import of remains excepts it.",
    "law.us-not-infectious":
      "Papers that the material carries no infection are not on record for the border.",
    "law.us-no-tissue": "It contains no tissue, so the doubt about the customs code does not arise.",
    "law.us-tariff-decided": "A broker has decided the customs code.",
    "law.us-tariff-open": "Two customs headings are contested for tissue, and no broker has decided.",

    "law.union-export-over":
      "It leaves the Union; cultural goods over an age or a cost need an export licence, and the cost is high or not known.",
    "law.union-export-below":
      "It leaves the Union; its cost lies below the Union's threshold, and national law may ask for a licence all the same.",
    "law.union-origin-not-known": "It is not on record which country it comes from.",
    "law.union-made-there": "It comes from the Union ({country}).",
    "law.union-import-below":
      "It comes from {country}, and lies below the age or the cost of an importer's statement.",
    "law.union-statement": "It comes from {country}, is older than 200 years and costs 18 000 EUR or more.",
    "law.union-age-or-cost-not-known": "It comes from {country}, and its age or its cost is not known.",
    "law.union-complete-preparation":
      "A complete anatomical preparation ({preparation}); a statement of that goes with it.",
    "law.veterinary-missing": "It is not completely prepared, and no veterinary certificate is on record.",

    "law.species-not-listed": "{species} stands on no appendix, by the record of the specimen.",
    "law.species-not-known": "It is not on record whether {species} is protected in {country}.",
    "law.species-listed": "{species} is protected (appendix {appendix}), and no number is on record.",
    "law.genes-not-used": "Nothing is sampled, so no genetic resource is made use of.",
    "law.genes-sampled": "Sampling may make use of a genetic resource.",
    "law.fluid-not-classed": "Its fluid ({fluid}) is not known as a dangerous good.",
    "law.fluid-weak-formaldehyde":
      "Formaldehyde solution of {percent} %, in a strength that air carriers do not class; operators may differ.",
    "law.fluid-small-quantity":
      "{freeFluidMl} ml of free {fluid}: up to {limitMl} ml goes as a small quantity, triple sealed with absorbent.",
    "law.fluid-declared": "{freeFluidMl} ml of free {fluid} is more than a small quantity ({limitMl} ml).",
    "law.fluid-volume-not-known": "How much free {fluid} it holds is not known.",
    "law.fluid-not-known": "Which fluid it holds, and in what strength, is not known well enough.",
    "law.carnet-fits": "Away for {days} [days:day|days], within a carnet.",
    "law.carnet-short-states":
      "Away for {days} [days:day|days]; some states give a carnet only {shortLimit}.",
    "law.carnet-too-long": "Away for {days} [days:day|days], longer than the {limit} of a carnet.",
    "law.admission-fits":
      "In the Union for {days} [days:day|days] from {since}; temporary admission lasts {limit}.",
    "law.admission-too-long":
      "In the Union for {days} [days:day|days] from {since}, longer than the {limit} of temporary admission.",
    "law.admission-not-known": "Since when it is in the Union is not known.",

    "law.border-papers": "Papers for the border to {country}: {outward} and {inward}.",
    "law.border-not-known":
      "It is not on record which papers human material needs to enter {country} and to come back.",
  }),

  waysOut: endingAlike<string>({
    "way.record-licence":
      "Ask the venue for its licence for all days of the loan, and record it with the venue.",
    "way.ask-regulator": "Ask the regulator, and keep the answer with the specimen.",
    "way.context-file": "Find out how and when it came, and keep a provenance file.",
    "way.strike-activity": "Strike this activity from the request.",
    "way.show-didactically": "Show it didactically.",
    "way.signs-at-entrance": "Put signs at the entrance, and keep a catalogue of the consents.",
    "way.no-charge": "Show it without charging admission, or choose another specimen.",
    "way.record-origin": "Find out, and record it with the specimen under origin and law.",
    "way.name-subdivision": "Name the part of the country with the venue.",
    "way.prior-authorisation":
      "Apply for the authorisation before anything is promised, and record it as an import permit.",
    "way.ask-order-office": "Tell the municipal order office before the contract, and record its answer.",
    "way.ask-counsel": "Ask counsel at the place before anything is promised.",
    "way.ask-broker": "Ask a customs broker, and record the decision.",
    "way.ask-export-authority": "Ask whether an export licence is needed, and record it.",
    "way.veterinary-certificate": "Have a veterinary certificate made out, and record it.",
    "way.ask-genes-authority": "Ask what research on genes needs before anything is sampled.",
    "way.dangerous-goods": "Have the carrier declare the fluid, or send it drained and sealed.",
    "way.shorter-or-other-customs": "Shorten the loan, or ask a broker for another customs procedure.",
    "way.species-paper": "Record the permit, or the authority's statement that none is needed.",
    "way.ask-authority-border": "Ask on both sides of the border, and record the papers.",
    "way.evidence-bundle": "Prepare the proof of origin and consent.",
  }),
} as const;
