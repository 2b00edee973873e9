/**
 * Every rule by its number, and what it rests on, with how well that is known.
 * A rule is a screening aid: what the law of a place asks is never decided here,
 * and each legal outcome sends the reader to the local authority.
 */
const consentTexts =
  "Societies' recommendations on the donation of bodies: informed consent, stated uses (read in summary)";
const practice = "Common practice, no source";
const derived = "Worked out for this program from the stated facts";

export const ruleSources = {
  G1: consentTexts,
  G2: "Recommendations on collections of unknown provenance: oversight, research, dignity (read in summary)",
  G3: "Code of ethics of museums, on requests for removal (read); worked out for this program",
  G4: derived,
  G5: "Societies' recommendations on crossing borders (read in summary); worked out for this program",
  G6: "Societies' recommendations: body donation is not for profit (read in summary)",
  G7: "Societies' recommendations on pictures of human material (read)",
  G8: "Code of ethics of museums, tact and dignity (read); worked out for this program",
  G9: "Recommendations on preparations in collections, on contexts of injustice (from memory)",
  G10: "A statute on donation that makes a loan an item of information of its own (read)",
  G11: "Usual terms of loan: no lending on, only the named rooms (common practice, no source)",
  G12: derived,
  G14: "Usual terms of loan: no sampling, casting or scanning without the lender's written permission (common practice, no source)",
  G15: "A regulator's answers on material of unknown age (read); worked out for this program",
  G16: "Administrative courts on artistic use of human bodies (read in summary)",
  T1: "Open procedure standard for lending: a loan needs the owner's leave (read)",
  P1: "Convention on trade in endangered species, resolution on loans between registered institutions (read in summary)",
  P2: "Border rules on human material and on cultural goods differ by country (read in part)",
  D1: "Statutes that ask for a licence for the public display of human material (read in summary)",
  FR1: "French civil code, article 16-1-1, and a court of cassation's ruling of 16 September 2010 on a commercial exhibition (read in notes)",
  FR2: "French courts ask for proof of origin and of consent given in life (read in notes)",
  B1: "A specimen is promised once; buffers between loans (worked out for this program)",
  B2: practice,
  B3: "One place for whereabouts and custody (open procedure standard, read)",
  C1: practice,
  C2: "Condition within 12 months for approval, 30 days for packing (common practice, no source)",
  C3: practice,
  C4: practice,
  U1: "The curator's word in the catalogue",
  U2: "Common practice of handling hazardous preservatives, no source",
  U3: practice,
  U4: practice,
  E1: "Limits of the preparation; each figure names its own source",
  L1: "Limits of the preparation; each figure names its own source",
  W1: "Crate plan and way in, worked out from the stated measures",
  W2: "Crate plan, worked out from the stated measures",
  V1: practice,
  V2: "Replacement cost not older than 12 months (common practice, no source)",
  V3: "Cover from nail to nail for the full replacement cost (policies of lenders, read in part)",
} as const satisfies Record<string, string>;

export type RuleId = keyof typeof ruleSources;
