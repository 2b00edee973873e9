/** What the rules of lending find, and the ways out, in English. Nothing here says that something is lawful. */

/** Quantities of the room, with the unit in which they are told. */
const quantities = [
  ["temperature", "temperature", " °C"],
  ["temperature-change", "change of temperature in 24 h", " K"],
  ["humidity", "relative humidity", " %"],
  ["humidity-change", "change of humidity in 24 h", " %"],
  ["illuminance", "illuminance", " lx"],
  ["light-of-year", "light of the year, what was taken before included", " lx·h"],
  ["ultraviolet", "ultraviolet", " µW/lm"],
] as const;

function ofQuantity(code: string, name: string, unit: string): [string, string][] {
  const isBand = code === "temperature" || code === "humidity";
  const stated = isBand ? `{statedLow} to {statedHigh}${unit}` : `{statedHigh}${unit}`;
  const clear = isBand ? `{clearLow} to {clearHigh}${unit}` : `up to {clearHigh}${unit}`;
  const bar = isBand ? `{barLow} to {barHigh}${unit}` : `up to {barHigh}${unit}`;
  const Name = `${name[0]?.toUpperCase() ?? ""}${name.slice(1)}`;
  return [
    [`climate.${code}-within`, `${Name}: ${stated}, within ${clear}.`],
    [`climate.${code}-outside-warn`, `${Name}: ${stated}; the specimen wants ${clear}.`],
    [`climate.${code}-outside-alarm`, `${Name}: ${stated}; the specimen bears ${bar}.`],
    [`climate.${code}-over-target`, `${Name}: ${stated}; ${clear} is wanted.`],
    [`climate.${code}-over-limit`, `${Name}: ${stated}; the limit is ${bar}.`],
    [`climate.${code}-not-stated`, `${Name}: the venue has not stated it.`],
    [`climate.${code}-no-common-band`, `${Name}: the specimens have no common range.`],
  ];
}

