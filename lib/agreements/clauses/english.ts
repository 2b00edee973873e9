/**
 * The clauses in English. Each says who does what, by when, and what follows
 * otherwise. Texts that touch law name the kind of instrument and leave the answer
 * to the local authority. A house draft in plain words, and no legal advice.
 */
import { englishWords } from "#lib/agreements/clauses/english-words.ts";
import type { ClauseLanguage } from "#lib/agreements/clauses/language.ts";

export const english: ClauseLanguage = {
  locale: "en-GB",
  clauses: {
    parties: {
      heading: "Parties and signatories",
      text: "The lender is {lender}, {lenderAddress} (register: {lenderRegister}); {lenderSigner} signs for it and it is reached at any hour under {lenderEmergency}. The borrower is {borrower}, {borrowerAddress} (register: {borrowerRegister}); {borrowerSigner} signs for it and it is reached at any hour under {borrowerEmergency}. The contact for this loan is {contact}. Each party answers for the authority of whoever signs for it and tells the other on the same day when a name or a number changes; until then what is sent to the old one counts as received.",
    },
    precedence: {
      heading: "What the agreement is made of",
      text: "The agreement consists of the conditions of the decision, these clauses, the schedule and the annexes. Where they differ, {precedence}. Where a version is in two languages, the text in {rulingLanguage} rules. What is said outside the agreement binds neither party until both have signed it as an amendment.",
    },
    specimens: {
      heading: "Specimens",
      text: "The lender lends {specimenCount|specimen|specimens} with {componentCount|component|components}, named one by one in annex A by accession number, size, mass, picture and last check. Both parties count specimens, sheets and components at every hand-over. Whoever finds one missing says so before signing the receipt; without such a word the count of the receipt stands.",
    },
    ownership: {
      heading: "Ownership",
      text: "Ownership stays where it is; only custody changes, and only for the term. The borrower does not sell, pledge, keep back or lend on a specimen, and tells the lender at once when a creditor or an authority lays a hand on one. An act against this clause has no effect on the lender and lets it recall the loan at once.",
    },
    "human-material": {
      heading: "Human material",
      text: "Human specimens come from people. They are neither goods nor waste, and no insurer or carrier gains a claim to them. During the whole loan the borrower treats them with respect, has others do the same, and keeps to these words in all texts and talks: {wordsToUse}. It avoids: {wordsToAvoid}. A text that does otherwise is withdrawn when the lender asks; if it is not, clause 14 applies.",
    },
    purpose: {
      heading: "Purpose",
      text: "The borrower uses the specimens for {purpose} only, under the title “{title}”, for {audience}, {admission} ({priceClass}), in a manner that is {style}. Another use, audience or price needs the lender's consent in writing before it begins. A use without it ends at once, and the lender may recall the specimens.",
    },
    consent: {
      heading: "What the donors allowed",
      text: "The lender states, as far as its records go, that the purpose lies within what the donors allowed; limits for single specimens stand in annex H. Countries: {consentCountries}. Last day that consent covers: {consentEndsOn}. The borrower uses the specimens within these limits only and answers for its own use. It may inspect the evidence, without names, at {evidencePlace}, with {evidenceNoticeDays|day's|days'} notice. A use beyond the limits ends at once and is told to the lender the same day. Whether a statute on human tissue or on burial at the venue asks for more: check with the local authority.",
    },
    withdrawal: {
      heading: "Withdrawn consent and new claims",
      text: "If a consent is withdrawn, or a family, a community or an authority makes a claim, the party that learns of it tells the other at once. The borrower takes the specimen from view and use within {stopDisplayHours|hour|hours}, keeps it safe, and has it ready for collection within {withdrawalReturnDays|day|days}. Costs of this: {withdrawalCosts}. Neither party claims damages for the early end. If the borrower does not act in time, the lender may remove the specimen itself.",
    },
    anonymity: {
      heading: "Donors stay unknown",
      text: "Nobody on the borrower's side tries to find out who a donor was, publishes what could tell it, or takes a close picture of a face or of a mark on the skin. Whoever believes that they have recognised a person tells only {anonymityContact}, on the same day. What has been published against this clause is taken down at once, and the lender may recall the specimen.",
    },
    licences: {
      heading: "Licences of the borrower",
      text: "Where the place asks for a licence to keep, teach with or show human material, the borrower holds it for {venue} during the whole term and names {responsiblePerson} as the responsible person. Licences stated so far: {licencesHeld}. The borrower sends a copy of each before {licenceProofBy} and tells the lender within a day when one lapses; without a valid one the specimens are taken from view and nothing leaves the lender. Which licence an anatomy or human tissue statute asks for: check with the local authority.",
    },
    term: {
      heading: "Term",
      text: "The loan begins with delivery on {startsOn} and ends when the specimens have left the venue, by {returnBy} at the latest. Opening day or first day of use: {opensOn}. The lender delivers within {deliveryWindowDays|day|days} before it; the borrower has the specimens ready for collection within {collectionDays|day|days} after the last day of use. The lender keeps {daysBefore|day|days} before and {daysAfter|day|days} after the term for checks, packing, travel and rest. After {graceDays|day|days} of grace a late return counts as a breach, and the borrower bears what it costs.",
    },
    venue: {
      heading: "Venue and rooms",
      text: "The specimens stay at {venue}, {venueAddress}, in these rooms: {rooms}. The borrower asks {moveConsentDays|day|days} before a move to another room or building; it moves nothing before the lender has consented in writing, but for immediate danger. After a move without consent the specimens go back to their room or, if the lender asks, home.",
    },
    extension: {
      heading: "Extension",
      text: "The borrower asks for an extension in writing at least {extensionRequestDays|day|days} before the end. The lender checks cover, consent, licences, condition, light received and the next booking again and answers within {extensionAnswerDays|day|days}. Without a written yes the loan ends as agreed. No loan lasts longer than {loanMaxMonths|month|months} in all.",
    },
    recall: {
      heading: "Recall and early return",
      text: "The lender may recall a specimen at once when a term is broken, when it is in danger or when an authority asks for it; the borrower then has it ready within {recallAtOnceDays|day|days}. For its own need the lender recalls with {recallDays|day's|days'} notice, and the costs of that are borne by {recallCosts}. The borrower may return early with the same notice, at its own cost. If a specimen is not ready in time, the lender may fetch it at the borrower's cost. Nothing ever bars the way home.",
    },
    costs: {
      heading: "Costs",
      text: "Preparation and checks are borne by {costOfPreparation}; packing and crates by {costOfPacking}; transport both ways by {costOfTransport}; cover by {costOfCover}; permits and customs by {costOfPermits}; couriers by {costOfCourier}; display and its dismantling by {costOfDisplay}. Costs are stated in {currency}, agreed in writing before they arise, listed in annex I, and paid within {paymentDays|day|days} of the invoice. An unpaid cost lets the lender hold back dispatch, never the way home.",
    },
    fee: {
      heading: "Fee",
      text: "Agreed charges: {fee}, in {feeInstalments|instalment|instalments}, the last one paid {feeDays|day|days} before dispatch. For human material all charges recover costs; nothing is paid for the remains, and the borrower makes no profit from them beyond its own costs. Unless they are paid on time, dispatch waits.",
    },
    "replacement-cost": {
      heading: "Replacement cost for cover",
      text: "Annex A states for each specimen what it would cost to prepare or replace it. What the rows come to: {coverNeeded} ({coverSum}). It is a basis for cover and says nothing of worth. The lender looks at it again when the loan lasts longer than {revaluationMonths|month|months}, and the borrower adapts the cover within a month of being told; until it has, it answers for the difference.",
    },
    cover: {
      heading: "Cover",
      text: "Kind of cover: {coverKind}. It holds against all risks, from the moment a specimen leaves its place until it is back in it, transit and stay included, for at least the replacement cost, in: {coverCountries}. Deductible at most {deductible} {currency}, borne by the borrower. Left out at most: {coverExclusions}. Payee of a loss: {lossPayee}. Recourse against the other party: {subrogation}. The lender holds the certificate {certificateDays|day|days} before dispatch; without it, or for an hour that is not covered, nothing leaves.",
    },
    care: {
      heading: "Care and liability",
      text: "From receipt until the carrier takes the crates over, the borrower cares for the specimens as for the best of its own and answers for loss and damage whoever caused it, {liabilityCap}. It does not answer for a fault of the lender or for hidden defects. Where a force beyond control hinders a party, it tells the other within {forceMajeureHours|hour|hours} and does what it can for the specimens; otherwise it cannot rely on it.",
    },
    "total-loss": {
      heading: "If a human specimen is destroyed",
      text: "What remains of a human specimen goes back to the lender within {remainsDays|day|days} after the cause has been looked into. It is no salvage: no insurer takes it, nobody sells it, and nobody but the lender decides on burial or cremation. The borrower writes this into its cover; if it has not, it bears what it takes to bring the remains home.",
    },
    condition: {
      heading: "Checks of condition",
      text: "Each specimen is checked four times: before it leaves, after unpacking at the venue, before packing for home, and at home. The check at the venue is made and sent within {checkHours|hour|hours} of opening the crate, with at least {photographCount|picture|pictures} of each specimen, dated and signed by both parties or their couriers. Whoever says nothing against a check within {silenceHours|hour|hours} of receiving it accepts it. A change that no check of the borrower names counts as having happened in its custody. The checks are annex B.",
    },
    "no-alteration": {
      heading: "Nothing is altered",
      text: "The borrower does not clean, treat, cast, scan, take apart, re-mount or pose a specimen anew without consent in writing. Allowed for all specimens of this loan: {activities}; the written permission says what and how. The lender answers a request within {alterationAnswerDays|day|days}; silence is a no. What keeps a specimen from immediate harm may be done and is told within {stabilisingHours|hour|hours}. Otherwise the borrower bears the cost of putting things right, and the lender may recall.",
    },
    sampling: {
      heading: "Sampling and genetic analysis",
      text: "{samplingAllowed} Permission: {samplePermit}. No genetic analysis is made of human material. Results and what is left of a sample go to the lender within {resultDays|day|days}. A sample that was taken otherwise is handed over at once, its data is erased, and the lender may recall. Whether a statute on human tissue or on genetic testing asks for more: check with the local authority.",
    },
    environment: {
      heading: "Air and light",
      text: "While the specimens are with the borrower it keeps, for all of them together, {temperatureLowC}–{temperatureHighC} °C with at most {temperatureChangeK} K change in 24 hours, {humidityLowPercent}–{humidityHighPercent} % relative humidity with at most {humidityChangePercent} % change in 24 hours, at most {illuminanceLx} lx, {lightLxHours} lx·h in a year and {uvMicrowattPerLumen} µW/lm of ultraviolet; annex D states the limits of each group. Air: {pollutants}. Shocks: {vibration}. It records at least every {loggingMinutes|minute|minutes} and sends the record every {environmentReportDays|day|days}. It reports within {excursionHours|hour|hours} when a limit is passed or the record has a gap of more than {gapHours|hour|hours}. If the limits are not kept again by the day agreed, the specimens leave view and the lender may recall.",
    },
    display: {
      heading: "Display",
      text: "Each specimen stands as the lender has approved, behind a {protection} with at least {barrierMm} mm distance, on a mount the lender accepts and a floor that bears the heaviest of {heaviestKg} kg, away from daylight, heat and draught. Human specimens have {restrictedRoom} and a notice {noticePlace} that says that they are from donors, asks for respect, and advises an age of {minimumAge} or above. The borrower sends plan and mounts {displayApprovalDays|day|days} before the opening. What is not approved does not open, or is changed before it stays open.",
    },
    handling: {
      heading: "Handling",
      text: "Only people who were trained within the last {trainingMonths|month|months} lift, turn or unpack a specimen: at least {handlersLeast|person|persons}, with {gloves}, at the lifting points that annex J names. The borrower keeps the record of training and shows it when asked. Without trained people a crate stays closed until the lender sends some at the borrower's cost.",
    },
    teaching: {
      heading: "Use in teaching",
      text: "In teaching, {teachingUse}. {supervisor}, or a teacher named by them in writing, is present whenever learners are with a specimen; at most {groupMost|learner|learners} at a time, seated where specimens are handled. No learner is alone with a specimen, no specimen leaves the room, and each day of use stands in a list that the lender receives at the end. A session that breaks this rule ends; after a second one the lender may recall.",
    },
    security: {
      heading: "Security and fire",
      text: "Day and night the borrower keeps the rooms locked when nobody is in charge of them, fire detected, extinguishers at hand that do not harm specimens, and entry alarmed. At night: {nightWatch}. At most {keyHoldersMost|person holds|persons hold} keys, each named in a list. A fault is covered by a guard within the hour and told to the lender on the same day; otherwise the specimens go into a locked store.",
    },
    jars: {
      heading: "Jars with fluid",
      text: "Jars hold: {fluids}. The borrower keeps them upright and closed, above a tray for {trayPercent} % of their fluid, in a ventilated room without flame or spark, with the safety data sheet, gloves, absorbent and a closing vessel at hand. It looks at level, colour and seal every {jarCheckDays|day|days} and tells the lender the same day when a level falls. A leaking jar goes into the closing vessel at once, and nobody fills it up without the lender's word.",
    },
    packing: {
      heading: "Packing",
      text: "Packing for the way home is done by {packer}, in the lender's crates, with the same materials and in the same order as annex F shows. Empty crates stay closed, complete and clean at {crateLowC}–{crateHighC} °C and {crateHumidityLowPercent}–{crateHumidityHighPercent} % relative humidity, beside each other and free of pests. What is missing is told within a day and replaced before packing at the cost of whoever kept it; nothing travels in other packing without the lender's consent.",
    },
    transport: {
      heading: "Transport",
      text: "Carriers: {carriers}. The specimens travel by {transportMode}, in a vehicle with air suspension and a controlled load space whose temperature is recorded, with at least {driversLeast|driver|drivers}, locked or attended at every moment. Change of vehicle: {transshipment}. The borrower proposes carrier and route {transportApprovalDays|day|days} before departure; the lender approves them in writing, and annex E holds them. Without approval nothing is handed over, and a carrier that departs from the route is stopped at the next safe place.",
    },
    courier: {
      heading: "Courier",
      text: "The lender's courier: {courier}. A courier may stop loading, unpacking and placing until a danger is met, and signs the checks for the lender. For a courier who travels, {courierClass}, {courierNights|night|nights} and {courierPerDay} {currency} a day are provided, and clause 15 says by whom. The parties ask first whether the journey is needed. A crate that a courier is to attend stays closed until they are there or have joined by video.",
    },
    border: {
      heading: "Customs and permits",
      text: "The specimens go from {borderFrom} to {borderTo} for a time and come back. Importer of record: {importer}. Basis: {customsBasis}. Each party obtains the papers of its own country {permitDays|day|days} before dispatch and tells the other their numbers; the importer shows within {dischargeDays|day|days} of the return that the temporary stay has been discharged. Without a paper nothing leaves; duties of a stay that was not discharged are borne by the importer. Which customs, health or cultural-goods instruments apply: check with the local authority.",
    },
    immunity: {
      heading: "Immunity from seizure and return guarantee",
      text: "A statute on immunity from seizure or a state's promise of return: {immunity}. Where it is asked for, the borrower applies {immunityMonths|month|months} before dispatch and sends the answer at once. If it is refused, the lender may withdraw the specimens without cost to itself. Whether such an instrument exists and what it protects: check with the local authority.",
    },
    receipt: {
      heading: "Receipt and rest",
      text: "On arrival the borrower counts the crates, looks at seals and outsides, and confirms receipt within {receiptHours|hour|hours}, with remarks and pictures of anything unusual. Crates rest closed in the room for at least {restHours|hour|hours}, and until the moment that the program states if that is later. After opening, specimens and components are counted and a second receipt is signed. A crate that was opened early is told to the lender, and what damp has done to it is the borrower's to answer for.",
    },
    access: {
      heading: "Monitoring and access",
      text: "The lender may see the specimens, the rooms and the records with {inspectionDays|day's|days'} notice, and at once when there is danger. The borrower sends records of air and light within {recordHours|hour|hours} of being asked and tells in good time of building works, events and changes of staff near the specimens. If access is refused, the lender may recall at once.",
    },
    incident: {
      heading: "Incidents",
      text: "When something happens, the borrower makes people and specimen safe, repairs nothing, keeps all parts and all records, takes pictures for the lender, and calls {lenderEmergency} at once. It writes within {incidentDays|working day|working days} and reports in full within {incidentReportDays|working day|working days}: when, where, who, what, the state before, the measures, whom it told. It helps with the claim to the insurer. What is not reported in time counts as having happened in its custody and by its fault.",
    },
    emergency: {
      heading: "Emergencies",
      text: "The borrower has a written plan for fire, water, theft and unrest, takes the specimens up in it, and sends the page that concerns them {emergencyPlanDays|day|days} before delivery. Order of salvage: {salvageOrder}. People go first. Annex J lies with the specimens. Without a plan the specimens stay in their crates until there is one.",
    },
    pictures: {
      heading: "Pictures, film and scans",
      text: "Allowed: {pictures}. Pictures by visitors: {visitorPictures}; the borrower puts up a notice and sees that it is kept. Three-dimensional data: {threeDimensional}. For everything else the borrower asks in writing, and the lender answers within {pictureAnswerDays|day|days}; silence is a no. Pictures of human specimens are treated like the specimens themselves. What was made without leave is handed over and taken down at once.",
    },
    credit: {
      heading: "Credit and texts",
      text: "Every showing and every publication carries the credit “{creditLine}”. The borrower sends labels and texts about human specimens {labelApprovalDays|day|days} before they are printed or posted, and the lender answers in half that time. Thanks to the donors, as annex K words them: {acknowledgement}. A text that was not approved is taken down until it is.",
    },
    publications: {
      heading: "Publications and reports",
      text: "The borrower sends the lender {copies|copy|copies} of each publication that shows a specimen, and within {attendanceDays|day|days} after the end a short report: days and numbers of visitors or learners, remarks on condition, objections, what was learned. Until the report has come, the lender need not consider another request.",
    },
    promotion: {
      heading: "Promotion and merchandise",
      text: "Use of human specimens or their likeness in advertising, on merchandise or as decoration: {promotion}. The borrower binds its sponsors and partners to the same. What appears against this clause is withdrawn within a day at the borrower's cost; otherwise the lender may recall.",
    },
    objections: {
      heading: "Complaints and requests of communities",
      text: "An objection to the showing of a human specimen, or a request to remove it, is received with respect, answered, and told to the lender within {objectionHours|hour|hours}. The parties decide on it together within {objectionReviewDays|day|days}; until then the borrower takes the specimen from view when a family or a community of origin asks for it. If they do not agree, the lender decides.",
    },
    confidentiality: {
      heading: "Confidence and data protection",
      text: "Facility reports, replacement costs, routes, contacts and whatever is known of donors are used for this loan only, shown only to those who need them, and erased {retentionMonths|month|months} after the end, but for what must be kept. A loss or a leak is told to {dataContact} within {breachHours|hour|hours}. Whoever passes data on otherwise bears the damage. What a statute on data protection asks for, for the living and for the dead: check with the local authority.",
    },
    cancellation: {
      heading: "Cancellation",
      text: "Either party may cancel in writing until dispatch. A borrower that cancels pays the costs that have arisen and are agreed; if these are lower, at least {cancelEarlyPercent} % of the agreed charges from {cancelEarlyDays|day|days} before dispatch and {cancelLatePercent} % from {cancelLateDays|day|days} before. A lender that cancels bears its own costs. Nothing is owed where consent, an authority or a force beyond control is the ground.",
    },
    breach: {
      heading: "Breach, termination and insolvency",
      text: "A party that breaks a term mends it within {cureDays|day|days} of being asked. If it does not, or if the borrower can no longer pay, the other may end the agreement; the lender may then enter the venue with notice, fetch the specimens and deal with carriers directly. The borrower secures the cost of the way home before dispatch with a deposit of {deposit} {currency}, which the lender returns when the last specimen is checked in. In insolvency the specimens are no part of the estate.",
    },
    changes: {
      heading: "Substitution and amendments",
      text: "A change, an added or exchanged specimen included, is a numbered amendment: a new version of the terms that names the version it amends and what differs. Both parties sign it within {amendmentDays|day|days}; until both have, the last version signed by both holds. What is done on an unsigned change is done at the risk of whoever does it.",
    },
    law: {
      heading: "Law, place and disputes",
      text: "The law of {lawCountry} applies as far as the parties may choose it. They talk for {negotiationDays|day|days} from the day one of them names a dispute. After that: {disputePath}, at {court}. The text in {rulingLanguage} rules. A dispute never delays the way home. Whether a mandatory rule of another place comes first: check with the local authority.",
    },
    signature: {
      heading: "Form of signature",
      text: "Both parties sign {signatureForm}, in {counterparts|counterpart|counterparts}, at least {signedDays|day|days} before dispatch. A signature holds name, role, time, language and the SHA-256 of the terms; a signed version never changes. A party whose house asks for another form says so before it signs. Without both signatures nothing leaves. What an instrument on electronic signatures asks for: check with the local authority.",
    },
    disposition: {
      heading: "Specimens that are owed back",
      text: "Some specimens are owed to burial, cremation, a family or a community; the earliest of these days is {dispositionDueOn}. The borrower has them on their way home at least {dispositionMarginDays|day|days} before it, and {dispositionBy} carries out what was promised. No extension goes beyond this. If they are late, the lender fetches them at once at the borrower's cost. What a statute on burial or anatomy asks for: check with the local authority.",
    },
    animals: {
      heading: "Animal material",
      text: "The lender states these papers of species protection, veterinary control and collecting: {animalPapers}. The borrower obtains what its own country asks for, sends copies {animalPaperDays|day|days} before dispatch, keeps all of them with the specimens and shows them when asked. Without them the animal specimens stay where they are. What the convention on trade in endangered species and the statutes on species, veterinary control and hunting ask for: check with the local authority.",
    },
    sustainability: {
      heading: "Sustainability",
      text: "For every choice of air, transport and crates the parties take the way that burdens the environment least and still keeps the specimens safe: {crateReuse}, loads that are shared, couriers by video where that is enough, wide bands of air where annex D allows them. The borrower proposes its choices {sustainabilityDays|day|days} before packing. If the parties do not agree, the safety of the specimens decides.",
    },
  },
  ...englishWords,
};
