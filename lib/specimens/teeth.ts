/**
 * Whether a record says that a specimen has teeth: dry air and quick changes crack
 * them sooner than bone. The words are those of the vocabulary; a tooth that is
 * stated as removed or absent is none. A skull whose teeth nobody recorded has none
 * here: what it shows is for the record to say.
 */
import type { Shown } from "#lib/specimens/schema.ts";

/** Teeth, their kinds and their parts, by the ids of the vocabulary. */
export const toothStructures = [
  "tooth",
  "permanent-teeth",
  "deciduous-teeth",
  "upper-dental-arch",
  "lower-dental-arch",
  "incisor-teeth",
  "canine-teeth",
  "premolar-teeth",
  "molar-teeth",
  "first-molar-tooth",
  "third-molar-tooth",
  "carnassial-tooth",
  "crown-of-tooth",
  "root-of-tooth",
  "pulp-cavity-of-tooth",
  "enamel",
  "dentine",
  "dental-cement",
] as const;

/** States in which a structure is there to be harmed. */
export const presentStates = ["shown", "variant"] as const satisfies readonly Shown["state"][];

const teeth: ReadonlySet<string> = new Set(toothStructures);
const present: ReadonlySet<string> = new Set(presentStates);

export function showsTeeth(shown: readonly Pick<Shown, "structureId" | "state">[]): boolean {
  return shown.some(({ structureId, state }) => teeth.has(structureId) && present.has(state));
}
