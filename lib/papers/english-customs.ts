/** What the papers for customs say, in English. */
import type { CustomsWords } from "#lib/papers/customs-words.ts";

export const englishCustoms: CustomsWords = {
  about: {
    "pro-forma invoice": "For customs only. Nothing is sold, and nothing is to be paid on this paper.",
    "carnet list":
      "The goods of a temporary import under a carnet, in the order of its general list. Copied into the form of the issuing chamber.",
  },
  incomplete: {
    lead: "Not complete.",
    codes: "Without a tariff code at both ends: {codes}.",
    values: "Without a value: {values}.",
  },
  sender: "Sender",
  receiver: "Receiver",
  what: "What this is",
  reason: "Reason",
  reasons: {
    out: "Temporary export for a loan. The goods come back: they are to leave the venue by {day}. Purpose of the loan: {purpose}.",
    home: "Return of goods that were lent and taken out for a time. They are the same goods, by the same numbers. Purpose of the loan: {purpose}.",
  },
  noSale: "No sale",
  noSaleText: "The loan changes no ownership, and no price is paid for the specimens.",
  human: "Of human origin",
  humanText:
    "Nos. {numbers}: preserved anatomical specimens of human origin, lent for the purpose above and not for sale.",
  fluid: "Fluids and substances",
  fluidText: "Nos. {numbers}: {fluid}.",
  fluidOther:
    "This paper is no declaration of dangerous goods. Whether one is needed is to be checked with the carrier.",
  permits: "Permits",
  permitsText:
    "Permits under species protection, or under the law on human tissue or cultural goods, go with this paper where they are asked for. Check with the local authority at both ends.",
  goods: "Goods",
  number: "No.",
  accessionNumber: "Accession number",
  description: "Description, marks and numbers",
  crate: "Crate",
  pieces: "Pieces",
  mass: "Net kg",
  origin: "Origin",
  code: "Tariff code",
  value: "Value for customs",
  valueIn: "Value for customs, {currency}",
  notStated: "–",
  total: "All goods",
  totalAtLeast: "All goods, at least: not every value is stated",
  animal: "of an animal, {species}",
  basis: "Basis of the value",
  basisText:
    "Customs asks for a figure. The one given is the replacement cost for cover: what it takes to prepare or to replace, or what was agreed with the owner. It is no price, and says nothing of what a specimen is worth.",
  basisOf: "Nos. {numbers}: {basis}, stated on {day}.",
  codes: "Tariff codes and who decided them",
  codesLead:
    "A code holds for the country that it is decided for. None is taken from the kind of specimen by the program.",
  country: "Country",
  specimens: "Nos.",
  decidedBy: "Decided by",
  decidedOn: "On",
  note: "Note",
  open: "not decided",
  packages: "Packages",
  outer: "Outer size",
  gross: "Gross kg",
  byHand: "To be written by hand",
  fields: {
    "pro-forma invoice": [
      "Importer of record",
      "Sender's customs or tax number",
      "Receiver's customs or tax number",
      "Terms of delivery",
      "Customs office of export",
      "Customs office of import",
    ],
    "carnet list": [
      "Number of the carnet",
      "Issuing chamber",
      "Holder",
      "Represented by",
      "Valid until",
      "Countries and transits (how many vouchers)",
    ],
  },
  carnet: "What holds for a carnet",
  carnetRows: [
    {
      term: "Closed list",
      text: "Once the carnet is issued nothing is added to the list and nothing exchanged. What stays behind is left out of the voucher.",
    },
    {
      term: "Twelve months",
      text: "A carnet lives twelve months at most, and some countries give less. All goods are back before it ends. Check with the issuing chamber.",
    },
    {
      term: "Same goods",
      text: "The goods are known again by accession number, components and pictures. Every crossing is stamped, out and home.",
    },
    {
      term: "Where it serves",
      text: "Whether human specimens may travel under a carnet, and for which purpose, is to be checked with the issuing chamber and the customs of each country.",
    },
  ],
  declaration: "Declaration",
  declared: "The particulars of this paper are true and complete to the best of the sender's knowledge.",
  party: "For the sender",
  signature: "Signature",
  name: "Name",
  place: "Place, day",
};
