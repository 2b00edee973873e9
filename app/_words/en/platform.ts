/** Sentences of the platform, in English. */
export const platformWords = {
  refusals: {
    "input.invalid": "Some fields need another look. Nothing has been saved yet.",
    "input.not-storable": "A field holds characters or a number that cannot be kept. Nothing has been saved.",
    "text.not-storable": "This holds a character that cannot be kept. Type it anew.",
    "record.not-found": "There is no such record, or it is not yours to see.",
    "record.append-only": "This entry is part of a record that is never changed; add a new entry instead.",
    "record.busy": "Somebody else was saving the same record. Nothing has been saved; try again.",
    "record.changed-meanwhile":
      "Somebody else changed this record while you were working on it. Look at the new state, then save again.",
    "audit.no-actor": "A change without a person behind it was refused.",
    "permission.act":
      "Your role does not include this act. The person in charge of accounts can tell you who may do it.",
    "permission.sight": "Your role does not include seeing this.",
    "permission.sign-in": "Please sign in again; what you typed is still here.",
    "action.done": "Saved.",
    "api.foreign-origin": "A change has to come from this program's own address.",
    "api.too-large": "The request is larger than one megabyte. Send less at once.",
    "api.not-json": "The request is not JSON.",
    "picture.too-large": "The picture is larger than 15 MB. Save a smaller copy and try again.",
    "picture.unreadable":
      "This file is not a picture that can be read, or it is damaged. Use a JPEG, PNG or WebP file.",
    "currency.three-letters": "Write the currency as three capital letters, for example EUR.",
    "country.two-letters": "Write the country as two capital letters, for example NO.",
    "date.year": "Write a year between 1500 and 2499.",
    "entry.unknown": "This cannot be done.",
  },
} as const;
