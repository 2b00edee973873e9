/** Sentences of lending in English: refusals, gates and what to do next. What the rules find stands beside this file. */
export const loansWords = {
  refusals: {
    "loan.period-reversed": "The return-by has to lie after the day of delivery.",
    "loan.too-long":
      "A loan runs for three years at most, and is renewed after that. Choose an earlier return-by.",
    "loan.opens-outside":
      "The opening lies within the loan: not before the day of delivery, and before the return-by.",
    "loan.facts-not-confirmed":
      "Look through what is kept of your institution and the venue, and tick that it still holds. Without that the request cannot be submitted.",
    "loan.slip-in-hand":
      "You are gathering a slip already, {number}. Submit it or empty it first, then ask again like last time.",
    "loan.nothing-free": "None of its specimens is free from {from} to {to}. Choose another day of delivery.",
    "loan.starts-in-past": "The day of delivery has to lie ahead.",
    "loan.starts-too-soon":
      "The earliest possible day of delivery is {earliest}: the days before it are kept for checks, packing and travel.",
    "loan.starts-too-late":
      "Nobody can promise a specimen more than five years ahead. Choose an earlier day of delivery.",
    "loan.another-start": "Choose another day of delivery.",
    "loan.tick-what-goes": "Tick what goes home.",
    "loan.borrower-missing": "Say which institution borrows.",
    "loan.no-venue": "{borrower} has no venue yet. Describe the venue first, then ask for specimens.",
    "loan.no-specimens": "There is no specimen on it yet. Put at least one on the slip.",
    "loan.already-on-it": "The specimen is on this loan already.",
    "loan.was-withdrawn":
      "{specimen} was taken off this loan and does not come back to it. Open another loan for it.",
    "loan.not-now": "This is not possible while the loan is “{state}”.",
    "loan.move-not-allowed": "A specimen cannot pass from where it is to where this would put it.",
    "loan.line-starts-noted": "A specimen comes onto a loan by being noted on its slip.",
    "loan.line-kept": "What was asked for stays on record; withdraw it instead.",
    "loan.line-fixed": "A line belongs to one loan and one specimen for good.",
    "loan.gate-fails": "Nothing leaves yet. {gate}: {fact}",
    "loan.nothing-to-send-home": "Nothing of this loan is at the venue or on its way there.",
    "loan.nothing-to-count": "No crate of this loan is waiting to be opened and counted.",
    "loan.still-open": "The loan stays open: {specimens}. Close it when these are checked in.",
    "decision.recused":
      "You have recused yourself as {office} on this loan. Somebody else speaks in that office.",
    "decision.no-specimen": "A specimen that you ticked is not asked for any more. Look at the list again.",
    "decision.not-your-office": "Your role does not speak for the {office}.",
    "decision.reference-missing": "Name the paper in which the oversight body gives its word.",
    "decision.not-submitted":
      "{specimens} was noted after the request was submitted. Submit it again or take it off, then decide.",
    "decision.office-missing": "The {office} has to accept first.",
    "decision.same-person":
      "Two persons decide here. One account spoke as {office}; another one decides as curator.",
    "decision.nothing-to-sign-off":
      "The request is decided, and no specimen of it waits for the conservator's word.",
    "decision.barred":
      "{specimen} is barred, so the request cannot be accepted as it stands. {fact} {wayOut}",
    "agreement.barred": "{specimen} is barred, so nothing can be agreed. {fact} {wayOut}",
    "agreement.unchanged":
      "Version {version} already says exactly this. A new version is drawn up when something has changed.",
    "agreement.other-terms":
      "These are not the terms that were shown. Open the agreement again, read it, then sign.",
    "agreement.other-format":
      "This version was drawn up in an earlier form ({format}) that this program no longer prints. Its text and its hash are kept, and a new version may be drawn up.",
    "agreement.superseded": "A newer version has been drawn up. Open it, read it, then sign.",
    "agreement.already-signed": "This party has signed this version already.",
    "agreement.same-signer": "One person cannot sign for both parties.",
    "agreement.version-taken": "Somebody else drew up a version at the same moment. Look at it first.",
    "agreement.hash-shape": "This is not the fingerprint of an agreement.",
    "cover.period-reversed": "Cover has to end after it begins.",
    "cover.already-recorded": "This certificate is on record already.",
    "loan.verdict-missing": "A specimen is checked in with a verdict: say what the check at home came to.",
    "loan.verdict-fixed": "The verdict of a check-in stays as it was given.",
    "check-in.not-home": "{specimen} is “{state}”. It is checked in when it rests at home.",
    "check-in.not-counted": "{specimen} has not been counted yet. Open its crate and count the return first.",
    "check-in.no-check-home":
      "Record the check at home of {specimen} first; it stands beside the one before it left.",
    "check-in.no-check-out":
      "There is no check of {specimen} from before it left, so nothing can be compared. Record one from the papers.",
    "check-in.verdict-differs":
      "The checks of {specimen} differ: {new} new, {worse} worse. The verdict cannot be “no change”.",
  },
  gates: {
    "gate.not-kept": "No days are kept for {specimen}.",
    "gate.kept-later":
      "{specimen} is kept for this loan from {from} on, and not today, {today}. Let it go then, or plan the way out from today on.",
    "gate.kept-until":
      "{specimen} is kept for this loan until {until} only, and the way out lasts longer. Plan it anew.",
    "gate.kept": "Kept for this loan from {from} until {until}.",
    "gate.finding": "{specimen}: {fact}",
    "gate.nothing-to-release": "There is nothing to release.",
    "gate.no-agreement": "No agreement has been drawn up.",
    "gate.not-signed": "Version {version} is not signed by the {party}.",
    "gate.other-schedule":
      "Version {version} of the agreement names other specimens: {numbers}. Draw up a new version.",
    "gate.signed-by-both": "Version {version} is signed by both.",
    "gate.cost-not-known": "The replacement cost of {specimens} [specimens:specimen|specimens] is not known.",
    "gate.several-currencies": "Replacement costs stand in several currencies: {currencies}.",
    "gate.cover-no-cover": "There is no cover from {from} to {to}.",
    "gate.cover-not-on-the-road": "From {from} to {to} there is no cover on the road.",
    "gate.cover-not-at-the-venue": "From {from} to {to} there is no cover at the venue.",
    "gate.cover-other-country": "From {from} to {to} no certificate names the countries of the journey.",
    "gate.cover-other-currency": "From {from} to {to} cover is in another currency.",
    "gate.cover-too-low": "From {from} to {to} cover is lower than the replacement costs.",
    "gate.covered": "Covered without a gap from {from} to {to}.",
    "gate.permits":
      "Nothing is barred by a missing paper; {open} [open:point wants|points want] attention. Check with the local authority.",
    "gate.nothing-to-pay": "No quotation was accepted: nothing is agreed to be paid before dispatch.",
    "gate.paid": "What the quotation, version {version}, asks for is paid.",
    "gate.not-paid":
      "What the quotation, version {version}, asks for is not all paid: record what came in, or have the collection manager put it off.",
    "gate.payment-put-off":
      "What is open of the quotation, version {version}, was put off until {until} by {by}, with the reason in the file.",
    "gate.no-check-out": "{specimen} has no check for going out on this loan.",
    "gate.check-too-old": "{specimen} was checked on {checkedOn}, more than 30 days ago.",
    "gate.not-fit-to-travel": "{specimen} is not fit to travel by its last check.",
    "gate.grade-not-signed-off":
      "{specimen} is of grade C by its last check. It goes out only with the conservator's word.",
    "gate.grade-not-acceptable": "{specimen} is of grade D by its last check.",
    "gate.checked": "[specimens:The specimen is|All {specimens} specimens are] checked and fit to travel.",
    "gate.not-judged": "The rules have not been run for {specimen}.",
    "gate.nothing-barred": "Nothing is barred for {specimens} [specimens:specimen|specimens].",
    "gate.in-no-crate": "{specimen} is in no crate.",
    "gate.in-two-crates": "{specimen} is planned in two crates: {crates}.",
    "gate.not-packed": "{specimen} is not packed into {crate} yet.",
    "gate.not-sealed": "Crate {crate} is not sealed.",
    "gate.holds-others":
      "Crate {crate} holds {specimens} [specimens:specimen that does|specimens that do] not go out.",
    "gate.crates-sealed": "[crates:The crate is|All {crates} crates are] complete and sealed.",
    "gate.no-carrier": "The way out is not planned: name the carrier and the days.",
    "gate.carrier": "{carrier} takes the crates on {departsOn}.",
  },
  steps: {
    "next.no-specimens": "No specimen is on the slip yet.",
    "next.state-request": "Some of the request is not stated yet: {fields}.",
    "next.other-start": "The loan cannot begin on the day that is stated. {fact}",
    "next.submit": "{specimens} [specimens:specimen is|specimens are] on the slip. Submit the request.",
    "next.barred": "{specimen} is barred. {fact} {wayOut}",
    "next.attend":
      "{findings} [findings:finding|findings] on {specimens} [specimens:specimen|specimens] [findings:wants|want] attention.",
    "next.word-of-office": "The {office} has still to accept or decline.",
    "next.submit-added":
      "{specimens} [specimens:specimen was|specimens were] noted after the request was submitted. Submit it again, or take [specimens:it|them] off.",
    "next.decide": "Accept or decline the request.",
    "next.decline": "As it stands the request can be declined, and not accepted yet.",
    "next.draw-up": "Draw up the agreement.",
    "next.sign": "Version {version} waits for the signature of the {party}.",
    "next.record-cover": "No certificate of cover is on record yet.",
    "next.cover": "Cover, {specimen}: {fact} {wayOut}",
    "next.gate": "{gate}: {fact}",
    "next.dispatch": "Every gate holds. Let {specimens} [specimens:specimen|specimens] go out.",
    "next.receive": "The crates are on their way. Receive them when they come.",
    "next.rest": "Crate {crate} rests closed until {notBefore}.",
    "next.open": "Crate {crate} may be opened and counted.",
    "next.overdue": "The loan was to leave the venue by {endsOn}.",
    "next.plan-home": "The way home is not planned yet. The specimens leave the venue by {endsOn}.",
    "next.send-home": "Send the specimens home; nothing bars that. They leave the venue by {endsOn}.",
    "next.receive-home": "The crates are on their way home. Receive them when they come.",
    "next.days-not-kept":
      "{specimen} is out and its days are kept until {until} only; it is needed on {neededOn}. Somebody else may have been promised the days after.",
    "next.seal-broken":
      "Crate {crate} came with a broken seal, {at}. It stays here until each specimen in it has been checked since; {unchecked} to go.",
    "next.crate-damaged":
      "Crate {crate} came damaged outside, {at}: {damage}. It stays here until each specimen in it has been checked since; {unchecked} to go.",
    "next.seal-broken-and-damaged":
      "Crate {crate} came with a broken seal and damaged outside, {at}: {damage}. It stays here until each specimen in it has been checked since; {unchecked} to go.",
    "next.changed-away":
      "{specimen} changed while it was away, by the check of {checkedOn}: {new} new, {worse} worse. It stays here until somebody of the house has checked it, or it is checked in.",
    "next.changed-home":
      "{specimen} came home changed, by the check of {checkedOn}: {new} new, {worse} worse. It stays here until it is checked in.",
    "next.judged-gravely":
      "{specimen} was checked in with the verdict “{verdict}”. It stays here until it is checked again.",
    "next.missing": "{specimen} is missing. Look for it, and count it in when it is found.",
    "next.count": "Crate {crate} may be opened. Count what came home.",
    "next.check-home": "{specimen} is home and wants a check.",
    "next.check-in": "{specimen} is checked. Check it in.",
    "next.discharge":
      "Everything is checked in. The loan crossed a customs border: record its discharge, then close.",
    "next.close": "Everything is checked in. Close the loan.",
  },
} as const;
