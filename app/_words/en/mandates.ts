/** Words of mandates and of signing, in English. */
import type { SignatureMethod } from "#lib/agreements/signing.ts";
import type { MandateAct } from "#lib/people/mandates.ts";

export const mandateWords = {
  title: "Mandates",
  about:
    "Who may sign or decide in the name of a house, up to what cost, and until when. On screen nobody signs an agreement or decides a request without one. What counts is the replacement cost for cover, added up over the specimens of the loan; for a quotation, its total.",
  caption: "Mandates by name",
  none: "No mandate is on record. Until one is, nobody can sign or decide.",
  name: "Name",
  institution: "Institution",
  theHouse: "the house itself",
  acts: "May",
  limit: "Up to",
  noLimit: "any cost",
  from: "From",
  until: "Until",
  untilRevoked: "until revoked",
  reference: "By",
  state: "State",
  counts: "counts",
  toCome: "not yet",
  over: "over",
  revoked: "revoked",
  give: "Give a mandate",
  giveAbout:
    "It rests on a paper of the house that the person signs for: a resolution, a letter of its head. Nobody gives a mandate to themselves, and none is rewritten: revoke it and give a new one.",
  who: "To whom",
  choose: "choose",
  actWords: {
    "sign agreements": "sign agreements",
    "decide requests": "decide requests",
    "accept quotations": "accept quotations",
  } satisfies Record<MandateAct, string>,
  limitHint: "Leave it empty for any cost.",
  currency: "Currency",
  validFrom: "First day",
  validUntil: "First day on which it no longer counts",
  referenceHint: "The paper that says so, with its day.",
  given: "The mandate is on record.",
  revoke: (name: string) => `Revoke the mandate of ${name}`,
  revokeShort: "Revoke",
  revokeFollows: "Nothing is signed under it any more; what was signed stays. It does not come back.",
  recordedBy: (name: string) => `recorded by ${name}`,
  revokeDone: "Revoked. What was signed under it stays signed.",
  refusals: {
    "mandate.none": "You have no mandate for this. Somebody who keeps the mandates can record one.",
    "mandate.not-on-the-day": "Your mandate for this does not count today. See the page of mandates.",
    "mandate.cost-above":
      "Your mandate does not reach the replacement cost of these specimens. Somebody with a wider one has to do it.",
    "mandate.own": "Nobody gives a mandate to themselves.",
    "mandate.no-act": "Tick at least one thing that the person may do.",
    "mandate.period-reversed": "The last day has to lie after the first.",
  },
} as const;

export const signingWords = {
  draw: "Draw your name",
  drawHint:
    "Draw with a finger, a pen or the mouse. Left empty, your name stands as it is typed in your account.",
  drawn: "A name is drawn.",
  clear: "Clear the drawing",
  electronic: "I agree to sign electronically.",
  electronicHint:
    "Whether an electronic signature of this kind suffices is for the house rules of both parties and their counsel. A paper or a file signed elsewhere can stand instead.",
  elsewhere: "A signature given elsewhere",
  elsewhereAbout:
    "A countersigned scan, or a file signed with an outside service. It is kept with its fingerprint and stands as the signature of the party you name. Look at the authority of who signed before you record it.",
  party: "It is the signature of the",
  signerName: "Who signed, by name",
  signerRole: "In what role",
  file: "The signed file",
  fileHint: "PDF, JPEG or PNG, 15 MB at most. It is kept as it is.",
  record: "Record this signature",
  recorded: "The signature is on the file.",
  methods: {
    typed: "typed on screen",
    drawn: "drawn on screen",
    countersigned: "signed elsewhere",
  } satisfies Record<SignatureMethod, string>,
  seeFile: "see the signed file",
  fileHash: "SHA-256 of the file",
  refusals: {
    "agreement.not-electronic":
      "Tick that you agree to sign electronically, or have the paper signed instead.",
    "agreement.strokes-shape": "The drawing could not be read. Clear it and draw again, or leave it empty.",
    "agreement.strokes-too-many": "The drawing has too many strokes. Clear it and draw again.",
    "agreement.file-missing": "Choose the file that was signed.",
    "agreement.file-too-large": "The file is larger than 15 MB.",
    "agreement.file-unknown": "This is no PDF, JPEG or PNG.",
  },
} as const;
