import { describe, expect, it } from "vitest";
import { animalOf, chooseMotif, isHuman, type Motif } from "#lib/specimens/drawing/choose.ts";

const rows: readonly (readonly [kind: string, title: string, more: object, motif: Motif])[] = [
  ["body region", "Right upper limb, neurovascular dissection", {}, "upper-limb"],
  ["body-region", "Dissection", { regions: ["upper-limb"] }, "upper-limb"],
  ["body region", "Demonstration of the brachial plexus", {}, "upper-limb"],
  ["body region", "Knee joint, opened", {}, "knee"],
  ["body region", "Head and neck", {}, "head"],
  ["organ", "Heart", {}, "heart"],
  ["organ", "Heart, opened", {}, "heart-opened"],
  ["organ", "Kidney, halved", {}, "kidney-halved"],
  ["organ", "", { structures: ["liver"] }, "liver"],
  ["organ", "Stomach", { regions: ["abdomen"] }, "stomach"],
  ["skeleton or bone", "Femur", {}, "femur"],
  ["skeleton or bone", "Articulated skeleton", { preparation: "mounted skeleton" }, "skeleton"],
  ["cast", "Bronchial tree", { preparation: "corrosion cast" }, "cast-lungs"],
  ["organ", "Vessels of the kidney", { preparation: "corrosion-cast" }, "cast-kidney"],
  ["sheet", "Transverse sheet 44, level L2", { regions: ["trunk"] }, "trunk-sheet"],
  ["sheet", "Head, sheet 9", { plane: "sagittal" }, "sagittal-head-sheet"],
  ["sheet", "Brain slice", { plane: "transverse" }, "head-sheet"],
  ["sheet", "Thigh, sheet 3", {}, "limb-sheet"],
  ["histological slide", "Kidney", {}, "slide"],
  ["organ system", "Arteries", {}, "body"],
  ["whole body", "Horse", { species: "Equus caballus" }, "animal"],
  ["skeleton or bone", "Hen", { species: "Gallus gallus domesticus" }, "animal-skeleton"],
  ["organ", "Heart of a dog", { species: "Canis lupus familiaris" }, "heart"],
  ["body region", "Distal limb", { species: "Equus caballus" }, "equine-foot"],
  ["whole body", "Axolotl", { species: "Ambystoma mexicanum" }, "closed-box"],
  ["organ", "Something that no drawing knows", {}, "closed-box"],
];

describe("choosing a drawing", () => {
  it.each(rows)("draws %s, %s, %j as %s", (kind, title, more, motif) => {
    expect(chooseMotif({ kind, title, seed: "AN 1", ...more })).toBe(motif);
  });

  it("takes a specimen without a species for a human one", () => {
    expect(isHuman(undefined)).toBe(true);
    expect(isHuman("Homo sapiens")).toBe(true);
    expect(isHuman("Equus caballus")).toBe(false);
  });

  it("knows no animal for a species that is like none of its own", () => {
    expect(animalOf("Ovis aries")).toBe("sheep");
    expect(animalOf("Ambystoma mexicanum")).toBeNull();
  });
});
