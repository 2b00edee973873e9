/**
 * England, Wales and Northern Ireland: UK1 to UK9, by the statute on human tissue
 * of 2004. Scotland has rules of its own; a venue in the United Kingdom whose part
 * nobody named is judged by these and by Scotland's question. Material without
 * cells lies outside all of them but UK8. Nothing here says that a use is lawful.
 */

import type { ConsentFacts } from "#lib/provenance/schema.ts";
import type { RequestFacts, SpecimenCase, Verdict } from "#lib/suitability/rules/case.ts";
import { findingsFor, isPublicShow, outcomeOfUnknown } from "#lib/suitability/rules/case.ts";
import {
  diedBefore,
  diedYearsBefore,
  heldSince,
  isExamined,
  isImportedAtVenue,
} from "#lib/suitability/rules/legal-facts.ts";
import { permitFor, verdictOnLicence, verdictOnPermit } from "#lib/suitability/rules/papers.ts";
import type { Finding } from "#lib/suitability/schema.ts";

/** The day on which the statute came into force, and the day a hundred years before it. */
const COMMENCEMENT = "2006-09-01";
const CENTURY_BEFORE = "1906-09-01";

/** UK2: how far back the death lies. It decides whether UK1 asks for a licence. */
function judgeAge(subject: SpecimenCase, request: RequestFacts): Verdict {
  const early = diedBefore(subject, CENTURY_BEFORE);
  if (early === true) return { outcome: "clear", fact: "law.uk-before-the-century" };
  const wayOut = "way.ask-regulator";
  if (diedYearsBefore(subject, request, 100) === true)
    return { outcome: "attend", fact: "law.uk-hundred-years", wayOut };
  return diedYearsBefore(subject, request, 100) === false
    ? { outcome: "clear", fact: "law.uk-recent" }
    : { outcome: "attend", fact: "law.uk-death-not-known", wayOut };
}

/** UK1: public display of material from a dead person asks the venue for a licence. */
function judgeDisplay(age: Verdict, request: RequestFacts): Verdict {
  if (!isPublicShow(request)) return { outcome: "clear", fact: "permits.not-public" };
  if (age.fact === "law.uk-before-the-century") return { outcome: "clear", fact: "law.uk-licence-off" };
  return verdictOnLicence(
    request,
    ["public display"],
    age.fact === "law.uk-hundred-years" ? "attend" : "bar",
  );
}

type Word = "own" | "not-own" | "not-known";

/** Whether one donor's own word is in a will, or in writing with a witness. */
export function writtenWord({ basis, signedOn, witnessCount }: ConsentFacts): Word {
  if (basis === "will") return "own";
  if (basis !== "donor in life") return "not-own";
  if (signedOn === null || witnessCount === null) return "not-known";
  return witnessCount >= 1 ? "own" : "not-own";
}

/** UK3: for public display and anatomical examination, relatives cannot speak for the person. */
function judgeOwnConsent({ provenance }: SpecimenCase, request: RequestFacts): Verdict {
  const { consents, donorsWithoutConsent } = provenance;
  const words = consents.map(writtenWord);
  const wayOut = "way.evidence-bundle";
  if (words.length === 0 || donorsWithoutConsent > 0 || words.includes("not-own"))
    return { outcome: "bar", fact: "law.uk-no-own-consent", wayOut };
  return words.includes("not-known")
    ? {
        outcome: outcomeOfUnknown(request, isPublicShow(request)),
        fact: "law.uk-witness-not-known",
        wayOut,
      }
    : { outcome: "clear", fact: "law.uk-own-consent" };
}

/** UK4: what was held before the statute is not asked for consent again. */
function judgeExisting(subject: SpecimenCase): Verdict {
  const since = heldSince(subject);
  if (since === null) return { outcome: "attend", fact: "law.uk-held-not-known", wayOut: "way.context-file" };
  return since < COMMENCEMENT
    ? { outcome: "clear", fact: "law.uk-existing", parameters: { since } }
    : { outcome: "clear", fact: "law.uk-not-existing", parameters: { since } };
}

/** UK5: imported material brings the proof of a lawful, consented origin with it. */
function judgeImport(subject: SpecimenCase, request: RequestFacts): Verdict {
  return verdictOnPermit(
    permitFor(subject, request, ["import"]),
    request,
    {
      fits: "law.import-paper",
      vague: "law.import-paper-vague",
      days: "law.import-paper-days",
      country: "law.import-paper-country",
      missing: "law.uk-origin-not-proved",
      wayOut: "way.ask-authority-border",
    },
    "attend",
  );
}

/** UK6: an anatomical specimen away from licensed premises needs written authority for the purpose. */
function judgePremises({ specimen }: SpecimenCase, request: RequestFacts): Verdict {
  if (specimen.legal.anatomicalExamination === false)
    return { outcome: "clear", fact: "law.uk-not-anatomical" };
  if (!isExamined(request) && specimen.legal.anatomicalExamination === null)
    return {
      outcome: outcomeOfUnknown(request, isPublicShow(request)),
      fact: "law.uk-examination-not-known",
      wayOut: "way.record-origin",
    };
  return verdictOnLicence(request, ["anatomy", "authority to keep elsewhere"], "bar");
}

/** UK7: keeping relevant material for education or training. */
const judgeStorage = (request: RequestFacts): Verdict =>
  verdictOnLicence(request, ["storage", "anatomy"], "attend", "bar");

/** UK9: papers on the cause and the registration of a death that is not long past. */
function judgeDeathPapers({ specimen }: SpecimenCase): Verdict {
  return specimen.legal.deathPapers === true
    ? { outcome: "clear", fact: "law.death-papers" }
    : { outcome: "attend", fact: "law.no-death-papers", wayOut: "way.evidence-bundle" };
}

export function judgeUnitedKingdom(subject: SpecimenCase, request: RequestFacts): Finding[] {
  const { specimen } = subject;
  const { countryCode, subdivisionCode } = request.venue;
  if (!specimen.human || countryCode !== "GB" || subdivisionCode === "GB-SCT") return [];
  const find = findingsFor(specimen.id, "permits");
  if (specimen.legal.containsCells === false)
    return [find("UK8", { outcome: "clear", fact: "law.uk-no-cells" })];
  const age = judgeAge(subject, request);
  const findings = [find("UK1", judgeDisplay(age, request)), find("UK2", age)];
  const imported = isImportedAtVenue(subject, request);
  if (imported !== true) {
    const existing = judgeExisting(subject);
    findings.push(find("UK4", existing));
    if (existing.fact !== "law.uk-existing" && (isPublicShow(request) || isExamined(request)))
      findings.push(find("UK3", judgeOwnConsent(subject, request)));
  }
  if (imported !== false) findings.push(find("UK5", judgeImport(subject, request)));
  findings.push(find("UK6", judgePremises(subject, request)));
  if (isExamined(request)) findings.push(find("UK7", judgeStorage(request)));
  if (specimen.legal.containsCells === null)
    findings.push(
      find("UK8", { outcome: "attend", fact: "law.cells-not-known", wayOut: "way.record-origin" }),
    );
  if (age.fact !== "law.uk-before-the-century" && age.fact !== "law.uk-hundred-years")
    findings.push(find("UK9", judgeDeathPapers(subject)));
  return findings;
}
