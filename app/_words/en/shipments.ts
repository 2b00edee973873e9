/** Sentences about crates, stages and carriers, in English. */
export const shipmentsWords = {
  refusals: {
    "stage.reversed": "A stage arrives on the day it departs or later.",
    "stage.already-planned": "This stage is planned already.",
    "stage.not-planned": "The way out is not planned yet: name the carrier and the days.",
    "stage.days-taken":
      "{accessionNumber} is promised to somebody else from {takenFrom} on, and free again from {freeFrom}. Plan the stage for days that are free.",
    "stage.past": "The stage would have arrived on {arrivesOn}. Plan it for days to come.",
    "crate.already-packed": "Crate {crate} is packed already, so the crates are not planned anew.",
    "crate.nothing-to-pack": "There is nothing to pack.",
    "crate.size-not-known":
      "Nobody has measured and weighed {specimens}. Record size and mass, then plan the crates.",
    "crate.beyond-tables": "No crate of the tables takes {specimens}. Have its crate designed by hand.",
    "crate.seal-missing":
      "Crate {crate} was opened. Close it with a new seal, and write down the seal's number.",
    "crate.seal-of-opened": "Write down the number of the new seal.",
    "crate.incomplete": "Crate {crate} is not complete: {specimens} is not in it.",
    "crate.holds-others": "Something is in crate {crate} that does not belong in it.",
    "crate.component-missing":
      "A component of {specimens} is not in crate {crate}. Look for it before the crate is sealed.",
    "crate.not-now": "This cannot happen to crate {crate} while it is “{state}”.",
    "crate.not-looked-for": "Look for every crate that is on its way: {crates} is not on the list.",
    "crate.not-under-way": "One of these crates is not on its way here.",
    "crate.none-arrived": "None of the crates has arrived, so there is nothing to receive.",
    "crate.not-at-venue": "Crate {crate} does not rest at the venue. What came home is counted as a return.",
    "crate.resting":
      "Crate {crate} rests closed until {notBefore}. Opened sooner, damp would settle on what is inside.",
    "crate.count-incomplete": "Count everything that should be in it: {specimens} has not been counted.",
    "crate.counted-others": "Something was counted twice, or does not belong here.",
    "crate.position-taken": "Two specimens cannot have the same place in a crate.",
    "transport.crate-beyond-table":
      "No crate of the tables takes this ({contentsKg} kg, longest side {largestInnerMm} mm). Have the crate designed by hand.",
    "transport.no-cushion-curve":
      "These points make no cushion curve. Give at least three that rise and fall.",
    "carrier.not-under-way": "Crate {crate} is not with you. Ask the lending office.",
  },
} as const;
