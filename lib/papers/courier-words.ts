/** What a courier's travel sheet says by itself; one value of this type for each language. */

/** Words with {names} are filled by `fill`. */
export type CourierWords = {
  name: string;
  about: string;
  people: string;
  lender: string;
  /** Where nobody answers at night. */
  lenderInOfficeHours: string;
  venue: string;
  courier: string;
  courierPhone: string;
  driver: string;
  carrierPhone: string;
  crates: string;
  crate: string;
  outer: string;
  gross: string;
  seal: string;
  sealOut: string;
  sealIn: string;
  specimens: string;
  number: string;
  accessionNumber: string;
  specimen: string;
  stations: string;
  stationsLead: string;
  station: string;
  dayTime: string;
  air: string;
  sealsWhole: string;
  seen: string;
  collected: string;
  loaded: string;
  left: string;
  border: string;
  stop: string;
  arrived: string;
  resting: string;
  holds: string;
  holdsRows: readonly { term: string; text: string }[];
  temperatures: string;
  temperaturesText: string;
  temperaturesOpen: string;
  afterwards: string;
  afterwardsFields: readonly string[];
  signed: string;
  party: string;
  signature: string;
  personName: string;
  time: string;
};
