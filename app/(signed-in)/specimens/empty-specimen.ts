/** What a new record begins with: nothing that is not known. */
import { nothingKnownInLaw, type SpecimenInput } from "#lib/specimens/schema.ts";

export function emptySpecimen(): SpecimenInput {
  return {
    accessionNumber: "",
    title: "",
    latinTitle: "",
    kind: "organ",
    preparation: "silicone-impregnated",
    fluidName: null,
    fluidPercent: null,
    human: true,
    scientificName: "Homo sapiens",
    sex: "unknown",
    ageBand: null,
    side: "not applicable",
    pose: "",
    size: null,
    massKg: null,
    mountedSize: null,
    mountedMassKg: null,
    massWeighed: false,
    partsAtRisk: "",
    use: "viewing only",
    light: "ordinary",
    replacementCost: null,
    preparedOn: null,
    acquiredOn: null,
    publishable: false,
    note: "",
    wholeId: null,
    components: [],
    formerNumbers: [],
    hazards: [],
    legal: nothingKnownInLaw,
  };
}