export const loanFindingWords = {
  facts: {
    "reason.withheld": "The reason is known to the lender and to your registrar.",
    "reason.cost-withheld": "About replacement cost and cover; the figures are kept by the registrar.",
    "reason.person-withheld": "About the donor's person; the donor officer knows the reason.",

    "consent.animal": "An animal specimen ({species}): no donor's consent is asked.",
    "consent.granted": "Consent grants: {scope}.",
    "consent.refused": "Consent refuses: {scope}.",
    "consent.not-asked": "The donor was never asked about: {scope}.",
    "consent.not-known": "It is not known what the donor wished about: {scope}.",
    "consent.audience-within": "The audience ({audience}) lies within the donor's limit ({limit}).",
    "consent.audience-outside": "The donor's limit is {limit}; the request is for {audience}.",
    "consent.audience-not-known": "It is not known to whom the donor wished to be shown.",
    "consent.no-record": "There is no consent on record for this specimen.",
    "consent.no-record-of-one": "{donors} of its donors [donors:has|have] no consent on record.",
    "consent.not-withdrawn": "Consent has not been withdrawn.",
    "consent.withdrawn": "Consent was withdrawn, with effect from {effectiveOn}.",
    "consent.withdrawal-later": "Consent was withdrawn with effect from {effectiveOn}, after the loan.",
    "consent.outlasts-loan": "Consent holds beyond {neededUntil}.",
    "consent.ends": "Consent ends on {validUntil}; it has to hold until {neededUntil}.",
    "consent.review-due": "Consent is to be reviewed by {reviewDueOn}.",
    "consent.territory-within": "The country ({country}) lies within what the donor allowed.",
    "consent.territory-outside": "The country ({country}) lies outside what the donor allowed.",
    "consent.transit-within": "The way leads through {country}, within what the donor allowed.",
    "consent.transit-refused": "The way leads through {country}, and the donor refused that country.",
    "consent.transit-not-listed":
      "The way leads through {country}, which is not among the countries that the donor allowed.",
    "consent.not-commercial": "No admission is charged and nothing is promoted.",
    "consent.paid-display-not-granted": "Admission is charged, and paid display is not granted.",
    "consent.non-commercial-only": "Admission is charged, and the consent is for non-commercial use only.",
    "consent.likeness-not-granted":
      "The display promotes something, and use of the likeness for that is not granted.",
    "consent.no-pictures": "No pictures are planned.",
    "consent.pictures-granted": "Pictures are granted for this use: {picture}.",
    "consent.pictures-refused":
      "Pictures for this use are barred, the donor refused them: {picture}. The loan itself may go on.",
    "consent.pictures-not-known":
      "Pictures for this use are barred, they are not granted: {picture}. The loan itself may go on.",
    "consent.activity-refused":
      "Barred as a use, the donor refused it: {activity}. The loan itself may go on.",
    "consent.activity-not-known":
      "Barred as a use, it is not granted: {activity}. The loan itself may go on.",
    "consent.not-recognisable": "Nobody can be recognised.",
    "consent.identifiable": "A face, a mark or a name makes the person recognisable.",
    "consent.minor": "The donor was young.",
    "consent.foetal": "Foetal material, given by parents.",
    "consent.age-not-known": "It is not known how old the donor was.",
    "consent.recognisable-not-known": "It is not known whether somebody could be recognised.",
    "consent.basis": "Basis of the donation: {basis}.",
    "consent.basis-without-own-word": "The body came without the person's own word: {basis}.",
    "consent.disposition-later": "Final disposition: {disposition}.",
    "consent.disposition-due":
      "Owed to {disposition} by {dueOn}; it has to be home until {neededUntil} at least.",
    "consent.disposition-not-known":
      "It is not known whether and when the specimen is owed back ({disposition}).",
    "consent.claim-pending": "Somebody claims it, or asks for it to come home, and nothing is settled.",
    "consent.composite": "It comes from {donors} donors; the strictest of their limits holds for all of it.",
    "consent.age-of-specimen": "Its age is known as far back as {since}.",
    "consent.age-of-specimen-not-known": "Nobody knows how old the specimen is; it is taken as recent.",
    "consent.style-didactic": "The manner of showing is didactic.",
    "consent.style": "The manner of showing is {style}.",

    "title.owned": "The specimen is the centre's own.",
    "title.no-record": "It is not on record whose the specimen is.",
    "title.no-leave": "It is not the centre's own ({status}), and there is no written leave of its owner.",
    "title.leave": "Its owner, {owner}, has given leave: {reference}.",
    "title.leave-but-unsettled": "Ownership is {status}; leave was given: {reference}.",

    "permits.activity-permitted":
      "The centre's written permission for {activity}: {number}, until {validUntil}.",
    "permits.activity-not-permitted":
      "There is no written permission of the centre on record for {activity}. The loan itself may go on.",
    "permits.activity-permission-days":
      "The written permission {number} for {activity} does not cover all days of the loan.",
    "permits.activity-permission-country":
      "The written permission {number} for {activity} is not for {country}.",

    "free.days": "Free from {from} until {to}.",
    "free.taken": "Somebody else has it on some of the days from {from} until {to}.",
    "free.taken-until":
      "Somebody else has it on some of these days. All days asked for are free from {freeFrom}.",
    "free.lead-time": "{days} [days:day|days] until delivery; {usual} are usual.",
    "free.lead-time-short":
      "Only {days} [days:day|days] until delivery; {usual} are usual for checks, packing and travel.",
    "free.at-home": "It is not out on another loan.",
    "free.notice": "Asked {days} [days:day|days] ahead; {usual} are usual.",
    "free.notice-short": "Asked only {days} [days:day|days] ahead; {usual} are usual for such a loan.",
    "free.length": "It lasts {days} [days:day|days]; up to {usual} are usual.",
    "free.long": "It lasts {days} [days:day|days]; such loans last up to {usual}.",
    "free.too-long": "It lasts {days} [days:day|days]; no loan lasts more than {usual}.",
    "free.not-lent-of-late": "It has not been on loan within a year.",
    "free.rested": "At rest for {days} [days:day|days] since {endedOn}; {needed} are needed.",
    "free.not-rested": "At rest for only {days} [days:day|days] since {endedOn}; {needed} are needed.",
    "free.missing": "It is missing since loan {loan}.",
    "free.overdue": "It is still out on loan {loan}, due back on {dueOn}.",
    "free.away": "It is out on loan {loan} until {dueOn}.",

    "condition.never-checked": "It has never been checked.",
    "condition.grade": "Condition: grade {grade} on {checkedOn}.",
    "condition.grade-poor": "Condition: grade {grade} on {checkedOn}, poor.",
    "condition.grade-signed-off":
      "Condition: grade {grade} on {checkedOn}, poor. The conservator signed it off on {signedOffOn}.",
    "condition.grade-not-acceptable": "Condition: grade {grade} on {checkedOn}, not acceptable.",
    "condition.recent": "Checked on {checkedOn}; that serves until {servesUntil}.",
    "condition.too-old": "The last check, of {checkedOn}, is older than 12 months.",
    "condition.fit": "Fit for what is asked, by the check of {checkedOn}.",
    "condition.unfit": "Not fit to {unfitTo}, by the check of {checkedOn}.",
    "condition.no-unknown-activity": "Every finding has been judged stable or active.",
    "condition.unknown-activity":
      "Nobody has said of {unknown} [unknown:finding whether it is|findings whether they are] active.",

    "use.viewing": "It is viewed and not handled.",
    "use.handling": "It may be handled.",
    "use.viewing-only": "It may be viewed only; the request is for handling.",
    "use.no-hazard": "No hazard stands against this use.",
    "use.hazard-in-hand": "Hazardous substances meet hands: {substances}.",
    "use.no-spill-provision": "The venue has nothing for a spill of {fluid}.",
    "use.spill-not-known": "The venue has not stated what it has for a spill of {fluid}.",
    "use.supervised": "{venue} is a supervised room.",
    "use.not-supervised": "{venue} is not supervised.",
    "use.supervision-not-known": "{venue} has not stated whether it is supervised.",
    "use.open-view": "Human specimens can be seen in {venue} without having chosen to.",
    "use.view-not-known": "{venue} has not stated whether people choose to see human specimens.",
    "use.borrower-known": "The borrower is known and in good standing.",
    "use.borrower-not-verified": "Nobody has verified the borrower yet.",
    "use.borrower-on-hold": "The borrower is on hold: no new loan.",
    "use.no-earlier-loan": "The borrower has had no loan within three years.",
    "use.good-record": "{loans} [loans:loan|loans] within three years, home in time and without damage.",
    "use.record-with-marks":
      "Of {loans} [loans:loan|loans] within three years, {late} came home late; {damaged} [damaged:specimen|specimens] came home damaged.",
    "use.whole-run":
      "A whole run of sheets, {first} to {last}; the series holds {absent} of these numbers not.",
    "use.gaps-in-run": "{left} [left:sheet|sheets] between {first} and {last} would stay behind.",
    "use.run-not-known": "It is not known which sheets the series holds.",
    "use.next-venue":
      "It would go straight on from loan {loan}, due home on {dueOn}; no agreement names a next venue.",
    "use.own-venue": "{venue} is the borrower's own.",
    "use.lending-on": "{venue} belongs to somebody else; that would be lending on.",

    ...Object.fromEntries(quantities.flatMap(([code, name, unit]) => ofQuantity(code, name, unit))),
    "climate.no-report": "{venue} has no facility report with a date.",
    "climate.old-report": "The facility report of {venue} is of {reportedOn}, more than two years old.",

    "light.left": "Light left of the year: {left} of {yearly} lx·h; {spent} lx·h were taken on loans.",
    "light.little-left":
      "Little light is left of the year: {left} of {yearly} lx·h; {spent} lx·h were taken on loans.",
    "light.none-left":
      "No light is left of the year: {spent} lx·h were taken on loans, {yearly} are allowed.",
    "light.spent-not-known": "How much light it took on loans within a year is not known.",

    "way-in.floor-light": "Its crate, {grossMassKg} kg, is as light as what people carry.",
    "way-in.floor-not-known": "What the floor bears is not known; the crate presses with {load} kg/m².",
    "way-in.floor-bears": "The floor bears {floor} kg/m²; the crate presses with {load} kg/m².",
    "way-in.floor-near": "The crate presses with {load} kg/m², near the {floor} kg/m² that the floor bears.",
    "way-in.floor-too-weak": "The crate presses with {load} kg/m²; the floor bears {floor} kg/m².",
    "way-in.passes":
      "Its crate ({lengthMm} × {widthMm} × {heightMm} mm, {grossMassKg} kg) passes the whole way with {spareMm} mm to spare.",
    "way-in.too-narrow":
      "{passage} is too narrow for its crate ({check}): {needed} {unit} are needed, {available} {unit} are there.",
    "way-in.tight":
      "{passage} wants care ({check}): {needed} {unit} are needed, {available} {unit} are there.",
    "way-in.in-this-manner": "Its crate passes {passage} only in this manner: {manner}.",
    "way-in.not-measured": "{passage} has not been measured ({check}); {needed} {unit} are needed.",
    "way-in.slope-not-known": "Nobody has stated how steep {passage} is.",
    "way-in.steep": "{passage} is steep: it rises {slopePercent} %; up to {gentlePercent} % is gentle.",
    "way-in.no-passages":
      "The venue has not described its way in. The crate is {lengthMm} × {widthMm} × {heightMm} mm, {grossMassKg} kg.",
    "way-in.size-not-known": "It has not been measured and weighed, so its crate is not known.",
    "way-in.beyond-tables": "No crate of the tables takes it, so its crate has to be designed by hand.",
    "way-in.crate-holds": "A crate of the list protects it up to {peakG} G.",
    "way-in.no-cushion-holds": "No cushion of the list keeps shocks under {peakG} G.",
    "way-in.crate-topples": "Its crate is tall on a narrow base.",
    "way-in.engineered-base": "Its crate is so heavy that its base has to be designed.",

    "cover.cost-stated": "Replacement cost {minor}, {basis}, stated on {statedOn}.",
    "cover.cost-not-known": "Its replacement cost is not known.",
    "cover.cost-old": "Its replacement cost was stated on {statedOn}, more than 12 months ago.",
    "cover.not-stated": "No cover is stated; {neededMinor} are needed.",
    "cover.stated": "Cover stated: {minor}; {neededMinor} are needed.",
    "cover.certified": "Cover certified: {minor}; {neededMinor} are needed.",
    "cover.too-low": "Cover of {minor} is lower than the {neededMinor} that are needed.",
    "cover.other-currency": "Cover is in {currency}, replacement costs are in {neededCurrency}.",
    "cover.sum-not-known":
      "The replacement cost of {unknown} [unknown:specimen|specimens] is not known, so the sum is not.",
  } as Readonly<Record<string, string>>,

  waysOut: {
    "way.use-within-consent": "Change the use to what the donor allowed, or choose another specimen.",
    "way.ask-oversight": "Ask for the oversight body's word, and record its paper with the decision.",
    "way.ask-donor-officer": "Ask the donor officer.",
    "way.donor-officer-only":
      "It stays here. Only the donor officer can change the record, with evidence; what is out comes home.",
    "way.legacy-path":
      "Ask for the oversight body's word, and keep a provenance file: where it came from, what is known, who was asked.",
    "way.earlier-return": "Choose an earlier return-by, or another specimen.",
    "way.other-venue": "Choose a venue in a country that the donor allowed, or another specimen.",
    "way.other-route": "Choose a way that does not cross this country, or another specimen.",
    "way.other-route-or-ask": "Choose a way that does not cross this country, or ask the donor officer.",
    "way.no-admission-charge":
      "Show it without charging admission, or choose another specimen; check with the local authority.",
    "way.no-promotion": "Leave it out of promotion.",
    "way.without-these-pictures": "Strike these pictures from the request.",
    "way.without-this-activity": "Strike this activity from the request.",
    "way.activity-permission":
      "Have the centre's written permission recorded for all days of the loan, or strike this activity from the request.",
    "way.two-persons": "Have two persons decide, the donor officer and the oversight body's word among them.",
    "way.provenance-file": "Find out when it was prepared or came here, and record it.",
    "way.didactic-only": "Show it didactically; check with the local authority.",
    "way.record-title": "Record whose it is.",
    "way.owners-leave": "Ask the owner for leave in writing, and record it.",
    "way.settle-title": "Settle whose it is; until then the collection manager answers for it.",
    "way.review-on-the-way": "Agree on a review half way, or choose an earlier return-by.",
    "way.talk-to-borrower": "Speak with the borrower about what happened, and agree on conditions.",
    "way.whole-run": "Lend the whole run, or agree which sheets stay behind.",
    "way.state-light": "Have the venues of earlier loans state their light.",
    "way.rest-in-dark": "Let it rest in the dark, or choose another specimen.",
    "way.spread-load":
      "Spread the load on a larger base, choose a room whose floor bears more, or unpack elsewhere.",
    "way.substitute": "Choose another specimen that shows the same.",
    "way.later-or-substitute": "Choose a later day, or another specimen that shows the same.",
    "way.later-start": "Choose a later day of delivery, or agree on a shorter preparation.",
    "way.call-home": "Call the other loan home.",
    "way.watch-return": "Watch the return of the other loan.",
    "way.check-again": "Have it checked.",
    "way.treat-or-substitute": "Have it treated, or choose another specimen.",
    "way.ask-conservator": "Ask the conservator to look at it and sign it off.",
    "way.examine": "Have the findings examined.",
    "way.viewing-only": "Teach by viewing only, or choose another specimen.",
    "way.risk-assessment": "Agree on gloves, air and a risk assessment.",
    "way.spill-tray": "Ask the venue for a tray, ventilation and a spill kit.",
    "way.supervise": "Ask the venue who is in the room whenever specimens are used.",
    "way.content-notice": "Ask for a notice at the entrance and a view that people choose.",
    "way.verify-borrower": "Verify the institution and its signatory once.",
    "way.clear-standing": "Clear what is open with this borrower first.",
    "way.own-venue": "Choose a venue of the borrower, or have the other institution ask for itself.",
    "way.state-venue": "Ask the venue for the figure.",
    "way.less-light": "Dim, filter, or show it for fewer hours or days.",
    "way.case-or-other-room": "Show it in a conditioned case or another room, or choose another season.",
    "way.measure-passage": "Have the passage measured, the clear opening with the leaf open.",
    "way.measure-slope":
      "Measure the ramp's slope with the carrier, and have it stated with the venue's way in.",
    "way.more-hands": "Agree with the carrier on more hands or a winch.",
    "way.measure-specimen": "Measure and weigh it.",
    "way.other-way-in": "Find another way in, or choose another specimen.",
    "way.site-visit": "Look at it on the spot before the crate is built.",
    "way.design-crate": "Have the crate designed by hand, and tested.",
    "way.wider-base": "Put it on a wider base.",
    "way.state-cost": "Have the replacement cost stated.",
    "way.state-cover": "Say what cover there will be.",
    "way.raise-cover": "Raise the cover.",
    "way.one-currency": "State cover in the currency of the replacement costs.",
  },
} as const;
