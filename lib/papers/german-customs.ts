/** What the papers for customs say, in German. */
import type { CustomsWords } from "#lib/papers/customs-words.ts";

export const germanCustoms: CustomsWords = {
  about: {
    "pro-forma invoice":
      "Nur für den Zoll. Nichts wird verkauft, und auf dieses Papier ist nichts zu zahlen.",
    "carnet list":
      "Die Waren einer vorübergehenden Verwendung mit Carnet, in der Ordnung seiner allgemeinen Liste. In das Formular der ausgebenden Kammer zu übertragen.",
  },
  incomplete: {
    lead: "Nicht vollständig.",
    codes: "Ohne Zolltarifnummer an beiden Enden: {codes}.",
    values: "Ohne Wert: {values}.",
  },
  sender: "Absender",
  receiver: "Empfänger",
  what: "Worum es geht",
  reason: "Grund",
  reasons: {
    out: "Vorübergehende Ausfuhr für eine Leihe. Die Waren kommen zurück: Sie sollen den Ort bis zum {day} verlassen. Zweck der Leihe: {purpose}.",
    home: "Rückkehr von Waren, die verliehen und auf Zeit ausgeführt waren. Es sind dieselben Waren mit denselben Nummern. Zweck der Leihe: {purpose}.",
  },
  noSale: "Kein Verkauf",
  noSaleText: "Die Leihe ändert kein Eigentum, und für die Präparate wird kein Preis bezahlt.",
  human: "Menschlicher Herkunft",
  humanText:
    "Nr. {numbers}: konservierte anatomische Präparate menschlicher Herkunft, für den genannten Zweck verliehen und unverkäuflich.",
  fluid: "Flüssigkeiten und Stoffe",
  fluidText: "Nr. {numbers}: {fluid}.",
  fluidOther:
    "Dieses Papier ist keine Gefahrguterklärung. Ob eine nötig ist, ist beim Frachtführer zu erfragen.",
  permits: "Genehmigungen",
  permitsText:
    "Genehmigungen nach dem Artenschutz oder nach dem Recht über menschliches Gewebe oder Kulturgut gehen mit diesem Papier, wo sie verlangt werden. An beiden Enden bei der örtlichen Behörde erfragen.",
  goods: "Waren",
  number: "Nr.",
  accessionNumber: "Zugangsnummer",
  description: "Beschreibung, Zeichen und Nummern",
  crate: "Kiste",
  pieces: "Anzahl",
  mass: "Netto kg",
  origin: "Ursprung",
  code: "Zolltarifnummer",
  value: "Zollwert",
  valueIn: "Zollwert, {currency}",
  notStated: "–",
  total: "Alle Waren",
  totalAtLeast: "Alle Waren, mindestens: nicht jeder Wert ist angegeben",
  animal: "vom Tier, {species}",
  basis: "Grundlage des Wertes",
  basisText:
    "Der Zoll verlangt eine Zahl. Angegeben sind die Ersatzkosten für die Deckung: was die Herstellung oder der Ersatz kostet oder was mit der Eigentümerseite vereinbart ist. Sie sind kein Preis und sagen nichts darüber, was ein Präparat wert ist.",
  basisOf: "Nr. {numbers}: {basis}, angegeben am {day}.",
  codes: "Zolltarifnummern und wer sie bestimmt hat",
  codesLead:
    "Eine Nummer gilt für das Land, für das sie bestimmt ist. Keine hat das Programm aus der Art des Präparats abgeleitet.",
  country: "Land",
  specimens: "Nr.",
  decidedBy: "Bestimmt von",
  decidedOn: "Am",
  note: "Anmerkung",
  open: "nicht bestimmt",
  packages: "Packstücke",
  outer: "Außenmaße",
  gross: "Brutto kg",
  byHand: "Von Hand einzutragen",
  fields: {
    "pro-forma invoice": [
      "Einführer",
      "Zoll- oder Steuernummer des Absenders",
      "Zoll- oder Steuernummer des Empfängers",
      "Lieferbedingung",
      "Ausfuhrzollstelle",
      "Einfuhrzollstelle",
    ],
    "carnet list": [
      "Nummer des Carnets",
      "Ausgebende Kammer",
      "Inhaberin oder Inhaber",
      "Vertreten durch",
      "Gültig bis",
      "Länder und Durchfuhren (wie viele Blätter)",
    ],
  },
  carnet: "Was für ein Carnet gilt",
  carnetRows: [
    {
      term: "Geschlossene Liste",
      text: "Ist das Carnet ausgegeben, kommt nichts auf die Liste hinzu, und nichts wird getauscht. Was zurückbleibt, wird auf dem Blatt ausgelassen.",
    },
    {
      term: "Zwölf Monate",
      text: "Ein Carnet gilt höchstens zwölf Monate, und manche Länder geben weniger. Alle Waren sind vorher zurück. Bei der ausgebenden Kammer erfragen.",
    },
    {
      term: "Dieselben Waren",
      text: "Die Waren werden an Zugangsnummer, Bestandteilen und Bildern wiedererkannt. Jeder Übertritt wird gestempelt, hin und heim.",
    },
    {
      term: "Wozu es dient",
      text: "Ob Präparate vom Menschen mit einem Carnet reisen dürfen, und zu welchem Zweck, ist bei der ausgebenden Kammer und beim Zoll jedes Landes zu erfragen.",
    },
  ],
  declaration: "Erklärung",
  declared: "Die Angaben dieses Papiers sind nach bestem Wissen des Absenders wahr und vollständig.",
  party: "Für den Absender",
  signature: "Unterschrift",
  name: "Name",
  place: "Ort und Tag",
};
