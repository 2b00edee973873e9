/** Sentences of the platform, in English. */
export const platformWords = {
  refusals: {
    "input.invalid": "Some fields need another look. Nothing has been saved yet.",
    "input.not-storable": "A field holds characters or a number that cannot be kept. Nothing has been saved.",
    "query.invalid": "This cannot be answered as it is asked. Look at the parameters again.",
    "query.not-storable": "A parameter holds a character that stands in no record.",
    "query.unknown": "There is no such parameter.",
    "query.whole-number": "Write a whole number.",
    "query.flag": "Write true or false.",
    "query.twice": "Give this parameter once.",
    "text.not-storable": "This holds a character that cannot be kept. Type it anew.",
    "command.key-reused":
      "This Idempotency-Key was used for another request before. Take a new key for a new request.",
    "record.not-found": "There is no such record, or it is not yours to see.",
    "record.append-only": "This entry is part of a record that is never changed; add a new entry instead.",
    "answer.fixed": "This was answered already, and an answer is not changed. Ask anew.",
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
    "picture.too-small":
      "The picture is smaller than 200 pixels on its longer side. Too little can be seen on it; use a larger one.",
    "picture.unreadable":
      "This file is not a picture that can be read, or it is damaged. Use a JPEG, PNG or WebP file.",
    "currency.three-letters": "Write the currency as three capital letters, for example EUR.",
    "currency.unknown":
      "There is no money of this code today. Use a code of ISO 4217, for example EUR or GBP.",
    "country.two-letters": "Write the country as two capital letters, for example NO.",
    "country.unknown":
      "There is no country of this code. Use a code of ISO 3166-1: the United Kingdom is GB, Greece is GR.",
    "amount.unreadable": "Write an amount, for example 30000 or 30000.50.",
    "amount.not-whole": "An amount is a whole number of the smallest unit of its currency, such as cents.",
    "amount.nothing": "Write an amount of more than nothing.",
    "amount.too-large": "This amount is larger than can be believed. Check its decimals and its currency.",
    "share.range": "Write a share between 0 and 100 %.",
    "share.up-to-90": "Write a share between 0 and 90 %.",
    "humidity.too-dry": "Write a humidity between 1 and 100 %.",
    "telephone.unreadable":
      "Write a telephone number with digits, for example +47 22 00 00 00 ext 12, or leave other words to the note.",
    "date.year": "Write a year between 1500 and 2499.",
    "date.to-come": "This day is still to come. Write the day on which it happened.",
    "entry.unknown": "This cannot be done.",
  },
} as const;
