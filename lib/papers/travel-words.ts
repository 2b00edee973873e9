/** What the papers that travel say by themselves; one value of this type for each language. */
import type { HandlingMark } from "#lib/papers/pictograms.ts";
import type { Direction } from "#lib/shipments/schema.ts";

/** Words with {names} are filled by `fill`. */
export type TravelWords = {
  /** Names of the papers. */
  names: Readonly<
    Record<"outgoing receipt" | "incoming receipt" | "dispatch note" | "packing list" | "crate label", string>
  >;
  overline: string;
  issued: string;
  way: {
    heading: string;
    from: string;
    to: string;
    phone: string;
    direction: string;
    directions: Readonly<Record<Direction, string>>;
    carrier: string;
    vehicle: string;
    departs: string;
    arrives: string;
    through: string;
  };
  receipt: {
    about: Readonly<Record<"outgoing receipt" | "incoming receipt", string>>;
    specimens: string;
    count: string;
    number: string;
    accessionNumber: string;
    specimen: string;
    crate: string;
    condition: string;
    seals: string;
    seal: string;
    noSeal: string;
    changes: string;
    change: string;
    allSpecimens: string;
    someSpecimens: string;
    handedOver: string;
    received: string;
    /** Where the record holds who it was. */
    recorded: string;
    signature: string;
    name: string;
    time: string;
    remarks: string;
    remarksAbout: string;
  };
  dispatch: {
    about: string;
    crates: string;
    crate: string;
    kind: string;
    outer: string;
    gross: string;
    seal: string;
    outside: string;
    handling: string;
    total: string;
    care: string;
    careRows: readonly { term: string; text: string }[];
    onTheWay: string;
    driver: string;
    plate: string;
    leftAt: string;
    arrivedAt: string;
    sealsIntact: string;
    surrender: string;
    takeOver: string;
    delivery: string;
    carrierParty: string;
  };
  packing: {
    about: string;
    crate: string;
    crateOf: string;
    kind: string;
    outer: string;
    masses: string;
    massesText: string;
    massesGross: string;
    packing: string;
    innerCase: string;
    cushion: string;
    absorbent: string;
    seal: string;
    lifting: string;
    centreOfGravity: string;
    contents: string;
    position: string;
    accessionNumber: string;
    specimen: string;
    picture: string;
    pictureOf: string;
    drawingOf: string;
    handling: string;
    order: string;
    orderText: string;
    back: string;
    backText: string;
    byHand: string;
    sensors: string;
    tools: string;
    photographs: string;
    packedBy: string;
    packedOn: string;
    unpackedBy: string;
    unpackedOn: string;
  };
  label: {
    crateOf: string;
    loan: string;
    phone: string;
    /** Where nobody answers at night. */
    officePhone: string;
    gross: string;
    outer: string;
    centreOfGravity: string;
    authorised: string;
    notBefore: string;
    notBeforeBy: string;
    kgMost: string;
    degrees: string;
    marks: Readonly<Record<HandlingMark, string>>;
  };
};
