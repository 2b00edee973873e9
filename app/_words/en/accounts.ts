/** Words of the pages of accounts, in English. */
import type { Role } from "#lib/people/viewer.ts";

export const accountsWords = {
  title: "Accounts",
  about:
    "Who signs in, and as what. A role decides what a person may do and see; the house's own people belong to no institution, a borrower to one.",
  caption: "Accounts by name",
  none: "There is no account.",
  newAccount: "New account",
  name: "Name",
  email: "E-mail",
  emailHint: "It is also the name for signing in.",
  roles: "Roles",
  institution: "Institution",
  institutionHint: "For borrowers only.",
  theHouse: "the house itself",
  state: "State",
  open: "open",
  closed: "closed",
  who: "Who it is",
  password: "Password",
  passwordHint:
    "12 characters at least. Hand it over in person or by telephone, never in the same letter as the address.",
  setPassword: "Set this password",
  passwordSet:
    "The password is set. Whoever is signed in stays signed in until closing or twelve hours have passed.",
  passwordAbout:
    "A new password takes the place of the old one at once. The old one cannot be read by anybody.",
  closing: "Closing",
  closingAbout:
    "A closed account cannot sign in, and whoever is signed in with it is signed out at once. What the person did stays on record. It can be opened again.",
  close: "Close the account",
  closeDone: "The account is closed.",
  reopen: "Open the account again",
  reopenDone: "The account is open again.",
  yourOwn: "This is your own account; somebody else has to close it.",
  happened: "What happened",
  save: "Save",
  saved: "Saved.",
  noRole: "Choose one role at least.",
  roleWords: {
    registrar: "registrar: loans from request to close",
    curator: "curator: the catalogue, decisions, checks",
    conservator: "conservator: condition, preparation, crates",
    "collection manager": "collection manager: the catalogue, decisions, settings",
    "donor officer": "donor officer: donors, consents, the sealed record",
    inspector: "inspector: reads, changes nothing",
    administrator: "administrator: accounts and settings, no donor facts",
    lecturer: "lecturer of a borrower: finds, asks, follows",
    "borrower registrar": "registrar of a borrower: signs, states facility facts",
  } satisfies Record<Role, string>,
  refusals: {
    "account.password-needed": "A new account needs a password of 12 characters at least.",
    "account.password-short": "A password has 12 characters at least.",
  },
} as const;
